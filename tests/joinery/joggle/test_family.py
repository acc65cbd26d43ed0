"""Both sides of a joggle from one record."""

import pytest

from benchmate.joinery import family_of
from benchmate.joinery.joggle.family import FAMILY, features
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits
from tests.joinery.joggle.test_shape import joint_of
from tests.joinery.joggle.trusses import joggle_joint, truss


@pytest.mark.parametrize(
    ("name", "sides"),
    [
        (
            "heel",
            [("rafter", "foot-tenon", "Foot tenon"), ("tie", "heel-notch", "Notch for Rafter")],
        ),
        (
            "strut-head",
            [
                ("strut", "head-tenon", "Head tenon"),
                ("rafter", "strut-head-notch", "Notch for Strut"),
            ],
        ),
    ],
)
def test_one_record_gives_end_and_notch(name: str, sides: list[tuple[str, str, str]]) -> None:
    """The tenon on the timber that thrusts, the notch on the other."""
    frame = truss()
    found = features(joint_of(frame, name), frame)
    assert [(each.timber, each.id, each.title) for each in found] == sides


def test_it_stands_in_the_catalogue_as_joggle() -> None:
    """Under the word a project file uses."""
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("joggle", "joint", JoggleJoint)
    assert family_of(joggle_joint()) is FAMILY


def test_the_notch_waits_for_the_end_that_was_made() -> None:
    """And a far shoulder for the faces its length follows."""
    frame = truss()
    _, notch = features(joint_of(frame, "heel"), frame)
    assert notch.mated
    assert notch.awaits == (Awaits("rafter", "foot-tenon/as-cut"),)
    head, _ = features(joint_of(frame, "strut-head"), frame)
    assert head.awaits == (Awaits("rafter", "strut-head-notch/section"),)


def test_the_walk_has_its_reference_shoulder() -> None:
    """Marks along the rafter count from where its top meets the tie, once it is struck."""
    layout = lay_out(truss(), "rafter")
    assert layout.shoulder == "foot-tenon/shoulder"
    assert layout.step("strut-head-notch/abutment").readings[0].hook == "foot shoulder line"


def test_the_same_steps_stand_whatever_is_wrong() -> None:
    """A stop withholds figures; it takes no step away, so no tick is lost."""
    ids = [step.id for step in lay_out(truss(), "tie").steps]
    impossible = truss(joints={"heel": {"notch": "9"}})
    assert [step.id for step in lay_out(impossible, "tie").steps] == ids
