"""The lines of a joist's mortise in its beam: figures, faces, waste, and what they say."""

import pytest

from benchmate.joinery.joist_tenon.mortise import ENGINEER, hole_cuts, own_lines, straight_in
from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from tests.builders import length, lengths, read, real
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed, lines
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

TUSK = {"set_back": "2", "thickness": "1-1/2", "length": "4", "tusk": "1", "tusk_height": "2"}


def soffit(floor: Floor | None = None, **words: object) -> dict[str, Step]:
    """The beam's steps for a soffit tenon."""
    return jointed(soffit_tenon(**words), floor).steps("beam")  # type: ignore[arg-type]


def struck(steps: dict[str, Step]) -> list[str]:
    """The ids of the lines among some steps."""
    return [name for name, step in steps.items() if step.line]


def test_the_lines_in_order() -> None:
    """Both ends, then from the top down, then the depths."""
    assert struck(jointed(tusk_tenon(**TUSK)).steps("beam")) == [
        "start",
        "finish",
        "haunch-top",
        "upper-side",
        "lower-side",
        "tusk-side",
        "depth",
        "haunch-floor",
        "tusk-floor",
    ]


def test_the_figures_on_the_beam() -> None:
    """The joist's top 1" below the beam's; depths from the face the joist goes in by."""
    steps = jointed(tusk_tenon(**TUSK, horn="1-1/4")).steps("beam")
    found = {name: read(steps[name])[0] for name in struck(steps)}
    assert found["finish"] - found["start"] == length("4")
    del found["start"], found["finish"]
    assert found == {
        "haunch-top": length("1"),
        "upper-side": length("3"),
        "lower-side": length("4-1/2"),
        "tusk-side": length("6-1/2"),
        "depth": length("4-1/8"),
        "haunch-floor": length("1-1/4"),
        "tusk-floor": length("1"),
    }
    hooks = {steps[name].readings[0].hook for name in ("depth", "haunch-floor", "tusk-floor")}
    assert hooks == {"North face"}


def test_each_is_on_the_face_the_joist_goes_in_by() -> None:
    """No edge of it comes out anywhere else."""
    steps = jointed(tusk_tenon(**TUSK)).steps("beam")
    assert {steps[name].faces for name in struck(steps)} == {(Face.SECOND,)}


def test_which_side_goes() -> None:
    """Both sides of a line between the mortise and a shallower recess, and that in words."""
    steps = jointed(tusk_tenon(**TUSK)).steps("beam")
    assert steps["upper-side"].waste == (
        "Both sides: the mortise below it, the horn's shallower recess above it."
    )
    assert steps["lower-side"].waste == (
        "Both sides: the mortise above it, the tusk's shallower recess below it."
    )
    assert steps["tusk-side"].waste == "Towards the top face."
    low = soffit()
    assert low["lower-side"].waste == "Towards the top face."
    plain = jointed(tusk_tenon(**TUSK, horn="0")).steps("beam")
    assert plain["upper-side"].waste == "Towards the underside."
    assert not {"haunch-top", "haunch-floor"} & set(plain)


@pytest.mark.parametrize(
    ("floor", "face", "figure"),
    [
        (Floor(lower="1"), Face.SECOND, "1"),
        (Floor(lower="1", from_top=False), Face.SECOND, "9"),
        (Floor(lower="-1"), Face.FIRST, "1/4"),
        (Floor(lower="-1", from_top=False), Face.FAR_FIRST, "1/4"),
    ],
)
def test_where_the_haunch_runs_out(floor: Floor, face: Face, figure: str) -> None:
    """At the joist's top; proud of the beam it comes out on the beam's top, so far in.

    1" of a slope of 1-1/4" over 5" is 1/4".
    """
    step = soffit(floor, haunch="1-1/4")["haunch-top"]
    assert step.faces == (face,)
    assert read(step) == lengths(figure)


def test_a_joist_level_with_its_beam_needs_no_line_there() -> None:
    """Its haunch runs out on the arris; in a housing, at that one's own wall."""
    assert "haunch-top" not in soffit(Floor())
    housed = soffit(over(Floor(lower="1", near=False), (0, 16, 0, 0), "square"))
    assert "haunch-top" not in housed
    assert "housing-near" in housed


def test_in_a_housing_depths_count_from_its_floor() -> None:
    """The whole end goes in first, as far as the beam is over its inner timber."""
    floor = over(Floor(lower="1", near=False), (0, 16, 0, 0), "square")
    steps = soffit(floor)
    for name in ("depth", "haunch-floor"):
        assert steps[name].readings[0].hook == "housing floor"
    assert read(steps["housing-floor"]) == lengths("1/2")
    joint = jointed(soffit_tenon(), floor)
    assert straight_in(joint.shapes[1], "haunch-floor").value == length("1-1/2")
    assert [each.id for each in own_lines(joint.shapes[1], Tape())] == [
        "start",
        "finish",
        "upper-side",
        "lower-side",
        "depth",
        "haunch-floor",
    ]


def test_the_haunch_s_recess_stops_at_a_housing_s_upper_wall() -> None:
    """Above the joist the beam keeps what it is over."""
    floor = over(Floor(lower="1", near=False), (0, 16, 0, 0), "square")
    shape = jointed(soffit_tenon(), floor).shapes[1]
    recess = next(
        cut for cut in hole_cuts(shape) if "haunch-floor" in {plane.line for plane in cut.planes}
    )
    above = (length("3/4").nm, length("8-1/4").nm)
    middle = (shape.along[0].nm + shape.along[1].nm) // 2
    assert not recess.takes(middle, *above)
    assert recess.takes(middle, length("1-1/4").nm, length("8-1/4").nm)


def test_it_says_what_it_follows() -> None:
    """As drawn until the tenon has been measured as cut; then what was laid out as well."""
    drawn = jointed(soffit_tenon()).sides[1]
    for name in ("start", "lower-side", "depth"):
        assert "as drawn; it has not been measured" in lines(drawn)[name].why
    as_cut = {"thickness": "1-7/8", "width": "3-7/8", "length": "3-3/4"}
    made = {"joist": real({}, {"south-end-tenon": as_cut})}
    found = lines(jointed(soffit_tenon(), Floor(lower="1", real=made)).sides[1])
    assert '1-7/8" deep, laid out as 2"' in found["lower-side"].why
    assert '3-7/8" wide, laid out as 4"' in found["start"].why
    assert '3-3/4" long, laid out as 4"' in found["depth"].why


def test_what_weakens_a_beam_is_the_engineer_s() -> None:
    """On the lower side, where it matters most; far lines never from the far face."""
    steps = soffit()
    assert steps["lower-side"].caution == f"Never measure this from the underside. {ENGINEER}"
    assert steps["upper-side"].caution == "Never measure this from the underside."
    assert steps["lower-side"].beside[1].value == length("2")
    assert "straightedge" in steps["haunch-floor"].caution


def test_the_figures_beside_its_lines() -> None:
    """As wide as the joist; an eighth deeper than the tenon is long."""
    found = lines(jointed(soffit_tenon()).sides[1])
    for name in ("start", "finish"):
        assert [each.value for each in found[name].beside] == [length("4")]
    assert found["depth"].beside[0].value == length("1/8")
