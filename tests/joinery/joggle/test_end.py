"""The lines on an abutting end, and what comes off it."""

import pytest

from benchmate.joinery.joggle.end import abutment_words, end_cuts, end_lines, reduced
from benchmate.measure.length import ZERO
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from tests.builders import length, line
from tests.joinery.joggle.test_shape import FEET, made, near
from tests.joinery.joggle.trusses import truss

SQUARE_ON = {"slope": ("12'", "12'"), "strut_slope": ("48", "48")}


def lines(name: str = "heel", /, **words: object) -> tuple[Line, ...]:
    """The lines on one abutting end of a truss."""
    frame = truss(**words)  # type: ignore[arg-type]
    return end_lines(made(frame, name), frame.project.tape)


def test_the_order_they_are_struck_in() -> None:
    """The face line first: all others start from it."""
    assert [each.id for each in lines()] == [
        "shoulder",
        "abutment",
        "sole",
        "tenon-end",
        "near-cheek",
        "far-cheek",
    ]


def test_the_face_line_goes_round_and_is_not_sawn() -> None:
    """From the toe at the shoulder to the heel; it is what the shoulder is read from."""
    face = line(lines(), "shoulder")
    assert (face.axis, face.at, face.faces) == (Axis.ALONG, ZERO, LONG_FACES)
    assert face.caution == "Do not saw here."
    assert near(face.beside[0].value, FEET["heel"])
    assert face.beside[0].words == "along it, from the top face to the underside"


def test_the_abutment_starts_at_the_toe_and_ends_with_the_tenon() -> None:
    """4/3" x 0.6 - the tenon's tip is 1-1/6" beyond the toe; 1.581" of it lie before the sole."""
    found = line(lines(), "abutment")
    assert found.slant is not None
    assert (found.at, found.slant.where) == (ZERO, ("top face", "tenon end line"))
    assert near(-found.slant.finish.along, 7 / 6)
    assert near(found.beside[0].value, 1.5811388300841898)


def test_the_sole_joins_the_heel_to_the_abutment() -> None:
    """The heel lies 13-1/3" x 0.8 up the underside, the notch's bottom 1/2" along and 1-1/2" in."""
    found = line(lines(), "sole")
    assert found.slant is not None
    assert found.slant.where == ("underside", "abutment line")
    assert near(found.at, 32 / 3)
    assert near(-found.slant.finish.along, 1.5 * 0.6 - 0.5 * 0.8)
    assert near(found.slant.finish.deep, 1.5)
    assert [beside.value for beside in found.beside[1:]] == [length("1-1/2")]


def test_the_tenon_end_is_set_off_square_from_the_face_line() -> None:
    """3-1/2" of it, 2" more than the notch, with 7-1/2" left of it."""
    found = line(lines(), "tenon-end")
    assert [(each.value, each.hook) for each in found.readings] == [(length("3-1/2"), "face line")]
    assert found.beside[0].value == length("2")
    assert near(found.beside[1].value, 7.5)


def test_an_abutment_that_is_the_squared_end_has_no_mark_of_its_own() -> None:
    """The sole then ends on the squared end, and says that it bears."""
    words = {"joints": {"heel": {"abutment": "square to the rake"}}}
    found = line(lines(**words), "sole")
    assert found.slant is not None
    assert found.slant.where[1] == "squared foot"
    assert "The squared foot is the abutment, and bears." in found.why
    assert abutment_words(made(truss())) == "abutment line"


def test_an_abutment_on_the_edge_has_neither_line_nor_cut() -> None:
    """A strut square on its rafter and square to it in front as well."""
    words = SQUARE_ON | {"joint": {"abutment": "square to the face"}}
    found = lines("strut-head", **words)
    assert "abutment" not in [each.id for each in found]
    assert "The underside is the abutment, and bears." in line(found, "sole").why
    cuts = end_cuts(made(truss(**words), "strut-head"))  # type: ignore[arg-type]
    assert "abutment" not in {plane.line for cut in cuts for plane in cut.planes}


def test_the_face_of_a_strut_that_stands_square_is_a_square_line() -> None:
    """And its tenon's end with it."""
    found = lines("strut-head", **SQUARE_ON)
    for name in ("shoulder", "tenon-end"):
        assert (line(found, name).slant, line(found, name).axis) == (None, Axis.ALONG)


def test_what_comes_off() -> None:
    """Past the abutment, past the tip, and beside the tenon beyond the sole."""
    cuts = [[plane.line for plane in cut.planes] for cut in end_cuts(made(truss()))]
    assert cuts == [["abutment"], ["tenon-end"], ["sole", "near-cheek"], ["sole", "far-cheek"]]


@pytest.mark.parametrize("edge", ["up", "down"])
def test_by_square_rule_both_far_faces_come_down(edge: str) -> None:
    """The whole end goes in, so it is reduced; what lies on the far edge is set off on its line."""
    own = {"rafter": {"rule": "square", "inner": "8 x 6", "section": "8-1/2 x 6-1/2"}}
    words: dict[str, object] = {"own": own, "edges": {"rafter": edge}}
    end = made(truss(**words))  # type: ignore[arg-type]
    assert reduced(end) == {Axis.FIRST: length("8"), Axis.SECOND: length("6")}
    found = lines(**words)
    assert [each.id for each in found[:4]] == [
        "shoulder",
        "reduction-stop",
        "reduced-first",
        "reduced-second",
    ]
    far = {"up": ("sole", "underside"), "down": ("abutment", "top face")}[edge]
    slant = line(found, far[0]).slant
    assert slant is not None
    assert slant.where[0] == f"reduction line by the {far[1]}"
    assert slant.start.deep == length("8")
    assert reduced(made(truss())) == {}
