"""Outlines of the waste on a face, against points asked of the cuts themselves."""

from collections.abc import Sequence
from typing import NamedTuple

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.layout.outlines import (
    FaceView,
    Outline,
    Point,
    _clip,
    face_view,
    outline,
    outlines,
    struck,
)
from benchmate.layout.walk import features_on
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.model.directions import LONG_FACES, Direction, Face, Pose
from benchmate.model.feature import Feature
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick
from tests.builders import corners, frame, length, real, sill, tenon, timber

STICK = Stick(
    id="post",
    name="Post",
    pose=Pose(Direction.SOUTH, Direction.WEST, Direction.DOWN),
    nominal=Section(Length(6), Length(8)),
    body=Length(40),
    near=Length(5),
    far=Length(4),
    trim=Length(2),
    measured={},
    as_cut={},
)
"""A stick a few nanometres big, so that every whole point of it can be asked."""

SIZES = (range(-7, 47), range(7), range(9))
"""Where its readings run, trim included."""

SIDES = st.builds(
    lambda side, axis, at: side(axis, Length(at), f"{axis.name} {at} {side.__name__}"),
    st.sampled_from([above, below]),
    st.sampled_from(Axis),
    st.integers(-1, 9),
)
SLOPES = st.builds(
    lambda u, v, offset: Plane((0, u, v), offset, f"slope {u} {v} {offset}"),
    st.sampled_from([1, -1]),
    st.sampled_from([1, -1]),
    st.integers(-14, 14),
)
CUTS = st.builds(
    lambda sides, slopes: Cut((*sides, *slopes)),
    st.lists(SIDES, min_size=1, max_size=4),
    st.lists(SLOPES, max_size=1),
)
FACES = st.sampled_from(Face)


class Asked(NamedTuple):
    """A point of a face in the stick's own readings and in the face's two."""

    whole: tuple[int, int, int]
    shown: Point


def _points(view: FaceView) -> list[Asked]:
    """Every whole point of a face of the small stick."""
    runs: list[Sequence[int]] = list(SIZES)
    runs[view.fixed] = (view.at,)
    first, second = view.shown
    return [
        Asked((x, u, v), ((x, u, v)[first], (x, u, v)[second]))
        for x in runs[0]
        for u in runs[1]
        for v in runs[2]
    ]


def _inside(shape: Outline, point: Point) -> bool:
    """Whether a point is in a convex outline or on it: never on different sides of two edges."""
    turns = [
        (q[0] - p[0]) * (point[1] - p[1]) - (q[1] - p[1]) * (point[0] - p[0])
        for p, q, _ in shape.edges()
    ]
    return min(turns) >= 0 or max(turns) <= 0


def _well_inside(cut: Cut, view: FaceView, asked: Asked) -> bool:
    """Whether a point is in a cut and on none of its planes, nor on the face's own edge."""
    (a, b), (c, d) = view.low, view.high
    open_face = a < asked.shown[0] < c and b < asked.shown[1] < d
    planes = (
        sum(n * p for n, p in zip(plane.normal, asked.whole, strict=True)) < plane.offset
        for plane in cut.planes
    )
    return open_face and all(planes)


@settings(max_examples=250)
@given(CUTS, FACES)
def test_an_outline_is_where_the_cut_comes_out(cut: Cut, face: Face) -> None:
    """Law 4: a point of a face is in the outline if and only if the cut takes it."""
    view = face_view(STICK, face, STICK.nominal)
    shape = outline(cut, view)
    for asked in _points(view):
        within = shape is not None and _inside(shape, asked.shown)
        if within:
            assert cut.takes(*asked.whole)
        elif _well_inside(cut, view, asked):
            assert within, (asked, shape)


@settings(max_examples=250)
@given(CUTS, FACES)
def test_every_edge_is_named_by_the_line_it_lies_on(cut: Cut, face: Face) -> None:
    """An edge on a plane bears that plane's line; one on the stick's own edge may bear none."""
    view = face_view(STICK, face, STICK.nominal)
    shape = outline(cut, view)
    if shape is None:
        return
    for start, end, name in shape.edges():
        named = [plane.line for plane in cut.planes if _on(plane, view, start, end)]
        own = any(start[i] == end[i] and start[i] in (view.low[i], view.high[i]) for i in (0, 1))
        assert start != end
        assert name in named or (name is None and own)
        assert own or name is not None


def _on(plane: Plane, view: FaceView, *points: Point) -> bool:
    """Whether points of a face lie in a plane that crosses the face."""
    whole = [0, 0, 0]
    first, second = view.shown
    if not (plane.normal[first] or plane.normal[second]):
        return False
    for point in points:
        whole[view.fixed], whole[first], whole[second] = view.at, *point
        if sum(n * p for n, p in zip(plane.normal, whole, strict=True)) != plane.offset:
            return False
    return True


