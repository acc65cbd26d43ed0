"""The socket's leaning sides, set off on both faces of the plate."""

import pytest

from benchmate.joinery.lap.socket import entry_face, narrow_and_wide
from benchmate.joinery.lap.telling import shrinks
from benchmate.layout.step import Step
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from tests.builders import length, lengths, read, real, set_in_words
from tests.joinery.lap.crossings import DOVETAIL, both, crossed, sizes_of, steps

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)


def _other_end(step: Step) -> tuple[object, str]:
    return step.beside[0].value, step.beside[0].words


def test_a_side_is_set_off_at_both_faces() -> None:
    """1" in 8": from the outside 4' to 4' 6", and 1" nearer on each side where the tail comes in.

    A tongue set to 1-1/2 ends long before the line does; atan(1/8) is 7.1 degrees (reckoned).
    """
    found = steps(crossed(**DOVETAIL), "plate")
    for name, at, towards in (("start", "48", "north"), ("finish", "54", "south")):
        step = found[name]
        assert read(step) == lengths(at)
        assert step.readings[0].words.endswith("on the East face")
        assert _other_end(step) == (
            length("1"),
            f"nearer the {towards} end on the West face",
        )
        assert set_in_words(step.setting) == (
            "straightedge from one end of the line to the other; saw 7.1° off square"
        )
        assert [each.value for each in step.beside[1:]] == list(lengths("4", "6"))
        assert "Narrow at the West face and wide at the East face" in step.why


@pytest.mark.parametrize(("looks", "entry"), [(True, Face.FAR_SECOND), (False, Face.SECOND)])
def test_the_tail_comes_in_at_the_near_face(looks: bool, entry: Face) -> None:
    """Whichever of the plate's faces that is, it is the narrow one."""
    _, plate = both(**DOVETAIL, plate_looks=(True, looks))
    assert entry_face(plate) is entry
    assert narrow_and_wide(plate) == lengths("4", "6")


def test_a_crossing_timber_comes_in_at_no_face() -> None:
    """A misuse, not a design."""
    _, plate = both(ends=False)
    with pytest.raises(ValueError, match="comes in at no face"):
        entry_face(plate)


def test_the_socket_is_as_wide_as_the_tail_came_out() -> None:
    """And says so on both sides, with the caution that it will open."""
    sizes = {"tie": real(as_cut={"east-end-lap": {"width": "5-3/4"}})}
    _, plate = both(sizes, **DOVETAIL)
    assert narrow_and_wide(plate) == lengths("3-3/4", "5-3/4")
    found = steps(crossed(sizes, **DOVETAIL), "plate")
    for name in ("start", "finish"):
        assert '5-3/4" wide, counted from its reference side' in found[name].why
        assert found[name].caution == f"The East face first: the line leans. {shrinks(TAPE)}"


def test_half_a_dovetail_leans_on_one_side() -> None:
    """The other side is square across, with one figure."""
    built = crossed(sizes_of(tie=("8", "6")), up="6", joint={"share": "2", "flare_far": "1"})
    found = steps(built, "plate")
    assert (found["start"].short, found["finish"].short) == (
        "Socket start line",
        "Notch finish line",
    )
    assert found["finish"].setting is None
    assert read(found["finish"]) == lengths("54")
