"""A post's head tenon up through a plate and on into the tie that lies over it."""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.lap.record import LapJoint
from benchmate.joinery.tenon.beyond import mortise_beyond
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import shape
from benchmate.model.project import Timber
from tests.builders import frame, tenon, timber
from tests.joinery.tenon.plans import Plan

Words = Mapping[str, object]
NONE: Words = {}

AS_DRAWN = Plan()

MORTISE = "post-head-mortise"


@dataclass(frozen=True, slots=True, kw_only=True)
class Lie:
    """How plate and tie lie: where their reference faces look, and how far the tie comes down.

    The tie's underside lies `down` below the plate's top: above nothing where one of them is
    notched for the other, below nothing where the tie is clear of the plate.
    """

    plate: tuple[str, str] = ("up", "south")
    tie: tuple[str, str] = ("up", "west")
    post: tuple[str, str] = ("south", "west")
    reference_end: str = "foot"
    down: str = "1"
    runs_along: bool = False


def head_tie(
    plan: Plan = AS_DRAWN,
    lie: Lie | None = None,
    *,
    joint: Words = NONE,
    lap: Words | None = None,
    own: Mapping[str, Words] | None = None,
    real: Mapping[str, Real] | None = None,
    **words: object,
) -> Frame:
    """An 8 x 8 post under a plate 7" deep and a tie 9" deep, both 8" wide and flush outside.

    The plate's top is 8' up. The tenon is 2" thick, 2" in, 4" wide by a relief of 2" all round, and
    stands 3" past the plate. With a `lap` they are cut to let one another by.
    """
    how, said = lie or Lie(), own or {}
    return frame(
        _plate(plan, how, said.get("plate", NONE)),
        _tie(plan, how, said.get("tie", NONE)),
        _post(plan, how, said.get("post", NONE)),
        head_tenon(joint),
        *([] if lap is None else [tie_lap(lap)]),
        real=real,
        **words,
    )


def head_tenon(joint: Words = NONE) -> TenonJoint:
    """The post's tenon, with other words where they are given."""
    return tenon(
        **{
            "id": "post-head",
            "timber": "post",
            "end": "head",
            "into": "plate",
            "through": True,
            "length": None,
            "past": "3",
            "beyond": "tie",
            "all_round": "2",
        }
        | dict(joint)
    )


def tie_lap(words: Words) -> LapJoint:
    """The tie let into the plate from above, where it crosses it."""
    return LapJoint.model_validate(
        {"id": "tie-lap", "family": "lap", "timber": "tie", "into": "plate", "side": "up"}
        | dict(words)
    )


def _plate(plan: Plan, how: Lie, words: Words) -> Timber:
    first, second = how.plate
    return timber(
        "plate",
        **{
            "kind": "plate",
            "section": "7 x 8",
            "first_face": first,
            "second_face": plan.way(second),
            "reference_end": plan.way("west"),
            "length": None,
            "at": plan.at(north="0" if second == "south" else "8")
            | {"up": "8'" if first == "up" else "7' 5"},
            "reference_end_at": plan.along("east", "-1'"),
            "far_end_at": plan.along("east", "12'"),
        }
        | dict(words),
    )


def _tie(plan: Plan, how: Lie, words: Words) -> Timber:
    first, second = how.tie
    height = f"8' - {how.down}" if first == "down" else f"8' 9 - {how.down}"
    side = {"west": "0", "east": "8", "south": "0", "north": "8"}[second]
    runs, across = ("east", "north") if how.runs_along else ("north", "east")
    back = "west" if how.runs_along else "south"
    return timber(
        "tie",
        **{
            "kind": "tie",
            "section": "9 x 8",
            "first_face": first,
            "second_face": plan.way(second),
            "reference_end": plan.way(back),
            "length": None,
            "at": plan.at(**{across: side}) | {"up": height.replace("- -", "+ ")},
            "reference_end_at": plan.along(runs, "-10"),
            "far_end_at": plan.along(runs, "10'"),
        }
        | dict(words),
    )


def _post(plan: Plan, how: Lie, words: Words) -> Timber:
    first, second = how.post
    other = "reference_end_at" if how.reference_end == "foot" else "far_end_at"
    return timber(
        "post",
        **{
            "section": "8 x 8",
            "first_face": plan.way(first),
            "second_face": plan.way(second),
            "reference_end": how.reference_end,
            "length": None,
            "at": plan.at(
                north="0" if first == "south" else "8", east="0" if second == "west" else "8"
            ),
            other: "0",
        }
        | dict(words),
    )


def made(frame: Frame) -> MortiseShape:
    """The mortise in the third timber."""
    (joint,) = (work for work in frame.project.works if isinstance(work, TenonJoint))
    found = mortise_beyond(joint, shape(joint, frame), frame)
    assert found is not None
    return found
