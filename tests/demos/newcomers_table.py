"""The table that a newcomer brings: a spreadsheet of sweet peppers, kept without thought of us.

The founders say neither what kind they are nor how they are kept true; a few cells are blank.
"""

from __future__ import annotations

__all__ = ["FILE", "text"]

FILE = "newcomers_table.csv"

_ROWS = """\
plant,seed_parent,pollen_parent,name,sown,note
Lantern,,,Cowslip Lantern,2019,"yellow, blocky, from the market"
Horn,,,Garrow Horn,2019,"long and red, thin wall, early"
Plum,,,Dusk Plum,,"purple when young, seed from my aunt"
LH1,Lantern,Horn,,2020-02-20,
LH2,Lantern,Horn,,2020-02-20,best shape of the two
HL1,Horn,Lantern,,2020-02-20,"other way round, 1 fruit only"
HL2,Horn,Lantern,,2020-02-20,
HL3,Horn,Lantern,,2020-02-20,aphids
LH2-1,LH2,LH2,,2021-02-15,red
LH2-2,LH2,LH2,,2021-02-15,yellow and long!
LH2-3,LH2,LH2,,2021-02-15,red
LH2-4,LH2,LH2,,2021-02-15,
LH2-5,LH2,LH2,,2021-02-15,"yellow, blocky"
HL1-1,HL1,HL1,,2021-02-15,yellow
HL1-2,HL1,HL1,,2021-02-15,
BC1,Lantern,LH2,,2021-02-18,back to Lantern
BC2,Lantern,LH2,,2021-02-18,back to Lantern
LH2-2-1,LH2-2,LH2-2,,2022-02-19,
LH2-2-2,LH2-2,LH2-2,,2022-02-19,keep
LH2-2-3,LH2-2,LH2-2,,2022-02-19,
BC1-1,BC1,BC1,,2022-02-19,
PX1,Plum,LH2-2,,2022-02-25,"dark, then orange"
PX2,Plum,LH2-2,,2022-02-25,
Odd,Plum,,,2022-03-01,seed of an uncovered fruit
LH2-2-2-1,LH2-2-2,LH2-2-2,Long Cowslip,2023-02-16,all yellow and long now
LH2-2-2-2,LH2-2-2,LH2-2-2,,2023-02-16,
"""


def text() -> str:
    """The table as text."""
    return _ROWS
