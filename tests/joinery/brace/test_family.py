"""Both sides of a brace's end from one record."""

from benchmate.joinery.brace.family import FAMILY, features
from benchmate.joinery.brace.record import BraceJoint
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Awaits
from tests.joinery.brace.bays import bay


def _sides(end: str = "foot") -> list[tuple[str, str, str]]:
    frame = bay()
    joint = next(
        work for work in frame.project.works if isinstance(work, BraceJoint) and end in work.id
    )
    return [(each.timber, each.id, each.title) for each in features(joint, frame)]


def test_one_record_gives_tenon_and_mortise() -> None:
    """The tenon on the brace, the mortise on the post or the beam."""
    assert _sides() == [
        ("brace", "foot-tenon", "Foot tenon"),
        ("post", "brace-foot-mortise", "Mortise for Brace"),
    ]
    assert _sides("head")[1] == ("beam", "brace-head-mortise", "Mortise for Brace")


def test_it_stands_in_the_catalogue_as_brace() -> None:
    """Under the word a project file uses."""
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("brace", "joint", BraceJoint)


def test_the_mortise_waits_for_the_tenon_that_was_made() -> None:
    """And the far shoulder for both faces the brace's length follows."""
    frame = bay()
    joint, other = (work for work in frame.project.works if isinstance(work, BraceJoint))
    brace, post = features(joint, frame)
    assert post.awaits == (Awaits("brace", "foot-tenon/as-cut"),)
    assert brace.awaits == ()
    far, _ = features(other, frame)
    assert far.awaits == (
        Awaits("post", "brace-foot-mortise/section"),
        Awaits("beam", "brace-head-mortise/section"),
    )


def test_the_walk_of_a_brace_has_its_reference_shoulder() -> None:
    """Marks along it count from the long edge's point at the foot."""
    layout = lay_out(bay(), "brace")
    assert layout.shoulder == "foot-tenon/shoulder"
    assert layout.step("head-tenon/shoulder").readings[0].hook == "foot shoulder line"
