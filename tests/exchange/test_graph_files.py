"""GraphML and DOT, read back by the libraries that others would use."""

import networkx
import pygraphviz
import pytest

from pedigreeview.exchange import plant_table
from pedigreeview.exchange.graph_files import node_id, write_dot, write_graphml
from pedigreeview.network import PedigreeNetwork

ODD = 'a"b\\ <&> é×\\'


@pytest.fixture
def net():
    text = (
        "plant,seed_parent,pollen_parent,pollen_odds,name\n"
        f'"{ODD.replace(chr(34), chr(34) * 2)}",TP,BA,,Odd\n'
        "S,TP,TP,,\nU,TP,,BA:0.75; self:0.25,\nL,M,TP,,\nM,L,TP,,\n"
    )
    return PedigreeNetwork.from_records(plant_table.parse(text, "t"))


def test_graphml(net, tmp_path):
    path = tmp_path / "net.graphml"
    write_graphml(net, path)
    graph = networkx.read_graphml(path, force_multigraph=True)
    assert graph.number_of_nodes() == net.graph.number_of_nodes()
    assert graph.number_of_edges() == net.graph.number_of_edges()
    odd = graph.nodes[node_id(("plant", ODD))]
    assert (odd["code"], odd["name"], odd["kind"], odd["type"]) == (ODD, "Odd", "plant", "plant")
    assert odd["inbreeding"] == 0.0
    assert graph.nodes["plant_S"]["inbreeding"] == 1.0
    assert graph.nodes["plant_L"]["withheld"] == "own_ancestor"
    assert "inbreeding" not in graph.nodes["plant_L"]
    roles = [held["role"] for _, _, held in graph.in_edges(node_id(("cross", "TP ⊗")), data=True)]
    assert sorted(roles) == ["pollen", "seed"]
    uncertain = node_id(("cross", "TP × BA or self"))
    odds = {start: held.get("odds") for start, _, held in graph.in_edges(uncertain, data=True)}
    assert odds["plant_BA"] == 0.75


def test_dot(net, tmp_path):
    path = tmp_path / "net.dot"
    write_dot(net, path)
    graph = pygraphviz.AGraph(str(path))
    assert graph.number_of_nodes() == net.graph.number_of_nodes()
    assert graph.number_of_edges() == net.graph.number_of_edges()
    label = graph.get_node(node_id(("plant", ODD))).attr["label"]
    assert label.replace("\\\\", "\\") == ODD + "\\nOdd"
    assert graph.get_node(node_id(("cross", "TP ⊗"))).attr["label"] == "⊗"


def test_ids_are_stable_plain_and_never_the_same():
    codes = ["TP", "T P", "T_20_P", "T-P", "tp", "é", "_e9_", '"', "\n"]
    ids = [node_id(("plant", code)) for code in codes]
    assert len(set(ids)) == len(codes)
    assert all(held.isascii() and held.replace("_", "").isalnum() for held in ids)
    assert node_id(("plant", "TP")) == "plant_TP"
    assert node_id(("cross", "TP × BA")) == "cross_TP_20__d7__20_BA"


def test_the_same_network_gives_the_same_bytes(net, tmp_path):
    for write in (write_graphml, write_dot):
        write(net, tmp_path / "one")
        write(net, tmp_path / "two")
        assert (tmp_path / "one").read_bytes() == (tmp_path / "two").read_bytes()