SQUARE = Outline(((0, 0), (4, 0), (4, 4), (0, 4)), ("south", "east", "north", "west"))
VIEW = FaceView(Face.REFERENCE_END, 0, 0, (0, 0), (4, 4))


@pytest.mark.parametrize(
    ("normal", "offset", "points", "lines"),
    [
        ((1, 0), 2, [(0, 0), (2, 0), (2, 4), (0, 4)], ["south", "cut", "north", "west"]),
        ((1, 1), 4, [(0, 0), (4, 0), (0, 4)], ["south", "cut", "west"]),
        ((-1, -1), -4, [(4, 0), (4, 4), (0, 4)], ["east", "north", "cut"]),
        ((1, 0), 4, SQUARE.points, SQUARE.lines),
        ((-1, 0), 0, SQUARE.points, SQUARE.lines),
        ((1, 0), 9, SQUARE.points, SQUARE.lines),
        ((0, 0), 0, SQUARE.points, SQUARE.lines),
        ((1, 1), 2, [(0, 0), (2, 0), (0, 2)], ["south", "cut", "west"]),
        ((-1, 1), 0, [(0, 0), (4, 0), (4, 4)], ["south", "east", "cut"]),
        ((1, -1), 2, [(0, 0), (2, 0), (4, 2), (4, 4), (0, 4)], None),
    ],
    ids=[
        "through two edges",
        "through two corners",
        "the other side of two corners",
        "an edge in the plane, all of it waste",
        "another edge in the plane, all of it waste",
        "missing the face on the waste side",
        "flat on the face",
        "off one corner",
        "down a diagonal",
        "off the opposite corner",
    ],
)
def test_clipping_at_a_plane(
    normal: tuple[int, int],
    offset: int,
    points: Sequence[Point],
    lines: Sequence[str] | None,
) -> None:
    """Corners on a plane are kept once, and the new edge, only the new edge, bears its line."""
    clipped = _clip(SQUARE, Plane((0, *normal), offset, "cut"), VIEW)
    assert clipped.points == tuple(points)
    assert clipped.lines == tuple(lines or ["south", "cut", "east", "north", "west"])


@pytest.mark.parametrize(
    ("normal", "offset"),
    [((1, 0), 0), ((-1, 0), -4), ((1, 0), -1), ((1, 1), 0), ((-1, -1), -8), ((0, 0), -1)],
    ids=["edge only", "far edge only", "past it", "corner only", "far corner only", "off the face"],
)
def test_a_plane_that_leaves_no_area_leaves_no_outline(
    normal: tuple[int, int], offset: int
) -> None:
    """A cut that only touches a face, or misses it, does not come out on it."""
    assert outline(Cut((Plane((0, *normal), offset, "cut"),)), VIEW) is None


def test_a_sliver_thinner_than_a_nanometre_is_no_outline() -> None:
    """Rounded to whole nanometres its corners lie on one line, and there is nothing to hatch."""
    sliver = Plane((0, -2, 1), -7, "cut")
    assert len(_clip(SQUARE, sliver, VIEW).points) == 3
    assert outline(Cut((sliver,)), VIEW) is None


def test_a_slope_of_any_rise_is_rounded_once_to_a_nanometre() -> None:
    """A crossing between two nanometres goes to the nearer one, whichever way it is walked."""
    for normal, offset, crossing in (((3, 1), 7, 2), ((-3, -1), -7, 2), ((3, 1), 8, 3)):
        clipped = _clip(SQUARE, Plane((0, *normal), offset, "cut"), VIEW)
        assert (crossing, 0) in clipped.points


def test_areas() -> None:
    """Twice the area is whole, so that a triangle's is exact too."""
    assert SQUARE.double_area == 32
    assert Outline(((0, 0), (0, 1), (1, 0)), (None,) * 3).double_area == 1


def _feature(timber_id: str, feature: str, **words: object) -> tuple[Feature, Stick]:
    built = corners() if not words else frame(timber("post"), sill(), tenon(**words))
    return (
        next(found for found in features_on(built, timber_id) if found.id == feature),
        built.stick(timber_id),
    )


def test_the_areas_of_the_check_tenon() -> None:
    """The waste on the end grain of a 6 x 6 leaves the 2" by 4-3/4" tenon."""
    feature, stick = _feature("post-sw", "foot-tenon")
    view = face_view(stick, Face.REFERENCE_END, stick.section())
    kept = [
        (u, v)
        for u in range(1, 24, 2)
        for v in range(1, 24, 2)
        if not any(
            _inside(shape, (u * length("1/4").nm, v * length("1/4").nm))
            for shape in outlines(feature, stick, Face.REFERENCE_END)
        )
    ]
    assert view.rectangle().double_area == 2 * length("6").nm ** 2
    assert {u for u, _ in kept} == set(range(9, 16, 2))
    assert {v for _, v in kept} == set(range(7, 24, 2))


