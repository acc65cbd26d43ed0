"""Which side to show first: one where hook and line are seen at once."""

import pytest

from benchmate.model.directions import LONG_FACES, Face
from benchmate.tui.drawing.choice import best_end, best_face, faces_to_show
from tests.tui.drawing.timbers import TIMBERS, layout

BEST = [
    ("post-se", "foot-tenon/shoulder", Face.FIRST),
    ("post-se", "foot-tenon/near-cheek", Face.FAR_SECOND),
    ("post-se", "foot-tenon/far-cheek", Face.FAR_SECOND),
    ("post-sw", "foot-tenon/far-cheek", Face.FAR_SECOND),
    ("post-se", "head-tenon/near-cheek", Face.SECOND),
    ("post-se", "head-tenon/far-cheek", Face.SECOND),
    ("post-se", "foot-tenon/reference-edge", Face.FIRST),
    ("post-se", "inside-chamfer/line", Face.FAR_FIRST),
    ("post-se", "foot-tenon/pare", Face.REFERENCE_END),
    ("post-se", "stick/crown", None),
    ("sill", "sw-foot-mortise/near-side", Face.FIRST),
    ("sill", "sw-foot-mortise/depth", Face.FIRST),
    ("plate", "sw-head-mortise/far-side", Face.FAR_FIRST),
]


@pytest.mark.parametrize(("timber", "step", "face"), BEST)
def test_the_best_face_is_beside_the_hook(timber: str, step: str, face: Face | None) -> None:
    """A line across is shown on a face whose edge is hooked on, of two on the one that keeps more.

    The foot is relieved on its reference edge alone, so that face goes entirely and the one across
    from it shows the tenon; at the head both are relieved alike. Any other step: its first face.
    """
    assert best_face(layout(timber), layout(timber).step(step)) is face


@pytest.mark.parametrize("timber", TIMBERS)
def test_the_best_face_is_one_to_show(timber: str) -> None:
    """Turning the timber from the best face comes back to it."""
    for step in layout(timber).steps:
        best = best_face(layout(timber), step)
        assert best in faces_to_show(step) if step.faces else best is None


@pytest.mark.parametrize("timber", TIMBERS)
def test_faces_come_in_rolling_order_and_ends_last(timber: str) -> None:
    """Turning goes the way the timber is rolled, and leaves none of the step's sides out."""
    order = (*LONG_FACES, Face.REFERENCE_END, Face.FAR_END)
    for step in layout(timber).steps:
        found = faces_to_show(step)
        assert set(found) == set(step.faces)
        assert list(found) == sorted(found, key=order.index)


@pytest.mark.parametrize(
    ("step", "end"),
    [
        ("foot-tenon/shoulder", Face.REFERENCE_END),
        ("foot-tenon/near-cheek", Face.REFERENCE_END),
        ("head-tenon/shoulder", Face.FAR_END),
        ("head-tenon/near-cheek", Face.FAR_END),
        ("inside-chamfer/line", Face.REFERENCE_END),
        ("stick/faces", Face.REFERENCE_END),
    ],
)
def test_the_end_shown_is_the_one_worked_at(step: str, end: Face) -> None:
    """The head for work at the head, the foot for all the rest."""
    assert best_end(layout("post-se"), layout("post-se").step(step)) is end
