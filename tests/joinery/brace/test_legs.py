"""The legs of a brace, to the face and to the seat."""

from benchmate.joinery.brace.legs import Legs, legs
from benchmate.joinery.brace.record import BraceJoint
from benchmate.model.feature import Beside
from tests.builders import frame, length
from tests.joinery.brace.bays import bay, brace_joint


def _legs(**words: object) -> list[Legs | None]:
    made = bay(**words)  # type: ignore[arg-type]
    joints = [work for work in made.project.works if isinstance(work, BraceJoint)]
    return [legs(joint, made.stick("brace"), made) for joint in joints]


def test_each_leg_is_told_along_its_own_timber() -> None:
    """36" down the post to the beam, 48" along the beam to the post, and 1/2" more to the seats."""
    assert _legs(legs=("36", "48")) == [
        Legs(length("36"), length("36-1/2"), "Post", "Beam"),
        Legs(length("48"), length("48-1/2"), "Beam", "Post"),
    ]


def test_unhoused_there_is_one_figure() -> None:
    """Face and seat are the same plane then."""
    (foot, _) = _legs(joint={"housing": "0"})
    assert foot is not None
    assert foot.beside() == (Beside(length("36"), "leg, along Post to the face of Beam"),)


def test_housed_both_are_told() -> None:
    """So that nobody takes one for the other."""
    (foot, _) = _legs()
    assert foot is not None
    assert [each.words for each in foot.beside()] == [
        "leg, along Post to the face of Beam",
        "leg to the housing's floor in Beam",
    ]


def test_a_brace_with_one_end_has_no_leg_yet() -> None:
    """The corner is not known until the other end enters something."""
    both = bay()
    one = frame(*(both.timber(name) for name in ("post", "beam", "brace")), brace_joint())
    assert legs(brace_joint(), one.stick("brace"), one) is None
