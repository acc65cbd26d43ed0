"""A sill corner: an end sill tenoned into a long one, and a post whose tenon goes through it."""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.crossing import Crossing, crossings
from benchmate.joinery.tenon.hole import Hole, hole
from benchmate.joinery.tenon.mortise_shape import MortiseShape, mortise_of
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import shape
from benchmate.model.project import Timber
from tests.builders import frame, tenon, timber
from tests.joinery.tenon.plans import Plan

Words = Mapping[str, object]
NONE: Words = {}

AS_DRAWN = Plan()

HOLE = "post-foot-hole"


@dataclass(frozen=True, slots=True, kw_only=True)
class Faces:
    """Where the reference faces of the three look, and the end sill's reference end.

    With `above` the corner is one of plates: the post stands under it, its head tenon goes up.
    """

    long: tuple[str, str] = ("up", "south")
    end: tuple[str, str] = ("up", "west")
    post: tuple[str, str] = ("south", "west")
    reference_end: str = "south"
    above: bool = False


AT = {"south": "0", "west": "0", "up": "0", "down": "-8"}
"""Where a reference face of an 8 x 8 sill lies at the corner; its outsides are at zero."""


def sill_corner(
    plan: Plan = AS_DRAWN,
    faces: Faces | None = None,
    *,
    sill: Words = NONE,
    stub: Words = NONE,
    own: Mapping[str, Words] | None = None,
    real: Mapping[str, Real] | None = None,
    **words: object,
) -> Frame:
    """8 x 8 sills and a 7 x 7 post, their outer faces flush.

    The end sill's tenon is 2" thick, 2" in, 6" wide by a relief of 2" on its outer edge, and goes
    through the long sill but for 1/4". The post's is 2" thick, 2" in, 5" long and 4" wide.
    """
    how, said = faces or Faces(), own or {}
    parts = (
        _long(plan, how, said.get("long", NONE)),
        _end(plan, how, said.get("end", NONE)),
        _post(plan, how, said.get("post", NONE)),
        tenon(
            **{
                "id": "end-sill",
                "timber": "end",
                "end": plan.way("south"),
                "into": "long",
                "length": None,
                "through": True,
                "held_short": "1/4",
                "relief_reference": "2",
            }
            | dict(sill)
        ),
        tenon(
            **{
                "id": "post-foot",
                "timber": "post",
                "end": "head" if how.above else "foot",
                "into": "long",
                "relief_reference": "2-1/2",
                "relief_far": "1/2",
                "meets": ("end-sill",),
            }
            | dict(stub)
        ),
    )
    return frame(*parts, real=real, **words)


def _long(plan: Plan, how: Faces, words: Words) -> Timber:
    first, second = how.long
    return timber(
        "long",
        **{
            "kind": "sill",
            "section": "8 x 8",
            "first_face": first,
            "second_face": plan.way(second),
            "reference_end": plan.way("west"),
            "length": None,
            "at": plan.at(north=AT.get(second, "8"), up=AT[first]),
            "reference_end_at": plan.along("east", "0"),
            "far_end_at": plan.along("east", "12'"),
        }
        | dict(words),
    )


def _end(plan: Plan, how: Faces, words: Words) -> Timber:
    first, second = how.end
    other = "far_end_at" if how.reference_end == "south" else "reference_end_at"
    return timber(
        "end",
        **{
            "kind": "sill",
            "section": "8 x 8",
            "first_face": first,
            "second_face": plan.way(second),
            "reference_end": plan.way(how.reference_end),
            "length": None,
            "at": plan.at(east=AT.get(second, "8"), up=AT[first]),
            other: plan.along("north", "10'"),
        }
        | dict(words),
    )


def _post(plan: Plan, how: Faces, words: Words) -> Timber:
    first, second = how.post
    return timber(
        "post",
        **{
            "section": "7 x 7",
            "first_face": plan.way(first),
            "second_face": plan.way(second),
            "length": None,
            "at": plan.at(north=AT.get(first, "7"), east=AT.get(second, "7")),
            "reference_end_at" if how.above else "far_end_at": "-9'" if how.above else "8'",
        }
        | dict(words),
    )


def joint_of(frame: Frame, joint: str) -> TenonJoint:
    """A joint of a frame by its id."""
    (found,) = (work for work in frame.project.works if work.id == joint)
    assert isinstance(found, TenonJoint)
    return found


def mortise(frame: Frame, joint: str) -> MortiseShape:
    """The mortise of a joint by its id."""
    record = joint_of(frame, joint)
    found = mortise_of(record, shape(record, frame), frame)
    assert found is not None
    return found


def crossing(frame: Frame) -> Crossing:
    """The one crossing of a corner."""
    (found,) = crossings(joint_of(frame, "post-foot"), mortise(frame, "post-foot"), frame)
    return found


def hole_of(frame: Frame) -> Hole:
    """The hole of a corner."""
    return hole(crossing(frame), frame)
