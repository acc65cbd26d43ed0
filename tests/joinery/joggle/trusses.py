"""Half a king-post truss, any way round: a tie, a post on it, a rafter and a strut between them."""

from collections.abc import Mapping
from typing import NamedTuple

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joggle.record import JoggleJoint
from tests.builders import frame, timber
from tests.compass import ALONG, OPPOSITE, SENSE

JOINTS = {
    "heel": ("rafter", "foot", "tie"),
    "crown": ("rafter", "head", "post"),
    "strut-foot": ("strut", "foot", "post"),
    "strut-head": ("strut", "head", "rafter"),
}
"""Every joint of the truss: whose end it is, which, and what it is let into."""

SECTIONS = {"tie": "10 x 8", "post": "8 x 8", "rafter": "8 x 6", "strut": "5 x 5"}
"""What each timber is drawn with: deep in the plane of the truss, then across it."""


def joggle_joint(**words: object) -> JoggleJoint:
    """The rafter's foot in the tie: notched 1-1/2", a 2" tenon 2" longer than that, set back 2"."""
    return JoggleJoint.model_validate(
        {
            "id": "heel",
            "family": "joggle",
            "timber": "rafter",
            "end": "foot",
            "into": "tie",
            "notch": "1-1/2",
            "length": "2",
            "thickness": "2",
            "set_back": "2",
        }
        | words
    )


class Plan(NamedTuple):
    """Which way a truss runs: the way its rafter rises, and where its second faces look."""

    heading: str
    looks: str

    @property
    def back(self) -> str:
        """The way the rafter comes from."""
        return OPPOSITE[self.heading]

    def at(self, ahead: str, aside: str = "0", **more: str) -> dict[str, str]:
        """Coordinates so far ahead of the rafter's toe, and so far aside."""
        along = ALONG[self.heading]
        across = "north" if along == "east" else "east"
        placed = ahead if SENSE[self.heading] > 0 or ahead == "0" else f"-{ahead}"
        return {along: placed, across: aside} | more

    def on(self, **up: str) -> dict[str, str]:
        """The line of a timber that runs along the truss."""
        along = ALONG[self.heading]
        return {"north" if along == "east" else "east": "0"} | up


def truss(
    *,
    heading: str = "east",
    slope: tuple[str, str] = ("12'", "9'"),
    strut_slope: tuple[str, str] = ("48", "36"),
    edges: Mapping[str, str] | None = None,
    side: str | None = None,
    joint: Mapping[str, object] | None = None,
    joints: Mapping[str, Mapping[str, object]] | None = None,
    only: tuple[str, ...] = tuple(JOINTS),
    real: Mapping[str, Real] | None = None,
    own: Mapping[str, Mapping[str, object]] | None = None,
    **words: object,
) -> Frame:
    """The rafter rises `heading` from the zero of the frame, where it meets the tie's top.

    Its head meets the post 12' on, and the strut leans back from the post, a foot above the tie.
    `edges` are where each timber's first face looks, if not where it usually does; the second looks
    `side`. `joint` is said of every joint, `joints` of some, `own` of some timbers; `only` the
    joints named are there.
    """
    plan = Plan(heading, side or ("south" if ALONG[heading] == "east" else "west"))
    first = {"tie": "up", "post": plan.back, "rafter": "up", "strut": "down"} | dict(edges or {})
    said = _square_ones(plan, first) | _raking_ones(plan, slope, strut_slope)
    parts = [
        timber(
            name,
            **{"length": None, "kind": name, "section": SECTIONS[name], "second_face": plan.looks}
            | {"first_face": first[name]}
            | said[name]
            | dict((own or {}).get(name, {})),
        )
        for name in SECTIONS
    ]
    made = [
        joggle_joint(
            **{"id": name, "timber": whose, "end": end, "into": into}
            | dict(joint or {})
            | dict((joints or {}).get(name, {}))
        )
        for name, (whose, end, into) in JOINTS.items()
        if name in only
    ]
    return frame(*parts, *made, real=real, units="inches", **words)


def _square_ones(plan: Plan, first: Mapping[str, str]) -> dict[str, dict[str, object]]:
    return {
        "tie": {
            "reference_end": plan.back,
            "at": plan.on(up="0" if first["tie"] == "up" else "-10"),
            "reference_end_at": f"{-2 * SENSE[plan.heading]}'",
            "length": "20'",
        },
        "post": {
            "reference_end": "foot",
            "at": plan.at("12'" if first["post"] == plan.back else "12' 8"),
            "reference_end_at": "0",
            "length": "14'",
        },
    }


def _raking_ones(
    plan: Plan, slope: tuple[str, str], strut_slope: tuple[str, str]
) -> dict[str, dict[str, object]]:
    lines = {
        "rafter": (plan.at("0", up="0"), plan.heading, slope),
        "strut": (plan.at("12'", "1", up="1'"), plan.back, strut_slope),
    }
    return {
        name: {
            "reference_end": "foot",
            "incline": {"foot": foot, "towards": towards, "run": run, "rise": rise},
        }
        for name, (foot, towards, (run, rise)) in lines.items()
    }
