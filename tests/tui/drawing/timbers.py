"""Timbers to draw: two corner posts, one of either hand, and what they stand on and carry.

The sizes are those of the issue's own check: common practice, no source.
"""

from __future__ import annotations

import functools
from typing import TYPE_CHECKING

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.chamfer.record import Chamfer
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.step import Layout, Step, shown_readings
from benchmate.layout.walk import lay_out
from benchmate.model.progress import Measured
from benchmate.model.project import Project, Timber
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.glyphs import UNICODE, Glyphs

if TYPE_CHECKING:
    from benchmate.model.directions import Face
    from benchmate.tui.drawing.canvas import Drawing

LEVEL = (("sill", "8 x 8", "16'"), ("plate", "6 x 7", "18'"), ("short", "6 x 6", "12"))
TIMBERS = ("post-sw", "post-se", "sill", "plate", "short")


@functools.cache
def frame(*, oversize: bool = False) -> Frame:
    """The whole frame; the south-east post may be 1/16" over its size at the foot."""
    corners = (("sw", "west"), ("se", "east"))
    posts = [_post(corner, second) for corner, second in corners]
    project = Project.model_validate(
        {
            "name": "Shed",
            "timbers": [
                *posts,
                _level("sill", "8 x 8", "16'"),
                _level("plate", "6 x 7", "18'"),
                _level("short", "6 x 6", "12"),
            ],
            "works": [work for corner, _ in corners for work in _tenons(corner)] + [_chamfer()],
        }
    )
    real = {"foot-tenon": Measured.model_validate({"first": "6-1/16"})}
    return Frame(project, {"post-se": Real(real, {})} if oversize else {})


@functools.cache
def layout(timber: str, *, oversize: bool = False) -> Layout:
    """The walk round one of the timbers."""
    return lay_out(frame(oversize=oversize), timber)


@functools.cache
def draw(
    timber: str,
    step: str,
    face: Face,
    size: tuple[int, int],
    *,
    glyphs: Glyphs = UNICODE,
) -> Drawing:
    """A face as the screen shows it once the reference shoulder is struck, figure and all."""
    walk = layout(timber)
    found = walk.step(step)
    readings = shown_readings(found, shoulder_struck=True, swapped=False)
    return draw_face(
        walk,
        found,
        face,
        width=size[0],
        height=size[1],
        glyphs=glyphs,
        reading=readings[0] if readings else None,
        figure=frame().project.tape.text(readings[0].value) if readings else "",
    )


def steps_with_lines(walk: Layout) -> list[Step]:
    """The steps that strike a line."""
    return [step for step in walk.steps if step.line]


def _post(corner: str, second: str) -> Timber:
    return Timber.model_validate(
        {
            "id": f"post-{corner}",
            "name": f"{corner} post",
            "kind": "post",
            "section": "6 x 6",
            "first_face": "south",
            "second_face": second,
            "reference_end": "foot",
            "length": "7' 11",
        }
    )


def _level(name: str, section: str, length: str) -> Timber:
    return Timber.model_validate(
        {
            "id": name,
            "name": name,
            "kind": "beam",
            "section": section,
            "first_face": "up",
            "second_face": "south",
            "reference_end": "west",
            "length": length,
        }
    )


def _tenons(corner: str) -> list[TenonJoint]:
    common = {"family": "tenon", "timber": f"post-{corner}", "thickness": "2", "set_back": "2"}
    foot = {
        "id": f"{corner}-foot",
        "end": "foot",
        "into": "sill",
        "at": "0" if corner == "sw" else "16'",
        "length": "5",
        "relief_reference": "1-1/4",
    }
    head = {
        "id": f"{corner}-head",
        "end": "head",
        "into": "plate",
        "at": "1'" if corner == "sw" else "17'",
        "length": "4",
        "all_round": "1/2",
    }
    return [TenonJoint.model_validate(common | own) for own in (foot, head)]


def _chamfer() -> Chamfer:
    return Chamfer.model_validate(
        {
            "id": "inside-chamfer",
            "on": ["post-sw", "post-se"],
            "arrises": ["far-far"],
            "leg": "3/4",
            "near_stop": {"shoulder": "foot", "distance": "15-1/2"},
            "far_stop": {"shoulder": "head", "distance": "6"},
        }
    )
