"""Timbers like one that is there: at a list of places, or every so much, so many times."""

from collections.abc import Iterator
from copy import deepcopy
from functools import partial
from typing import Any

from benchmate.frame.levels import LevelError
from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import LengthError
from benchmate.measure.sums import Sum, read_sum
from benchmate.model.place import COORDINATES, Coordinate, coordinate_along
from benchmate.model.project import Timber
from benchmate.workbench.bench import Bench
from benchmate.workbench.carrying import Carried, carried, stands_at
from benchmate.workbench.forms.form import Blank, Form, FormError, Texts
from benchmate.workbench.forms.naming import counted_on
from benchmate.workbench.project_edits import Edit, figure_text, path_of
from benchmate.workbench.touching import Box

MOST = 60
"""Timbers added at one stroke; more are more likely a slip than a frame."""


class Copies(Form):
    """One or many timbers like one that is there, with their joints, beside it."""

    joints_follow = True

    def __init__(self, bench: Bench, timber: str) -> None:
        super().__init__(bench)
        self._timber = bench.frame.timber(timber)
        self._path = path_of(bench.project, timber, timber=True)
        self._stored = self.draft.value(self._path)
        self._ways = tuple(spread(self._timber))
        ids, names = _taken(bench)
        self.title = f"Like {self._timber.name}"
        self.blanks = (
            Blank(
                key="along",
                label="Spread",
                help="Which way they go on from it: east, north or up.",
                text=next(iter(self._ways), ""),
                required=True,
            ),
            Blank(
                key="at",
                label="At",
                help="Where each lies that way, with commas between: line 2, line 3.",
                many=True,
            ),
            Blank(
                key="every",
                label="Or every",
                help="How far from one to the next; a minus goes back: 2' 4, joist spacing.",
                sum=True,
            ),
            Blank(key="times", label="So many times", help="How many are added.", text="1"),
            Blank(
                key="id",
                label="First id",
                help="The others are counted on from it.",
                text=counted_on(timber, ids),
                required=True,
            ),
            Blank(
                key="name",
                label="First name",
                help="The others are counted on from it.",
                text=counted_on(self._timber.name, names),
                required=True,
            ),
        )
        self.first = "at"

    @property
    def blocked(self) -> str:
        """Why there can be none, or empty."""
        none = f"{self._timber.name} has no place, so where others like it lie cannot be said."
        return super().blocked or ("" if self._ways else none)

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:
        """The ways it can be spread, and the names there are."""
        if key == "along":
            return self._ways
        project = self.bench.project
        if key in ("at", "every"):
            up = texts.get("along", "") == "up"
            first, then = (project.levels, project.lines)[:: 1 if up else -1]
            return tuple(project.lengths) if key == "every" else (*first, *then)
        return ()

    def edit(self, texts: Texts) -> Edit:
        """The file with all of them. Raises FormError."""
        way = texts.get("along", "").strip()
        if way not in self._ways:
            raise FormError("along", f"is not one of {', '.join(self._ways)}; pick one with tab")
        draft, told, last = self.draft, [], self._timber.id
        ids, names = _taken(self.bench)
        joints = {work.id for work in self.bench.project.works}
        id_, name = (texts.get(key, "").strip() for key in ("id", "name"))
        base, apart = self.base_text(way), []
        for text, shift in self._places(texts, base):
            twin = stands_at(self.bench.frame, self._timber.id, partial(_shifted, way, shift.nm))
            if twin is not None:
                raise FormError("at", f"{twin.name} lies at {text} already")
            stored = placed_at(self._stored, way, text) | {"id": id_, "name": name}
            stored.pop("note", None)
            goes = Carried(
                stored=stored,
                moved=partial(_shifted, way, shift.nm),
                turned=dict,
                joint=partial(_joint_id, self._timber.id, id_, joints),
            )
            draft, left_out = carried(draft, self.bench.frame, self._timber.id, goes, last)
            told += [f"{name}: {each}" for each in left_out]
            ids.add(id_)
            names.add(name)
            apart.append(name)
            last = id_
            id_, name = counted_on(id_, ids), counted_on(name, names)
        return Edit(
            words=f"{', '.join(apart)} added",
            text=draft.text,
            timber=texts.get("id", "").strip(),
            told=tuple(told),
            path=self._path[:1],
        )

    def base_text(self, way: str) -> str:
        """Where the timber itself lies one way, as the file says it."""
        stored = self._stored
        found = stored.get("at") or next(iter(_points(stored)), {})
        return str(found.get(way, "0"))

    def _places(self, texts: Texts, base: str) -> Iterator[tuple[str, Length]]:
        """Where each lies, as it is to be written, and how far that is from the timber itself."""
        at = [part for each in texts.get("at", "").split(",") if (part := each.strip())]
        every = texts.get("every", "").strip()
        if bool(at) is bool(every):
            raise FormError("at", "say where they lie, or how far from one to the next")
        here = self._value("at", base)
        if at:
            if len(at) > MOST:
                raise FormError("at", f"are more than {MOST} places; add them in parts")
            yield from ((text, self._value("at", text) - here) for text in at)
            return
        step = self._sum("every", every)
        apart = self._value("every", every)
        if not apart:
            raise FormError("every", "is no distance at all; type how far from one to the next")
        for count in range(1, self._times(texts) + 1):
            yield f"{base}{_steps(step, every, count)}", apart * count

    def _times(self, texts: Texts) -> int:
        text = texts.get("times", "").strip()
        if not (text.isascii() and text.isdecimal() and 1 <= int(text[:4]) <= MOST):
            raise FormError("times", f"is no number from 1 to {MOST}")
        return int(text)

    def _sum(self, key: str, text: str) -> Sum:
        try:
            return read_sum(text, bare=self.bench.project.bare)
        except LengthError as error:
            raise FormError(key, f"{error}\n{error.excerpt()}") from error

    def _value(self, key: str, text: str) -> Length:
        try:
            return self.bench.frame.value(self._sum(key, text))
        except LevelError as error:
            known = ", ".join(self.bench.project.names)
            raise FormError(key, f"there is no name {error.name}; there are {known}") from error


