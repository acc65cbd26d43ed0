"""Both sides of a joint come out of its one record (law 3)."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.tenon.family import FAMILY, features
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.model.feature import Awaits
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


def test_a_mortise_waits_for_its_tenon() -> None:
    """It is cut to the tenon that was really made; the tenon waits for nothing."""
    joint = tenon(into="sill", at="4'")
    tenoned, mortised = features(joint, frame(timber("post"), sill(), joint))
    assert tenoned.awaits == ()
    assert mortised.awaits == (Awaits("post", "foot-tenon/as-cut"),)


def test_the_titles_name_the_end_and_the_mate() -> None:
    """A framer with five mortises on a sill reads which is which."""
    joint = tenon(end="head", into="sill", at="4'")
    titles = [side.title for side in features(joint, frame(timber("post"), sill(), joint))]
    assert titles == ["Head tenon", "Mortise for Post"]


def test_a_scribed_joint_keeps_its_ids_its_places_and_its_order_along_the_stick() -> None:
    """So that ticks and measured sections survive a change of mind about scribing."""
    sides = [
        features(joint, frame(timber("post"), sill(), joint))
        for joint in (
            tenon(into="sill", at="4'", all_round="1"),
            tenon(into="sill", at="4'", all_round="1", scribed=True),
        )
    ]
    for figured, scribed in zip(*sides, strict=True):
        kept = ("id", "timber", "at", "place")
        assert [getattr(figured, name) for name in kept] == [
            getattr(scribed, name) for name in kept
        ]
        assert scribed.title == f"{figured.title}, scribed"
        assert (scribed.findings, scribed.awaits) == ((), ())


def test_a_scribed_joint_has_nothing_to_be_wrong() -> None:
    """A figure that is not given cannot be one that cannot be."""
    joint = tenon(into="sill", at="-1'", length="9", relief_far="7", inset="-3", scribed=True)
    sides = features(joint, frame(timber("post"), sill(), joint))
    assert [side.findings for side in sides] == [(), ()]