def test_the_rough_stick_s_trim_belongs_to_a_long_face() -> None:
    """A long face runs the trim past both ends; an end is as big as the real section."""
    assert face_view(STICK, Face.FIRST, STICK.nominal).low == (-7, 0)
    assert face_view(STICK, Face.FIRST, STICK.nominal).high == (46, 8)
    assert face_view(STICK, Face.FAR_SECOND, STICK.nominal).high == (46, 6)
    assert face_view(STICK, Face.FAR_END, STICK.nominal).high == (6, 8)


@pytest.mark.parametrize(
    ("face", "fixed", "at"),
    [
        (Face.FIRST, 1, 0),
        (Face.FAR_FIRST, 1, 6),
        (Face.SECOND, 2, 0),
        (Face.FAR_SECOND, 2, 8),
        (Face.REFERENCE_END, 0, -5),
        (Face.FAR_END, 0, 44),
    ],
)
def test_where_each_face_lies(face: Face, fixed: int, at: int) -> None:
    """Far faces lie at the real depth, ends at the squared ends."""
    view = face_view(STICK, face, STICK.nominal)
    assert (view.fixed, view.at) == (fixed, at)
    assert view.fixed not in view.shown


def test_an_odd_stick_moves_only_its_far_faces() -> None:
    """Law 2: lines keep their readings on a face whose own depth has changed."""
    typed = {"post-sw": real({"foot-tenon": {"first": "6-1/4", "second": "6-1/4"}})}
    for built in (corners(), corners(typed)):
        stick = built.stick("post-sw")
        feature = next(one for one in features_on(built, "post-sw") if one.id == "foot-tenon")
        (near, far, *_) = outlines(feature, stick, Face.SECOND)
        at = {
            name: {start[1], end[1]}
            for shape in (near, far)
            for start, end, name in shape.edges()
            if name in ("near-cheek", "far-cheek")
        }
        assert at == {"near-cheek": {length("2").nm}, "far-cheek": {length("4").nm}}
        real_depth = stick.section("foot-tenon").first
        assert max(point[1] for point in far.points) == real_depth.nm


def test_no_set_back_means_no_waste_on_that_side() -> None:
    """A cheek in the reference face leaves that face whole."""
    feature, stick = _feature("post", "foot-tenon", set_back="0")
    assert outlines(feature, stick, Face.FIRST) == ()
    assert struck(feature, stick).get("shoulder", ()) == (
        Face.SECOND,
        Face.FAR_FIRST,
        Face.FAR_SECOND,
    )


def test_an_allowance_does_not_hide_the_tenon_on_the_end() -> None:
    """The end grain shows what goes round the tenon, though the whole end is trimmed later."""
    plain, stick = _feature("post", "foot-tenon", end_allowance="0", set_back="2")
    left_on, longer = _feature("post", "foot-tenon", end_allowance="1")
    shown = outlines(left_on, longer, Face.REFERENCE_END)
    assert shown == outlines(plain, stick, Face.REFERENCE_END)
    middle = (length("3").nm, length("3").nm)
    assert not any(_inside(shape, middle) for shape in shown)
    assert struck(left_on, longer).get("tenon-end", ()) == LONG_FACES


def test_the_end_cuts_show_on_the_long_faces_alone() -> None:
    """Squaring an end leaves no waste on the squared end itself."""
    feature, stick = _feature("post-sw", "end")
    assert [len(outlines(feature, stick, face)) for face in LONG_FACES] == [2] * 4
    assert outlines(feature, stick, Face.REFERENCE_END) == ()
    assert outlines(feature, stick, Face.FAR_END) == ()


def test_a_mortise_shows_on_its_entry_face_alone() -> None:
    """A box below the face comes out on no other, and its four lines go round it."""
    feature, stick = _feature("sill", "sw-foot-mortise")
    shown = {face: outlines(feature, stick, face) for face in Face}
    assert [face for face in Face if shown[face]] == [Face.FIRST]
    (shape,) = shown[Face.FIRST]
    assert set(shape.lines) == {"start", "finish", "near-side", "far-side"}
    assert shape.double_area == 2 * length("4-3/4").nm * length("2").nm


def test_a_chamfer_is_a_leg_wide_on_both_its_faces() -> None:
    """The gauge line lies the leg in from the arris on either face, between the stops."""
    feature, stick = _feature("post-sw", "inside-chamfer")
    for face in (Face.FAR_FIRST, Face.FAR_SECOND):
        (shape,) = outlines(feature, stick, face)
        across = {point[1] for point in shape.points}
        assert across == {length("5-1/4").nm, length("6").nm}
        assert set(shape.lines) == {"line", "foot-stop", "head-stop", None}
    assert outlines(feature, stick, Face.FAR_END) == ()
