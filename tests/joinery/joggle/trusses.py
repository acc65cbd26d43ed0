"""Half a king-post truss, any way round: a tie, a post on it, a rafter and a strut between them."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.model.project import Timber
from tests.builders import frame, timber

OPPOSITE = {"east": "west", "west": "east", "north": "south", "south": "north"}
ALONG = {"east": "east", "west": "east", "north": "north", "south": "north"}
SENSE = {"east": 1, "north": 1, "west": -1, "south": -1}

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
    along, toward, back = ALONG[heading], SENSE[heading], OPPOSITE[heading]
    across = "north" if along == "east" else "east"
    first = {"tie": "up", "post": back, "rafter": "up", "strut": "down"} | dict(edges or {})
    looks = side or ("south" if along == "east" else "west")

    def stick(name: str, **more: object) -> Timber:
        face = {"section": SECTIONS[name], "first_face": first[name], "second_face": looks}
        return timber(
            name, **{"length": None, "kind": name} | face | more | dict((own or {}).get(name, {}))
        )

    def at(inches: str) -> str:
        return inches if toward > 0 else f"0 - ({inches})"

    post_at = "12'" if first["post"] == back else "12' 8"
    parts = [
        stick(
            "tie",
            reference_end=back,
            at={across: "0", "up": "0" if first["tie"] == "up" else "-10"},
            reference_end_at=f"{-2 * toward}'",
            length="20'",
        ),
        stick(
            "post",
            reference_end="foot",
            at={along: f"{'-' if toward < 0 else ''}{post_at}", across: "0"},
            reference_end_at="0",
            length="14'",
        ),
        stick(
            "rafter",
            reference_end="foot",
            incline={
                "foot": {along: "0", across: "0", "up": "0"},
                "towards": heading,
                "run": slope[0],
                "rise": slope[1],
            },
        ),
        stick(
            "strut",
            reference_end="foot",
            incline={
                "foot": {along: f"{'-' if toward < 0 else ''}12'", across: "1", "up": "1'"},
                "towards": back,
                "run": strut_slope[0],
                "rise": strut_slope[1],
            },
        ),
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
