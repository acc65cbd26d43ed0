"""The lines on a joist's tenon, with their figures, faces and waste."""

import pytest

from benchmate.joinery.joist_tenon.end import edged, end_cuts, flush, shouldered, under
from benchmate.model.directions import Face
from tests.builders import length, lengths, read
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed, lines
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

TUSK = {"set_back": "2", "thickness": "1-1/2", "length": "4", "tusk": "1", "tusk_height": "2"}
SIDES = (Face.SECOND, Face.FAR_SECOND)
SQUARE = over(Floor(lower="1"), (16, 16, 16, 8), "square")
HOUSED = over(Floor(lower="1", near=False), (16, 16, 16, 8), "square")


def test_the_lines_of_a_tusk_tenon_in_order() -> None:
    """Shoulder first, then from the top down."""
    end, _ = jointed(tusk_tenon(**TUSK)).sides
    assert list(lines(end)) == [
        "shoulder",
        "haunch",
        "near-cheek",
        "far-cheek",
        "tusk-end",
        "tusk-underside",
    ]


def test_the_figures_of_a_tusk_tenon() -> None:
    """Depths from the joist's top; lengths from the shoulder, and from the squared end as well."""
    steps = jointed(tusk_tenon(**TUSK)).steps("joist")
    found = {name: read(step) for name, step in steps.items() if step.line}
    assert found == {
        "shoulder": lengths("4"),
        "haunch": lengths("4"),
        "near-cheek": lengths("2"),
        "far-cheek": lengths("3-1/2"),
        "tusk-end": lengths("1", "3"),
        "tusk-underside": lengths("5-1/2"),
    }
    assert steps["haunch"].beside[0].value == length("1"), "further out at the tenon"


def test_each_is_struck_where_it_bounds_wood_that_goes() -> None:
    """The haunch runs down both sides from the top; the tusk's end shows from below."""
    steps = jointed(tusk_tenon(**TUSK)).steps("joist")
    assert {name: step.faces for name, step in steps.items() if step.line} == {
        "shoulder": (Face.FIRST, Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND),
        "haunch": (Face.FIRST, *SIDES),
        "near-cheek": (*SIDES, Face.REFERENCE_END),
        "far-cheek": (*SIDES, Face.REFERENCE_END),
        "tusk-end": (Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND),
        "tusk-underside": (*SIDES, Face.REFERENCE_END),
    }


def test_waste_lies_outside_all_that_goes_in() -> None:
    """Above the upper cheek, below the lower one and the tusk, beyond the rest."""
    steps = jointed(tusk_tenon(**TUSK)).steps("joist")
    assert {name: step.waste_side for name, step in steps.items() if step.line} == {
        "shoulder": "south end",
        "haunch": "south end",
        "near-cheek": "top face",
        "far-cheek": "underside",
        "tusk-end": "south end",
        "tusk-underside": "underside",
    }


def test_a_flush_soffit_tenon_has_no_line_below() -> None:
    """Nor is its shoulder struck on the underside: a cut there would sever its root."""
    end, _ = jointed(soffit_tenon()).sides
    assert list(lines(end)) == ["shoulder", "haunch", "near-cheek"]
    assert Face.FAR_FIRST not in lines(end)["shoulder"].faces
    raised, _ = jointed(soffit_tenon(above_soffit="1")).sides
    assert "far-cheek" in lines(raised)
    assert Face.FAR_FIRST in lines(raised)["shoulder"].faces


def test_without_a_horn_the_shoulder_bounds_the_wood_above() -> None:
    """And there is no slope to strike."""
    steps = jointed(tusk_tenon(**TUSK, horn="0")).steps("joist")
    assert "haunch" not in steps
    assert "saw square down" not in steps["shoulder"].caution


def test_by_square_rule_the_far_side_is_struck_too() -> None:
    """4" from the reference side; without a recess the joist itself keeps its size."""
    shape, _ = jointed(soffit_tenon(), SQUARE).shapes
    assert edged(shape)
    assert flush(shape)
    steps = jointed(soffit_tenon(), SQUARE).steps("joist")
    assert read(steps["far-edge"]) == lengths("4")
    assert read(steps["far-cheek"]) == lengths("7")
    assert "reduction-stop" not in steps
    assert "past the shoulder" not in steps["far-edge"].why
    assert Face.FAR_FIRST in shouldered(shape)


def test_where_the_whole_end_is_reduced_no_cut_is_made_twice() -> None:
    """The reduction takes what the shoulder would, and its lines run on past it."""
    shape, _ = jointed(soffit_tenon(), HOUSED).shapes
    planes = [{plane.line for plane in cut.planes} for cut in end_cuts(shape)]
    assert planes == [
        {"haunch", "near-cheek"},
        {"reduction-stop", "far-cheek"},
        {"reduction-stop", "far-edge"},
    ]
    steps = jointed(soffit_tenon(), HOUSED).steps("joist")
    for name in ("far-cheek", "far-edge"):
        assert "Run it on past the shoulder" in steps[name].why
    assert Face.FAR_FIRST not in shouldered(shape)


def test_what_can_hurt_carries_its_caution() -> None:
    """A square cut through the haunch, a cut across the tenon, a tusk cut off, a wrong face."""
    steps = jointed(tusk_tenon(**TUSK)).steps("joist")
    shoulder = steps["shoulder"].caution
    assert "Never saw square down it from the top face: the horn leans out there." in shoulder
    assert "sever its root" in shoulder
    assert "to the tusk end line only" in steps["far-cheek"].caution
    for name in ("far-cheek", "tusk-underside"):
        assert "Never measure this from the underside." in steps[name].caution


def test_a_far_shoulder_waits_for_the_beam_s_face() -> None:
    """By mill rule a joist's far shoulder comes where that face really is."""
    floor = Floor(lower="1", near=False, other=True)
    far = jointed(soffit_tenon(), floor)
    assert "Measure Beam's North face" in far.steps("joist")["shoulder"].caution
    assert far.sides[0].awaits
    assert not jointed(soffit_tenon()).sides[0].awaits


@pytest.mark.parametrize(("rise", "area"), [("0", ""), ("1", "16 sq in")])
def test_it_says_what_it_bears_on(rise: str, area: str) -> None:
    """4" of tenon by 4" of joist; on the beam's side too, whether flush or not."""
    end, hole = jointed(soffit_tenon(above_soffit=rise)).sides
    if area:
        assert f"bears on {area}" in lines(end)["far-cheek"].why
    assert "bears on 16 sq in" in lines(hole)["lower-side"].why
    assert "engineer" in lines(hole)["lower-side"].why


def test_the_published_sizes_stand_beside_those_given() -> None:
    """1/6 of a 10" beam and of a 7" joist, twice the tenon, and the horn as far as the tusk."""
    end, _ = jointed(tusk_tenon(**TUSK)).sides
    found = lines(end)
    beside = {
        name: [each.value for each in found[name].beside if "handbook" in each.words]
        for name in ("shoulder", "haunch", "far-cheek", "tusk-end")
    }
    assert beside == {
        "shoulder": list(lengths("3")),
        "haunch": list(lengths("1")),
        "far-cheek": list(lengths("1-11/16")),
        "tusk-end": list(lengths("1-3/16")),
    }
    assert "3-1/2" in found["near-cheek"].why, "how far up the joist the tenon lies"


def test_the_underside_is_named_as_a_framer_would() -> None:
    """Whatever the joist's faces."""
    assert under(jointed(soffit_tenon(), Floor(first=False)).shapes[0]) == "underside"
