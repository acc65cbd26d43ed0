"""Where a joist's tenon lies on its stick, by hand-reckoned figures."""

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.joist_tenon.shape import EndShape, centred, end_shape, meeting
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.solids import Axis, Plane
from tests.builders import length, lengths, real
from tests.floor import Floor, over
from tests.joinery.joist_tenon.floors import jointed
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon


def joist(**sizes: str) -> dict[str, Real]:
    """What was measured of the joist at its end, or of the end as cut."""
    as_cut = {key: size for key, size in sizes.items() if key not in ("first", "second")}
    measured = {key: size for key, size in sizes.items() if key not in as_cut}
    return {"joist": real({"south-end-tenon": measured}, {"south-end-tenon": as_cut})}


def end(floor: Floor | None = None, **words: object) -> EndShape:
    """A soffit tenon's end."""
    return jointed(soffit_tenon(**words), floor).shapes[0]  # type: ignore[arg-type]


def tusk(floor: Floor | None = None, **words: object) -> EndShape:
    """A tusk tenon's end."""
    return jointed(tusk_tenon(**words), floor).shapes[0]  # type: ignore[arg-type]


def test_a_flush_soffit_tenon() -> None:
    """2" of tenon at the bottom of a 7" joist: its upper cheek 5" down, its haunch above that."""
    found = end()
    assert (found.part.near, found.part.far, found.part.lowest) == lengths("5", "7", "7")
    assert (found.thickness, found.part.length, found.part.haunch) == lengths("2", "4", "1-1/2")
    assert (found.part.tusk, found.below, found.part.usual) == (ZERO, ZERO, None)
    assert found.haunch_word == "haunch"


def test_a_raised_soffit_tenon_leaves_a_shoulder_below() -> None:
    """3/4" above the underside."""
    found = end(above_soffit="3/4")
    assert (found.part.near, found.part.far, found.below) == lengths("4-1/4", "6-1/4", "3/4")


@pytest.mark.parametrize(("rise", "far", "below"), [("0", "7-1/8", "0"), ("1", "6", "1-1/8")])
def test_an_odd_stick_changes_only_what_lies_at_the_underside(
    rise: str, far: str, below: str
) -> None:
    """The upper cheek is held from the top; a flush tenon runs down to the real underside."""
    found = end(Floor(real=joist(first="7-1/8")), above_soffit=rise)
    held = end(above_soffit=rise)
    assert found.part.near == held.part.near
    assert (found.part.far, found.below) == lengths(far, below)


def test_by_square_rule_a_flush_tenon_comes_to_the_inner_underside() -> None:
    """1/2" over below and 1/4" over at the side come off past the shoulder."""
    found = end(over(Floor(), (0, 0, 16, 8), "square"))
    assert (found.part.far, found.framed, found.wide) == lengths("7", "7", "4")
    assert (found.below, found.real_wide) == lengths("1/2", "4-1/4")
    assert found.reduction.to == {}, "the beam's reference face has no excess to go through"


def test_a_beam_over_its_size_takes_the_whole_end() -> None:
    """Its far face 1/2" out: the joist is reduced so far back, to the tenon's own lines."""
    found = end(over(Floor(near=False), (0, 16, 16, 8), "square"))
    assert found.recess == length("1/2")
    assert found.reduction.to == {Axis.FIRST: length("7"), Axis.SECOND: length("4")}
    assert found.reduction.struck == {Axis.FIRST: "far-cheek", Axis.SECOND: "far-edge"}
    raised = end(over(Floor(near=False), (0, 16, 16, 8), "square"), above_soffit="1")
    assert raised.reduction.struck == {Axis.SECOND: "far-edge"}


def test_the_haunch_slopes_from_nothing_at_the_top_to_its_depth_at_the_tenon() -> None:
    """From the shoulder at 0 to 1-1/2" beyond it, 5" down: 3 along for every 10 down."""
    found = end()
    assert found.upper == Plane((10, 3, 0), 0, "haunch")
    assert not found.upper.holds(length("-1").nm, length("4").nm, 0)
    assert found.upper.holds(length("-1").nm, length("3").nm, 0)


def test_at_its_far_end_it_leans_the_other_way() -> None:
    """Out past the shoulder there too."""
    found = end(Floor(other=True))
    assert (found.end, found.shoulder) == (Face.FAR_END, length("8'"))
    assert found.along(length("1")) == length("8' 1")
    assert found.upper.holds(length("8' 1").nm, length("3").nm, 0)
    assert not found.upper.holds(length("8' 1").nm, length("4").nm, 0)


@pytest.mark.parametrize(
    ("floor", "near", "far"),
    [
        (Floor(beam="9 x 8", joist="9 x 4"), "3", "4-1/2"),
        (Floor(beam="9 x 8", joist="9 x 4", lower="1-1/2"), "1-1/2", "3"),
        (Floor(beam="9 x 8", joist="9 x 4", from_top=False, lower="1"), "2", "3-1/2"),
        (over(Floor(beam="9 x 8", joist="9 x 4"), (32, 0, 0, 0), "mill"), "3", "4-1/2"),
    ],
)
def test_a_tusk_tenon_s_underside_lies_on_the_beam_s_centre_line(
    floor: Floor, near: str, far: str
) -> None:
    """In practice (Rivington-tusk, trade.md 2.4), 4-1/2" down in a 9" beam as drawn."""
    found = tusk(floor)
    assert (found.part.near, found.part.far) == lengths(near, far)
    assert found.part.lowest == length(far) + length("1")


def test_the_centre_line_below_the_joist_s_top() -> None:
    """From either of the beam's reference faces."""
    for floor in (Floor(lower="2"), Floor(lower="2", from_top=False)):
        joint = tusk_tenon(length="3")
        made = floor.frame(joint)
        assert centred(meeting(joint, made), made.wood("beam")) == length("3")


def test_a_tusk_tenon_lies_where_it_is_said_to() -> None:
    """`set_back` from the joist's top; the tusk goes on below it."""
    found = tusk(set_back="2", thickness="1-1/2", tusk_height="2", tusk="1", horn="3/4")
    assert (found.part.near, found.part.far, found.part.lowest) == lengths("2", "3-1/2", "5-1/2")
    assert (found.part.tusk, found.part.haunch, found.below) == lengths("1", "3/4", "1-1/2")
    assert (found.under_line, found.haunch_word) == ("tusk-underside", "horn")


def test_without_a_horn_the_shoulder_goes_up_square() -> None:
    """So does one whose tenon comes to the top, which has its own finding."""
    plain = tusk(horn="0", set_back="2")
    assert not plain.haunched
    assert plain.upper == Plane((1, 0, 0), 0, "shoulder")
    assert not end(thickness="7").haunched


def test_an_open_joint_is_a_misuse() -> None:
    """Its sizes have to be settled before it has a shape."""
    joint = tusk_tenon(length="3")
    with pytest.raises(ValueError, match="joist-end has no shape"):
        end_shape(joint, Floor().frame(joint))


def test_sizes_as_cut_are_shown_once_typed() -> None:
    """Law 5: the mortise follows them; what is laid out stays."""
    found = end(Floor(real=joist(thickness="1-15/16", width="3-7/8")))
    assert [found.real(size) for size in ("thickness", "width", "length")] == list(
        lengths("1-15/16", "3-7/8", "4")
    )
    assert (found.thickness, found.wide) == lengths("2", "4")


def test_it_is_measured_at_its_end() -> None:
    """The joint's own place before that of the end."""
    assert end().places == ("south-end-tenon", "south-end")