def spread(timber: Timber) -> Iterator[Coordinate]:
    """The ways that others like a timber can lie beside it: those its place says."""
    if timber.at is not None:
        yield from (name for name in COORDINATES if name in timber.at.sums())
    elif timber.incline is not None:
        along = coordinate_along(timber.incline.heading)
        yield from (name for name in COORDINATES[:2] if name != along)


def _points(stored: dict[str, Any]) -> Iterator[dict[str, Any]]:
    incline = stored.get("incline", {})
    yield from (incline[key] for key in ("foot", "head", "corner") if key in incline)


def placed_at(stored: dict[str, Any], way: str, text: str) -> dict[str, Any]:
    """What the file says of a timber, with another coordinate one way."""
    found = deepcopy(stored)
    if "at" in found:
        found["at"][way] = text
    for point in _points(found):
        point[way] = text
    return found


def _steps(step: Sum, text: str, count: int) -> str:
    """A step taken so many times, as it is added to a place: names one by one, figures at once."""
    if step.names():
        sign = "" if text.lstrip()[:1] in "-\N{MINUS SIGN}" else "+ "
        part = text.lstrip("-\N{MINUS SIGN} ")
        return f" {sign or '- '}{part}" * count
    total = step.value(lambda _name: ZERO) * count
    return f" {'-' if total < ZERO else '+'} {figure_text(abs(total.nm))}"


def _shifted(way: str, nanometres: int, box: Box) -> Box:
    axis = COORDINATES.index(way)
    spans = list(box)
    spans[axis] = (spans[axis][0] + nanometres, spans[axis][1] + nanometres)
    return spans[0], spans[1], spans[2]


def _joint_id(timber: str, new: str, taken: set[str], joint: str) -> str:
    """The id of the other timber's joint: after that timber where this one's is, or counted on."""
    lead = f"{timber}-"
    found = f"{new}-{joint.removeprefix(lead)}" if joint.startswith(lead) else joint
    found = counted_on(found, taken)
    taken.add(found)
    return found


def _taken(bench: Bench) -> tuple[set[str], set[str]]:
    return {each.id for each in bench.timbers}, {each.name for each in bench.timbers}
