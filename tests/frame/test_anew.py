"""A mortise struck anew on the floor it opens on."""

import pytest

from benchmate.frame.anew import first_struck, strike_anew, struck_anew
from benchmate.frame.mated import Sides
from benchmate.model.directions import Face
from benchmate.model.feature import Line, Stage
from benchmate.model.solids import Axis
from tests.builders import corners, frame, length, timber


@pytest.mark.parametrize(
    ("axis", "from_to"),
    [
        (Axis.ALONG, ("squared foot", "head")),
        (Axis.FIRST, ("South face", "North face")),
        (Axis.SECOND, ("West face", "East face")),
    ],
)
def test_lines_come_from_reference_faces_and_the_reference_end(
    axis: Axis, from_to: tuple[str, str]
) -> None:
    """As each was struck before: never from the housing's own edges."""
    assert first_struck(frame(timber("post")).stick("post"), axis) == from_to


def test_a_tenoned_stick_counts_from_its_shoulder() -> None:
    """There the datum is the shoulder line, not the tenon's end."""
    assert first_struck(corners().stick("post-se"), Axis.ALONG) == ("foot shoulder line", "head")


def test_all_four_lines_are_struck_anew() -> None:
    """The ends first, then the sides, each remembered by its own name."""
    sides = Sides(
        stick=frame(timber("post")).stick("post"),
        feature="hole",
        axis=Axis.FIRST,
        span=(length("2"), length("4")),
        end=(length("0"), length("6")),
        same_side=True,
        set_back=length("2"),
        mate="Tie",
        follows="Follows Tie.",
    )
    found = struck_anew(sides, (("start", length("60")), ("finish", length("68"))))
    assert [each.value for each in found] == [length(at) for at in ("60", "68", "2", "4")]
    assert [each.key for each in found] == [
        f"{name} of the mortise" for name in ("start", "finish", "near side", "far side")
    ]
    assert found[0].words == "from the squared foot, towards the head, start line"
    assert found[-1].words == "from the South face, towards the North face, far side line"


def _line(axis: Axis | None, name: str, at: str) -> Line:
    return Line(id=name, title=f"{name.capitalize()} line", axis=axis, at=length(at), why="")


def test_it_is_one_task_of_the_lines_that_were_taken_away() -> None:
    """Ends and sides, and no depth: that is not struck. One in a lap reads back from its shoulder.

    Nothing is ever read to the other side of what it is hooked on: no figure is below nothing.
    """
    lines = (
        _line(Axis.ALONG, "start", "-6"),
        _line(Axis.ALONG, "finish", "2"),
        _line(Axis.SECOND, "near-side", "3"),
        _line(Axis.FIRST, "depth", "4"),
        _line(None, "gauged", "1"),
    )
    task = strike_anew(
        corners().stick("post-se"),
        (Face.FAR_FIRST, Axis.SECOND),
        lines,
        noun="mortise",
        id_="anew",
        title="Strike it anew",
        why="It went.",
    )
    assert (task.id, task.title, task.why, task.stage) == (
        "anew",
        "Strike it anew",
        "It went.",
        Stage.CUT,
    )
    assert task.faces == (Face.FAR_FIRST,)
    assert task.waste == "Inside the mortise's lines only."
    assert [(each.value, each.words, each.key) for each in task.readings] == [
        (
            length("6"),
            "from the foot shoulder line, towards the foot, start line",
            "start of the mortise",
        ),
        (
            length("2"),
            "from the foot shoulder line, towards the head, finish line",
            "finish of the mortise",
        ),
        (
            length("3"),
            "from the East face, towards the West face, near-side line",
            "near-side of the mortise",
        ),
    ]
