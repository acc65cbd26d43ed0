"""The whole frame turned or mirrored: every mark of every timber follows, and nothing is typed.

A building may be drawn whichever way round; a post on the other corner is the same post mirrored.
The coordinates of each demo are reckoned to plain numbers, and those, the faces and the ends are
turned here by hand. Timbers and joints get names without a direction in them, as names stay.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from itertools import count
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.frame import Frame, Real
from benchmate.frame.place import Point
from benchmate.layout.step import Layout, Step
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import Sum
from benchmate.model.place import coordinate_along
from benchmate.model.progress import AsCut, Measured
from benchmate.model.project import Project, Timber
from benchmate.model.work import Work
from benchmate.store.reading import read_project
from tests.builders import Part, frame, length, sill, tenon, timber
from tests.corner import texts

DEMOS = ("orchard-tool-shed", "hillside-wood-store")
PROJECTS = Path(__file__).parents[2] / "projects"
SENSES = {"east": ("east", 1), "west": ("east", -1), "north": ("north", 1), "south": ("north", -1)}
"""Each compass word as a coordinate and the sense it grows in."""

LOOKS = ("first_face", "second_face", "reference_end", "end", "shoulder")
"""The keys of a project file whose word is a direction."""

Words = dict[str, Any]


@dataclass(frozen=True)
class Turn:
    """Where east and north go; the rest follows."""

    name: str
    east: str
    north: str

    @property
    def words(self) -> Mapping[str, str]:
        """Where each compass word goes."""
        other = {"east": "west", "west": "east", "north": "south", "south": "north"}
        found = {"east": self.east, "north": self.north}
        return found | {other[word]: other[there] for word, there in found.items()}

    @property
    def mirrors(self) -> bool:
        """Whether it turns the frame inside out, as no quarter turn can."""
        (a, b), (c, d) = (
            tuple(SENSES[word][1] if SENSES[word][0] == axis else 0 for axis in ("east", "north"))
            for word in (self.east, self.north)
        )
        return a * d - b * c < 0

    def text(self, text: str) -> str:
        """A text with its directions turned; whole words alone."""

        def swap(found: re.Match[str]) -> str:
            word = self.words[found[0].lower()]
            return word.capitalize() if found[0][0].isupper() else word

        return re.sub(rf"\b({'|'.join(SENSES)})\b", swap, text, flags=re.IGNORECASE)

    def coordinate(self, name: str, at: Length) -> tuple[str, Length]:
        """A coordinate of the building, turned."""
        if name == "up":
            return name, at
        turned, sense = SENSES[self.words[name]]
        return turned, Length(sense * at.nm)

    def point(self, point: Point) -> Point:
        """A point of the building, turned."""
        pairs = zip(("east", "north", "up"), point, strict=True)
        found = dict(self.coordinate(name, Length(at)) for name, at in pairs)
        return found["east"].nm, found["north"].nm, found["up"].nm


TURNS = (
    Turn("a quarter turn", east="north", north="west"),
    Turn("half a turn", east="west", north="south"),
    Turn("three quarters", east="south", north="east"),
    Turn("mirrored east and west", east="west", north="north"),
    Turn("mirrored north and south", east="east", north="south"),
)


@cache
def _demo(name: str) -> Project:
    """A demo with every coordinate a plain number and no direction in a name."""
    project = read_project(PROJECTS / name)
    built = Frame(project, {})
    timbers = {each.id: f"timber-{place}" for place, each in enumerate(project.timbers)}
    numbers = count()

    def renamed(work: Work) -> Work:
        words = work.model_dump(exclude_none=True) | {"id": f"work-{next(numbers)}"}
        words |= {key: timbers[words[key]] for key in ("timber", "into") if key in words}
        if "on" in words:
            words["on"] = tuple(timbers[each] for each in words["on"])
        return type(work).model_validate(words)

    def plain(each: Timber) -> Timber:
        words = each.model_dump(exclude_none=True) | {"id": timbers[each.id]}
        words |= {"name": timbers[each.id].capitalize(), "note": ""}
        for key, total in each.sums().items():
            at = built.value(total).exact_text()
            if key.startswith("at."):
                words["at"] = {**words["at"], key.removeprefix("at."): at}
            else:
                words[key] = at
        return Timber.model_validate(words)

    return project.model_copy(
        update={
            "timbers": tuple(map(plain, project.timbers)),
            "works": tuple(map(renamed, project.works)),
        }
    )


def number(total: Sum) -> Length:
    """What a sum of plain numbers comes to. Raises KeyError for a name."""
    known: dict[str, Length] = {}
    return total.value(known.__getitem__)


def _turned(project: Project, turn: Turn) -> Project:
    """The project as somebody would have written it who drew the building the other way."""

    def faces(words: Words) -> Words:
        return {
            key: faces(value)
            if isinstance(value, dict)
            else turn.words.get(value, value)
            if key in LOOKS
            else value
            for key, value in words.items()
        }

    def placed(each: Timber) -> Timber:
        words = faces(each.model_dump(exclude_none=True))
        along, crossing = coordinate_along(each.reference_end), {}
        for key, total in each.sums().items():
            if key in ("reference_end_at", "far_end_at"):
                words[key] = turn.coordinate(along, number(total))[1].exact_text()
            elif key.startswith("at."):
                name, at = turn.coordinate(key.removeprefix("at."), number(total))
                crossing[name] = at.exact_text()
        return Timber.model_validate(words | {"at": crossing})

    works = (
        type(each).model_validate(faces(each.model_dump(exclude_none=True)))
        for each in project.works
    )
    return project.model_copy(
        update={"timbers": tuple(map(placed, project.timbers)), "works": tuple(works)}
    )


@cache
def _real(name: str) -> dict[str, Real]:
    """A size measured at every joint of a demo and of every tenon: odd ones, all different."""
    built = Frame(_demo(name), {})
    odd = (Length(length("1/64").nm * (step % 31)) for step in count(start=5, step=7))
    found = {}
    for each in built.project.timbers:
        drawn = built.nominal(each)
        features = lay_out(built, each.id).features
        found[each.id] = Real(
            {
                feature.place[0]: Measured(
                    first=drawn.first + next(odd), second=drawn.second + next(odd)
                )
                for feature in features
                if feature.place
            },
            {
                feature.id: AsCut(
                    **{size.name: size.laid_out - next(odd) for size in feature.sizes}
                )
                for feature in features
                if feature.sizes
            },
        )
    return found


def _turned_real(name: str, turn: Turn) -> dict[str, Real]:
    """The same sizes, typed at the same places by the names they have now."""
    return {
        timber_id: Real(
            {turn.text(place): size for place, size in real.measured.items()},
            {turn.text(part): size for part, size in real.as_cut.items()},
        )
        for timber_id, real in _real(name).items()
    }


def _figures(step: Step) -> tuple[object, ...]:
    """What of a step no turning may change."""
    return (
        step.faces,
        tuple(reading.value for reading in step.readings),
        tuple(beside.value for beside in step.beside),
        (step.stage, step.asks, step.lasting, step.line is None),
    )


def _words(step: Step) -> tuple[str, ...]:
    """What of a step has directions in it."""
    readings = (part for each in step.readings for part in (each.hook, each.way, each.key))
    return (
        *(step.id, step.feature, step.title, step.short, step.on, step.waste, step.waste_side),
        *(step.why, step.caution, step.line or "", step.draws or ""),
        *step.sides,
        *readings,
        *(beside.words for beside in step.beside),
    )


def _check_follows(was: Layout, now: Layout, turn: Turn) -> None:
    for before, after in zip(was.steps, now.steps, strict=True):
        assert _figures(after) == _figures(before), before.id
        assert _words(after) == tuple(map(turn.text, _words(before))), before.id
    told = [(each.code, turn.text(each.message), turn.text(each.remedy)) for each in _findings(was)]
    assert told == [(each.code, each.message, each.remedy) for each in _findings(now)]


def _findings(layout: Layout) -> list[Any]:
    return [finding for feature in layout.features for finding in feature.findings]


@pytest.mark.parametrize("name", DEMOS)
@pytest.mark.parametrize("turn", TURNS, ids=lambda turn: turn.name)
@pytest.mark.parametrize("measured", [False, True], ids=["as drawn", "as it measures"])
def test_every_step_of_every_timber_follows(name: str, turn: Turn, measured: bool) -> None:
    """Same steps, figures and depths; faces, ends, hooks, ways and waste sides turn with it."""
    before = Frame(_demo(name), _real(name) if measured else {})
    after = Frame(_turned(_demo(name), turn), _turned_real(name, turn) if measured else {})
    for each in before.project.timbers:
        _check_follows(lay_out(before, each.id), lay_out(after, each.id), turn)


@pytest.mark.parametrize("name", DEMOS)
@pytest.mark.parametrize("turn", TURNS, ids=lambda turn: turn.name)
def test_the_turned_frame_is_the_same_building(name: str, turn: Turn) -> None:
    """Corner by corner, each timber stands where the turning takes it."""
    before, after = Frame(_demo(name), {}), Frame(_turned(_demo(name), turn), {})
    for each in before.project.timbers:
        was, now = (
            built.place(each.id).corners(built.nominal(each), stick.start, stick.finish)  # type: ignore[union-attr]
            for built in (before, after)
            for stick in (built.stick(each.id),)
        )
        assert sorted(map(turn.point, was)) == sorted(now), each.id


@pytest.mark.parametrize("name", DEMOS)
@pytest.mark.parametrize("turn", TURNS, ids=lambda turn: turn.name)
def test_a_turn_keeps_every_hand_and_a_mirror_swaps_every_hand(name: str, turn: Turn) -> None:
    """A mirrored frame needs a mirrored set of timbers, and a turned one the very same."""
    demo = _demo(name)
    pairs = zip(demo.timbers, _turned(demo, turn).timbers, strict=True)
    swapped = {was.pose.right_handed is not now.pose.right_handed for was, now in pairs}
    assert swapped == {turn.mirrors}


def test_of_the_turnings_only_two_mirror() -> None:
    """No quarter turn makes a left post of a right one."""
    assert [turn.mirrors for turn in TURNS] == [False, False, False, True, True]


def test_the_demos_have_what_a_turning_could_get_wrong() -> None:
    """Mortises, housings, pockets, reductions, chamfers, scribed ends and end allowances."""
    kinds = set()
    for name in DEMOS:
        built = Frame(_demo(name), {})
        for each in built.project.timbers:
            kinds |= {step.id.rpartition("/")[2] for step in lay_out(built, each.id).steps}
    looked_for = {"depth", "housing-floor", "housing-near", "back", "reduced-first", "foot-stop"}
    assert looked_for | {"lay-up", "far-edge", "reduction-stop", "tenon-end"} <= kinds


CORNERS = {
    "sw": ("south", "west"),
    "se": ("south", "east"),
    "ne": ("north", "east"),
    "nw": ("north", "west"),
}
"""The outward faces of the four corner posts."""


@pytest.mark.parametrize(
    ("name", "posts"),
    [
        ("orchard-tool-shed", ("post-sw", "post-se", "post-ne", "post-nw")),
        ("hillside-wood-store", ("post-a1", "post-a3", "post-b3", "post-b1")),
    ],
)
def test_a_demo_s_corner_posts_are_two_mirrored_pairs(name: str, posts: tuple[str, ...]) -> None:
    """Their hands follow from their faces: nothing else in the file tells them apart."""
    found = {each.id: each for each in read_project(PROJECTS / name).timbers}
    sw, se, ne, nw = (found[post].pose.right_handed for post in posts)
    assert (sw, se) == (ne, nw)
    assert sw is not se
    own = {"id", "name", "note", "first_face", "second_face", "at"}
    typed = [found[post].model_dump(exclude=own) for post in posts]
    assert typed == [typed[0]] * 4


@st.composite
def _rectangles(draw: st.DrawFn) -> Frame:
    """Four corner posts of one kind on two sills, the ties between them housed, all of any size."""
    wide, deep = draw(texts(60, 240)), draw(texts(60, 240))
    section, relief, housing = draw(texts(5, 8)), draw(texts(0, 2)), draw(texts(0, 1))
    ends = {"west": "0", "east": wide, "south": "0", "north": deep}
    parts: list[Part] = []
    for side in ("south", "north"):
        lies = {"north": ends[side], "up": "0"}
        spans = {"reference_end_at": "0", "far_end_at": wide}
        parts.append(sill(id=f"sill-{side}", second_face=side, length=None, at=lies, **spans))
    for post, (first, second) in CORNERS.items():
        stands = {"north": ends[first], "east": ends[second]}
        looks = {"first_face": first, "second_face": second, "section": f"{section} x 7"}
        foot = {"into": f"sill-{first}", "relief_reference": relief, "set_back": "1"}
        parts.append(timber(post, name="Post", length="8'", at=stands, **looks))
        parts.append(tenon(id=f"{post}-foot", timber=post, **foot))
    for side in ("west", "east"):
        lies = {"east": ends[side], "up": "7'"}
        tie = {"first_face": "up", "second_face": side, "reference_end": "south", "name": "Tie"}
        parts.append(timber(f"tie-{side}", length=None, at=lies, **tie))
        for end in ("south", "north"):
            post = f"{end[0]}{side[0]}"
            joint = {"timber": f"tie-{side}", "end": end, "into": post, "housing": housing}
            parts.append(tenon(id=f"{post}-tie", **joint, length="2", set_back="1"))
    return frame(*parts)


@given(_rectangles())
def test_any_rectangle_has_two_mirrored_pairs_of_corner_posts(built: Frame) -> None:
    """Across a diagonal the same post; along a side its mirror image, in every figure and word."""
    sw, se, ne, nw = (built.timber(post).pose.right_handed for post in CORNERS)
    assert (sw, se) == (ne, nw)
    assert sw is not se
    mirrors = {turn.east: turn for turn in TURNS if turn.mirrors}
    marks = {post: lay_out(built, post) for post in CORNERS}
    for post, mirror, other in (
        ("sw", "west", "se"),
        ("nw", "west", "ne"),
        ("sw", "east", "nw"),
        ("se", "east", "ne"),
    ):
        _check_mirrored(marks[post], marks[other], mirrors[mirror])


def _check_mirrored(was: Layout, now: Layout, turn: Turn) -> None:
    """One post's walk is the other's mirrored, but for the names of the joints on it."""
    assert now.stick.body > ZERO
    for before, after in zip(was.steps, now.steps, strict=True):
        assert _figures(after) == _figures(before), before.id
        assert (after.sides, after.on, after.waste, after.waste_side) == (
            tuple(map(turn.text, before.sides)),
            *map(turn.text, (before.on, before.waste, before.waste_side)),
        )
        hooks = [turn.text(reading.words) for reading in before.readings]
        assert [reading.words for reading in after.readings] == hooks
