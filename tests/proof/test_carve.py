"""A timber is cut as its marks say, and as counting by hand comes to."""

from dataclasses import replace

import pytest

from benchmate.frame.frame import Frame, Real
from benchmate.layout.walk import lay_out
from tests.builders import corners, frame, length, real, sill, tenon, timber
from tests.proof.areas import content
from tests.proof.boxes import beyond, meet
from tests.proof.carve import Carving, Segment, carve, segments, spots
from tests.proof.demos import SHED, demo
from tests.proof.marks import Rule
from tests.proof.raising import raised, ruled
from tests.space import Box, Span

CUBIC_INCH = length("1").nm ** 3


def span(low: str, high: str) -> Span:
    """From one place to another as a framer writes them."""
    return length(low).nm, length(high).nm


def read(built: Frame, name: str, sizes: Real | None = None) -> Rule:
    """The marks of one timber."""
    return ruled(built, lay_out(built, name), sizes or Real())


def wood(carving: Carving, inside: Box) -> float:
    """The wood inside a box before any chamfer, in cubic inches."""
    taken = [*carving.missing, *(box for boxes in carving.cuts.values() for box in boxes)]
    return content(meet(carving.blank, inside), taken) / CUBIC_INCH


def test_a_tenon_is_what_is_left_between_its_lines() -> None:
    """5" long, 2" thick and 6" less 1-1/4" wide at the foot; 4" by 2" by 5" at the head."""
    carving = carve(read(corners(), "post-sw"))
    assert wood(carving, beyond(0, length("5").nm, far=False)) == 5 * 2 * 4.75
    assert wood(carving, beyond(0, length("8' 4").nm, far=True)) == 4 * 2 * 5
    assert wood(carving, (span("5", "8' 4"), span("0", "6"), span("0", "6"))) == 95 * 36


def test_a_tenon_as_cut_counts_from_its_reference_side() -> None:
    """An eighth thin, a quarter narrow and half an inch short: all of it off the far sides."""
    sizes = real(as_cut={"foot-tenon": {"thickness": "1-7/8", "width": "4-1/2", "length": "4-1/2"}})
    built = corners(real={"post-sw": sizes})
    carving = carve(read(built, "post-sw", sizes))
    made = (span("1/2", "5"), span("2", "3-7/8"), span("1-1/4", "5-3/4"))
    assert wood(carving, beyond(0, length("5").nm, far=False)) == wood(carving, made)
    assert wood(carving, made) == 4.5 * 1.875 * 4.5


def test_an_end_allowance_is_gone_once_the_joint_is_fitted() -> None:
    """The tenon is trimmed to its end line."""
    joint = tenon(end_allowance="1/2")
    carving = carve(read(frame(timber("post"), joint), "post"))
    assert carving.blank[0] == span("0", "8' 4-1/2")
    assert wood(carving, beyond(0, length("5-1/2").nm, far=False)) == 5 * 2 * 6


def test_a_mortise_goes_down_from_its_face_between_its_lines() -> None:
    """4-3/4" by 2" by 5-1/8", and nothing else is missing from the sill's west half."""
    carving = carve(read(corners(), "sill"))
    whole = (span("0", "8'"), span("0", "8"), span("0", "8"))
    assert wood(carving, whole) == 96 * 64 - 4.75 * 2 * 5.125


def test_a_housing_takes_the_whole_end_and_runs_out_where_it_has_no_line() -> None:
    """Half an inch deep and 6" along the sill; open at the south side, where the post is flush."""
    joint = tenon(into="sill", at="4'", housing="1/2")
    carving = carve(read(frame(timber("post"), sill(), joint), "sill"))
    skin = (span("0", "16'"), span("0", "1/2"), span("0", "8"))
    assert wood(carving, skin) == (192 * 8 - 6 * 6) / 2
    assert wood(carving, (span("4'", "4' 6"), span("0", "1/2"), span("0", "6"))) == 0


