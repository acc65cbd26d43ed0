"""The names beside a rolled timber: its faces, which way up they lie, and the arrises between."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.directions import Direction, Face
from benchmate.tui.drawing.canvas import Canvas, Role
from benchmate.tui.drawing.face import top_face
from benchmate.tui.drawing.roll import in_order

if TYPE_CHECKING:
    from benchmate.model.directions import Pose
    from benchmate.tui.drawing.roll import Roll
    from benchmate.tui.drawing.rolled_bands import Band
    from benchmate.tui.glyphs import Glyphs


def name_face(canvas: Canvas, roll: Roll, band: Band, left_out: int) -> None:
    """The row over a face and its figures: which face it is, and what else must be known."""
    row = band.first - band.above - 1
    missing = f" {left_out} more{': z' if roll.whole else ''} " if left_out else ""
    room = canvas.width - len(missing)
    if band.face is roll.face:
        text = next((text for text in _in_hand(roll) if len(text) <= room), "")
        canvas.write((row, 0), text, Role.LOUD)
    else:
        canvas.write((row, 0), _name(roll, band.face), Role.TITLE)
    canvas.write((row, room), missing, Role.FIGURE)


def _in_hand(roll: Roll) -> tuple[str, ...]:
    """Which face is in hand, how it is seen, and how it lies: the fullest way first."""
    pose = roll.layout.stick.pose
    up = top_face(pose, roll.face)
    edges = f"{_short(pose, up)} edge above, {_short(pose, up.opposite)} edge below"
    name, bare = _name(roll, roll.face), pose.words(roll.face)
    shortened = "; length drawn short" if roll.whole else "; to scale both ways"
    return (
        f" {name}, from outside: {edges}{shortened} ",
        f" {name}, from outside: {edges} ",
        f" {bare}, from outside: {edges} ",
        f" {bare}: {edges} ",
        f" {bare} ",
    )


def _short(pose: Pose, face: Face) -> str:
    return pose.words(face).removesuffix(" face")


def _name(roll: Roll, face: Face) -> str:
    """A face, which reference it is if it is one, and whether the crown goes there."""
    number = {Face.FIRST: ", 1st reference", Face.SECOND: ", 2nd reference"}.get(face, "")
    crown = ", crown" if face is roll.crown else ""
    name = roll.layout.stick.pose.words(face)
    return f"{name[0].upper()}{name[1:]}{number}{crown}"


def name_seams(canvas: Canvas, roll: Roll, bands: tuple[Band, ...], glyphs: Glyphs) -> None:
    """The arrises between the faces, the reference arris heavy; or the names of the neighbours."""
    above, hand, below, across = in_order(roll.layout.stick.pose, roll.face)
    own = next(band for band in bands if band.face is roll.face)
    over, under = own.first - own.above - 2, own.first + own.body + own.below
    if len(bands) == 1:
        _neighbour(canvas, roll, (over, glyphs.up, "d"), above, glyphs)
        _neighbour(canvas, roll, (under, glyphs.down, "f"), below, glyphs)
        return
    _seam(canvas, roll, over, (above, hand), glyphs)
    _seam(canvas, roll, under, (hand, below), glyphs)
    first, last = bands[0], bands[-1]
    top, bottom = first.first - first.above - 2, last.first + last.body + last.below
    if across in {band.face for band in bands}:
        _seam(canvas, roll, top, (across, above), glyphs)
        _seam(canvas, roll, last.first - last.above - 2, (below, across), glyphs)
        _seam(canvas, roll, bottom, (across, above), glyphs)
        return
    for row, face in ((top + 1, above), (bottom, below)):
        canvas.write((row, 0), f"{_name(roll, face)}, drawn narrow", Role.TITLE)
        words, reference = _arris(roll, face, across)
        if reference:
            words = f" {glyphs.arris} outer edge: {words} {glyphs.arris}"
            canvas.write((row, canvas.width - len(words)), words, Role.REFERENCE_LABEL)


_ORDER = (Direction.UP, Direction.DOWN, Direction.NORTH, Direction.SOUTH)
"""Which of two faces an arris is named by first; east and west come last."""


def _arris(roll: Roll, one: Face, other: Face) -> tuple[str, bool]:
    """What an arris is called, and whether it is the reference arris."""
    pose = roll.layout.stick.pose
    if {one, other} == {Face.FIRST, Face.SECOND}:
        return f"{pose.arris_words(Face.FIRST, Face.SECOND)} = REFERENCE ARRIS", True
    leads = pose.direction(one) in _ORDER and (
        pose.direction(other) not in _ORDER
        or _ORDER.index(pose.direction(one)) < _ORDER.index(pose.direction(other))
    )
    first, second = (one, other) if leads else (other, one)
    return f"{pose.arris_words(first, second)} arris", False


def _seam(canvas: Canvas, roll: Roll, row: int, faces: tuple[Face, Face], glyphs: Glyphs) -> None:
    """A line across the sheet that names the arris two faces share."""
    words, reference = _arris(roll, *faces)
    line = glyphs.heavy_across if reference else glyphs.hidden_across
    role = Role.REFERENCE_LABEL if reference else Role.LABEL
    canvas.put(((row, column) for column in range(canvas.width)), line, role)
    text = f" {glyphs.arris} {words} {glyphs.arris} " if reference else f" {words} "
    canvas.write((row, (canvas.width - len(text)) // 2), text, role)


def _neighbour(
    canvas: Canvas, roll: Roll, place: tuple[int, str, str], face: Face, glyphs: Glyphs
) -> None:
    """A face that is not drawn: the key that brings it up, and the arris it comes over."""
    row, arrow, key = place
    words, reference = _arris(roll, roll.face, face)
    sign = f"{glyphs.arris} " if reference else ""
    text = f"{arrow} {key}: {_name(roll, face)}; {sign}{words}"
    role = Role.REFERENCE_LABEL if reference else Role.LABEL
    canvas.write((row, 0), text[: canvas.width], role)
