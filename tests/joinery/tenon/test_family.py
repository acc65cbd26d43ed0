"""Both sides of a joint come out of its one record (law 3)."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.tenon.family import FAMILY, features
from benchmate.joinery.tenon.record import TenonJoint
from tests.builders import frame, length, real, sill, tenon, timber


def test_the_catalogue_knows_the_family() -> None:
    """A tenon stands in the joint table, told apart by its name."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("tenon", "joint", TenonJoint)


def test_a_joint_puts_a_tenon_on_one_timber_and_a_mortise_in_the_other() -> None:
    """The ids and places are the tenon's end and the joint's own name."""
    joint = tenon(into="sill", at="4'")
    tenoned, mortised = features(joint, frame(timber("post"), sill(), joint))
    assert (tenoned.id, tenoned.timber) == ("foot-tenon", "post")
    assert tenoned.place == ("foot-tenon", "foot")
    assert (mortised.id, mortised.timber) == ("post-foot-mortise", "sill")
    assert mortised.place == ("post-foot-mortise",)
    assert mortised.at == length("4'")


def test_a_post_that_stands_alone_has_a_tenon_and_no_mortise() -> None:
    """The program serves one post as well as a barn."""
    joint = tenon()
    (tenoned,) = features(joint, frame(timber("post"), joint))
    assert tenoned.id == "foot-tenon"


def test_the_tenon_offers_its_sizes_as_laid_out() -> None:
    """What the as-cut sizes are compared with does not change when they are typed."""
    joint = tenon(relief_reference="1-1/4")
    typed = real(as_cut={"foot-tenon": {"width": "4-11/16"}})
    (tenoned,) = features(joint, frame(timber("post"), joint, real={"post": typed}))
    assert {size.name: size.laid_out for size in tenoned.sizes} == {
        "thickness": length("2"),
        "width": length("4-3/4"),
        "length": length("5"),
    }