def test_a_reduced_end_is_brought_down_as_far_back_as_it_goes_in() -> None:
    """By square rule a 6" post in a half-inch housing is 5-1/2" by 5-1/4" over that half inch."""
    joint = tenon(into="sill", at="4'", housing="1/2")
    built = frame(
        timber("post", section="post"),
        sill(rule="mill"),
        joint,
        rule="square",
        sections={"post": "6 x 6"},
        inner={"post": "5-1/2 x 5-1/4"},
    )
    carving = carve(read(built, "post"))
    whole = (span("0", "6"), span("0", "6"))
    assert wood(carving, (span("5", "5-1/2"), *whole)) == 5.5 * 5.25 / 2
    assert wood(carving, (span("5-1/2", "8"), *whole)) == 36 * 2.5


def test_a_joist_s_end_and_its_pocket_are_cut_to_one_another() -> None:
    """The shed's west joist 1: 2" of bearing let in 2", an eighth to spare behind it."""
    pieces = raised(demo(SHED, "mill"), {}).pieces
    pocket = pieces["sill-west"].carving
    start, finish = pocket.cuts["joist-w1-west-pocket"][0][0]
    spot = ((start, finish), span("0", "8"), span("0", "8"))
    assert wood(pocket, spot) == 3.5 * (64 - 2 * 2.125)
    assert pieces["joist-w1"].carving.cuts["west-end-bearing"] == ()


def test_a_chamfer_is_planed_off_between_its_stops() -> None:
    """A 3/4" leg between two stops: half of its square, all along."""
    piece = raised(demo(SHED, "mill"), {}).pieces["post-nw"]
    stops = [
        piece.rule.place("inside-chamfer", line).at
        for line in piece.rule.marks["inside-chamfer"]
        if line.endswith("-stop")
    ]
    taken = wood(piece.carving, piece.carving.blank) * CUBIC_INCH - piece.solid.volume
    leg = length("3/4").nm
    assert taken == pytest.approx((max(stops) - min(stops)) * leg * leg / 2, rel=1e-6)


def test_joints_side_by_side_are_measured_once() -> None:
    """A corner post and an end sill meet the long sill at one spot, the girder at another."""
    piece = raised(demo(SHED, "mill"), {}).pieces["sill-south"]
    assert [features for _, features in spots(piece.rule)] == [
        ("sw-foot-mortise", "west-south-mortise"),
        ("sm-foot-mortise", "girder-south-mortise"),
        ("east-south-mortise", "se-foot-mortise"),
    ]


def test_a_section_holds_half_way_to_the_next_joint() -> None:
    """A quarter fatter at the head than at the foot: it changes in the middle of the body."""
    sizes = real({"head": {"first": "6-1/4"}})
    found = segments(read(corners(real={"post-sw": sizes}), "post-sw", sizes))
    thin, fat = length("6").nm, length("6-1/4").nm
    assert found == (
        Segment(span=span("0", "4' 4-1/2"), section=(thin, thin), features=("foot-tenon",)),
        Segment(span=span("4' 4-1/2", "8' 8"), section=(fat, thin), features=("head-tenon",)),
    )


def test_a_stick_without_joints_has_its_section_all_along() -> None:
    """Squared at both ends and nothing more."""
    rule = read(frame(timber("post")), "post")
    (whole,) = segments(rule)
    assert whole == Segment(span=span("0", "7' 11"), section=rule.stock.section(""))


def test_one_spot_with_two_sections_is_refused() -> None:
    """A stick cannot measure two things in one place."""
    piece = raised(demo(SHED, "mill"), {}).pieces["sill-south"]
    twice = real({"sw-foot-mortise": {"first": "8-1/8"}})
    stock = replace(piece.rule.stock, measured=twice.measured)
    with pytest.raises(ValueError, match="one spot"):
        segments(replace(piece.rule, stock=stock))
