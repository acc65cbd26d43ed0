"""A plate in two sticks, any way round: the check plate, and one of each kind of scarf."""

from collections.abc import Mapping

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.scarf.family import features
from benchmate.joinery.scarf.record import ScarfJoint
from benchmate.joinery.scarf.shape import Half, halves
from benchmate.model.feature import Feature
from benchmate.model.project import Timber
from tests.builders import frame, timber
from tests.compass import ALONG, OPPOSITE
from tests.space import TOWARDS

ENDS = {"up": "head", "down": "foot"}

KINDS: dict[str, dict[str, object]] = {
    "half lap": {},
    "stop-splayed": {"butt": "2"},
    "under-squinted": {"butt": "2", "squint": "1/2"},
    "bridled": {"tongue": "1-1/2", "tongue_length": "3", "set_back": "3"},
}
"""What each kind needs, for an 8" x 8" plate."""


def scarf(kind: str = "half lap", **words: object) -> ScarfJoint:
    """A 3' scarf in the middle of the line, 14' from its zero; `timber` keeps the top."""
    return ScarfJoint.model_validate(
        {
            "id": "plate-scarf",
            "family": "scarf",
            "timber": "one",
            "end": "east",
            "into": "other",
            "kind": kind,
            "at": "14'",
            "length": "3 ft",
            "keeps": "up",
        }
        | KINDS[kind]
        | words
    )


def stick(name: str, **words: object) -> Timber:
    """An 8 x 8 stick of a plate that runs east, top and south faces first, from its west end."""
    return timber(
        name,
        **(
            {
                "kind": "plate",
                "section": "8 x 8",
                "first_face": "up",
                "second_face": "south",
                "reference_end": "west",
                "at": {"north": "0", "up": "9'"},
                "length": None,
            }
            | words
        ),
    )


def plate(
    kind: str = "half lap",
    *,
    real: Mapping[str, Real] | None = None,
    joint: Mapping[str, object] | None = None,
    one: Mapping[str, object] | None = None,
    other: Mapping[str, object] | None = None,
    **words: object,
) -> Frame:
    """The check plate: 28' in all, two sticks scarfed at 14'."""
    sticks = (
        stick("one", **({"reference_end_at": "0"} | dict(one or {}))),
        stick("other", **({"far_end_at": "28'"} | dict(other or {}))),
    )
    return frame(*sticks, scarf(kind, **(joint or {})), real=real, **words)


def turned_plate(
    kind: str,
    *,
    end: str,
    keeps: str,
    faces: tuple[str, str],
    ends: tuple[str, str],
    real: Mapping[str, Real] | None = None,
    swapped: bool = False,
    own: Mapping[str, object] | None = None,
    **joint: object,
) -> Frame:
    """Two sticks of a line that runs any way, 10' to either side of a scarf at 3'.

    `one` is scarfed at its `end`; `ends` are the reference ends of both. `faces` are their first
    and second faces, `swapped` on the other stick. `own` is what else is said of both sticks.
    """
    sense = TOWARDS[end][1]
    along = ALONG[end if end in ALONG else OPPOSITE[end]]
    across = {name: "1'" for name in ("east", "north", "up") if name != along}
    outer = {"one": f"{3 - 10 * sense}'", "other": f"{3 + 10 * sense}'"}
    sticks = []
    for number, name in enumerate(("one", "other")):
        away = OPPOSITE[end] if name == "one" else end
        key = "reference_end_at" if ends[number] == away else "far_end_at"
        first, second = faces if not (swapped and name == "other") else faces[::-1]
        words: dict[str, object] = {
            "first_face": first,
            "second_face": second,
            "reference_end": ENDS.get(ends[number], ends[number]),
            "at": across,
            key: outer[name],
        }
        sticks.append(stick(name, **(words | dict(own or {}))))
    made = scarf(kind, **({"end": ENDS.get(end, end), "at": "3'", "keeps": keeps} | joint))
    return frame(*sticks, made, real=real)


def both(made: Frame) -> tuple[Half, Half]:
    """The two halves of a frame's one scarf: of `one`, then of `other`."""
    return halves(joint_of(made), made)


def sides(made: Frame) -> tuple[Feature, Feature]:
    """What the scarf puts on `one`, and on `other`."""
    one, other = features(joint_of(made), made)
    return one, other


def joint_of(made: Frame) -> ScarfJoint:
    """The one scarf of a frame."""
    (joint,) = (work for work in made.project.works if isinstance(work, ScarfJoint))
    return joint
