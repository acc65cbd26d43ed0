"""A mortise struck anew on its housing's floor."""

import pytest

from benchmate.frame.anew import first_struck, struck_anew
from benchmate.frame.mated import Sides
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
