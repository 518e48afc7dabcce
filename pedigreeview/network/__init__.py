"""The network of plants and crosses, and every coefficient; usable alone, without a window.

    from pedigreeview.network import PedigreeNetwork
    net = PedigreeNetwork.from_records(book)
    net.coancestry("K17", "K18")

Knows no Qt and no SQL.
"""

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.explanation import Explanation, Term
from pedigreeview.network.parentage import Parents
from pedigreeview.network.pedigree import (
    CommonAncestor,
    PedigreeNetwork,
    WithheldFault,
)
from pedigreeview.network.reciprocals import ReciprocalPair
from pedigreeview.network.relatives import UnknownPlantFault

__all__ = [
    "CommonAncestor",
    "Explanation",
    "Parents",
    "PedigreeArrays",
    "PedigreeNetwork",
    "ReciprocalPair",
    "Term",
    "UnknownPlantFault",
    "WithheldFault",
]
