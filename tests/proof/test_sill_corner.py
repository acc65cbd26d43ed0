"""The sill corner proved: a post's tenon through that of an end sill, whichever way they stand."""

from collections.abc import Iterator, Mapping

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from tests.builders import real
from tests.joinery.tenon.plans import PLANS, Plan
from tests.joinery.tenon.sill_corners import HOLE, Faces, Words, sill_corner
from tests.proof.fits import overlaps, unnoticed
from tests.proof.kernel import Solid
from tests.proof.sizes import UNSHRUNK
from tests.proof.sound import stopped
from tests.proof.textbook.third_timber import mortise_of, tenon_wood
from tests.proof.told import untrue
from tests.proof.wood import TOUCH, Log, logs

CORNERS: Mapping[str, Mapping[str, Words]] = {
    "right through": {},
    "blind in the long sill": {"sill": {"through": False, "length": "6", "held_short": "0"}},
    "stopping in the tenon": {"sill": {"thickness": "4"}},
    "through the long sill": {"stub": {"through": True, "length": None}},
    "open at an edge": {"stub": {"relief_reference": "1-1/2"}},
    "open at the other edge": {"stub": {"relief_far": "0"}, "sill": {"relief_far": "1-1/2"}},
    "open at the end": {"sill": {"through": False, "length": "5", "held_short": "0"}},
    "open at end and edge": {
        "sill": {"through": False, "length": "5", "held_short": "0"},
        "stub": {"relief_reference": "0"},
    },
    "barefaced": {"sill": {"set_back": "0"}, "stub": {"length": "7"}},
    "housed": {"sill": {"housing": "1/2"}, "stub": {"housing": "3/4"}},
}

FACES = {
    "outside": Faces(),
    "inside": Faces(long=("up", "north"), end=("up", "east"), post=("north", "east")),
    "undersides": Faces(long=("down", "south"), end=("down", "west"), post=("south", "east")),
    "from the north": Faces(reference_end="north", post=("west", "south")),
    "plates": Faces(above=True, long=("up", "south"), end=("down", "east")),
    "plates, undersides": Faces(
        above=True, long=("down", "north"), end=("down", "west"), reference_end="north"
    ),
}


def _joints(frame: Frame) -> Mapping[str, TenonJoint]:
    return {work.id: work for work in frame.project.works if isinstance(work, TenonJoint)}


def _right(frame: Frame, found: Mapping[str, Log]) -> tuple[Solid, Solid]:
    """The hole by definition, in the wood of the end sill's tenon; and all of that tenon."""
    joints = _joints(frame)
    tenon = tenon_wood(joints["end-sill"], found)
    return mortise_of(joints["post-foot"], frame, found).within(tenon), tenon


def wrong_with(frame: Frame) -> Iterator[str]:
    """All that is wrong with a corner."""
    found = logs(frame)
    yield from (words for log in found.values() for words in untrue(log))
    yield from overlaps(found.values())
    right, tenon = _right(frame, found)
    made = found["end"].waste(found["end"].feature(HOLE)).within(tenon)
    off = made.without([right]).volume + right.without([made]).volume
    if off > TOUCH or right.volume < TOUCH:
        yield f"the hole takes {off / 1e18:.3f} mm3 more or less than the textbook"


@pytest.mark.parametrize("plan", PLANS)
@pytest.mark.parametrize("faces", FACES)
def test_a_hole_is_told_and_cut_as_the_textbook_has_it(plan: Plan, faces: str) -> None:
    """Whichever way the corner is turned, of either hand, from whatever faces it is measured."""
    assert list(wrong_with(sill_corner(plan, FACES[faces]))) == []


@pytest.mark.parametrize("name", CORNERS)
@pytest.mark.parametrize("faces", ["outside", "plates"])
def test_a_hole_of_any_kind_is_right(name: str, faces: str) -> None:
    """Through or not, with wood all round or open at an edge or at the end."""
    assert list(wrong_with(sill_corner(faces=FACES[faces], **CORNERS[name]))) == []  # type: ignore[arg-type]


@pytest.mark.parametrize("rule", ["mill", "square"])
@given(
    name=st.sampled_from(sorted(CORNERS)),
    faces=st.sampled_from(sorted(FACES)),
    plan=st.sampled_from(PLANS),
    over=st.tuples(*[st.integers(0, 32)] * 6),
)
@settings(max_examples=15, deadline=None, phases=UNSHRUNK)
def test_any_real_sections_fit(
    rule: str, name: str, faces: str, plan: Plan, over: tuple[int, ...]
) -> None:
    """Whatever the sticks are over, by either rule, all is told, right, and shares no wood."""
    drawn = {"long": (8, over[:2]), "end": (8, over[2:4]), "post": (7, over[4:])}
    ruled = {
        each: {"rule": rule} | ({"inner": f"{size} x {size}"} if rule == "square" else {})
        for each, (size, _) in drawn.items()
    }
    measured = {each: _measured(*sizes) for each, sizes in drawn.items()}
    built = sill_corner(plan, FACES[faces], own=ruled, real=measured, **CORNERS[name])
    assume(not stopped(built))
    assert list(wrong_with(built)) == []


def _measured(drawn: int, over: tuple[int, ...]) -> Real:
    first, second = (
        (Length.inches(drawn) + Length.inches(0, 1, 32) * count).exact_text() for count in over
    )
    return real({"all": {"first": first, "second": second}})


@pytest.mark.parametrize("name", CORNERS)
def test_no_line_of_a_hole_can_be_misplaced(name: str) -> None:
    """Every struck line counts: a millimetre off, either way, takes other wood of the tenon."""
    frame = sill_corner(**CORNERS[name])  # type: ignore[arg-type]
    found = logs(frame)
    right, tenon = _right(frame, found)
    assert list(unnoticed({f"end/{HOLE}": right}, found, {f"end/{HOLE}": tenon})) == []
