"""The twin of a timber on the other wall or bent: faces turned over, joints carried along."""

from collections.abc import Mapping
from copy import deepcopy
from functools import partial
from typing import Any

from benchmate.frame.levels import LevelError
from benchmate.joinery import FAMILIES
from benchmate.measure.reading import LengthError
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction
from benchmate.model.fields import ENDS, FACES
from benchmate.model.place import COORDINATES, coordinate_along
from benchmate.workbench.bench import Bench
from benchmate.workbench.carrying import Carried, carried, stands_at
from benchmate.workbench.forms.form import Blank, Form, FormError, Texts
from benchmate.workbench.forms.naming import counted_on, other_side
from benchmate.workbench.project_edits import ENDS_AT, Edit, figure_text, lines_at, path_of
from benchmate.workbench.record_fields import Kind, fields_of
from benchmate.workbench.touching import Box

WAYS = {"east and west": "east", "north and south": "north"}
"""What a mirror changes over, and the coordinate that it does."""

_FACE_WORDS = {direction: word for word, direction in FACES.items()}
_END_WORDS = {direction: word for word, direction in ENDS.items()}


class Mirror(Form):
    """The like timber on the other side of a plane half-way between two lines."""

    joints_follow = True

    def __init__(self, bench: Bench, timber: str) -> None:
        super().__init__(bench)
        self._timber = bench.frame.timber(timber)
        self._path = path_of(bench.project, timber, timber=True)
        self._stored = self.draft.value(self._path)
        over = self._likely()
        between = self._outermost(WAYS[over])
        words = over.split(" and ")
        ids = {each.id for each in bench.timbers}
        names = {each.name for each in bench.timbers}
        self.title = f"Mirror {self._timber.name}"
        self.blanks = (
            Blank(
                key="over",
                label="Change over",
                help="Which sides change places: east and west, or north and south.",
                text=over,
                required=True,
            ),
            Blank(
                key="between",
                label="Between",
                help="The mirror stands half-way between these two; or name its one place.",
                text=between,
                required=True,
                many=True,
            ),
            Blank(
                key="id",
                label="Id",
                help="Of the twin.",
                text=counted_on(other_side(timber, words), ids),
                required=True,
            ),
            Blank(
                key="name",
                label="Name",
                help="Of the twin.",
                text=counted_on(other_side(self._timber.name, words), names),
                required=True,
            ),
        )

    @property
    def blocked(self) -> str:
        """Why there can be none, or empty."""
        none = f"{self._timber.name} has no place, so where its twin stands cannot be said."
        return super().blocked or ("" if self._timber.placed else none)

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - the same always
        """Both ways, and the lines."""
        return {"over": tuple(WAYS), "between": tuple(self.bench.project.lines)}.get(key, ())

    def edit(self, texts: Texts) -> Edit:
        """The file with the twin. Raises FormError."""
        over = texts.get("over", "").strip()
        if over not in WAYS:
            raise FormError("over", f"is not one of {', '.join(WAYS)}; pick one with tab")
        way, doubled = WAYS[over], self._doubled(texts)
        moved = partial(mirrored_box, way, doubled)
        frame, timber = self.bench.frame, self._timber.id
        there = stands_at(frame, timber, moved)
        if there is not None:
            raise FormError("between", f"puts the twin where {there.name} stands already")
        id_, name = (texts.get(key, "").strip() for key in ("id", "name"))
        stored = self._turned(self._stored, way, doubled) | {"id": id_, "name": name}
        stored.pop("note", None)
        taken = {work.id for work in self.bench.project.works}
        goes = Carried(
            stored=stored,
            moved=moved,
            turned=partial(self._turned_joint, way, doubled),
            joint=partial(_joint_id, timber, id_, over.split(" and "), taken),
        )
        draft, told = carried(self.draft, frame, timber, goes, timber)
        words = f"{name} added, {self._timber.name} mirrored"
        return Edit(words=words, text=draft.text, timber=id_, told=told, path=self._path[:1])

    def _doubled(self, texts: Texts) -> int:
        """Twice the coordinate of the mirror, in nanometres."""
        parts = [part for each in texts.get("between", "").split(",") if (part := each.strip())]
        if len(parts) not in (1, 2):
            raise FormError("between", "is one place or two; type them with a comma between")
        try:
            values = [self.bench.frame.value(read_sum(part)).nm for part in parts]
        except LengthError as error:
            raise FormError("between", f"{error}\n{error.excerpt()}") from error
        except LevelError as error:
            raise FormError("between", f"there is no line called {error.name}") from error
        return values[0] + values[-1]

    def _turned(self, stored: Mapping[str, Any], way: str, doubled: int) -> dict[str, Any]:
        """What the file says of the timber, turned over."""
        found = deepcopy(dict(stored))
        for key in ("first_face", "second_face"):
            found[key] = _FACE_WORDS[flipped(FACES[found[key]], way)]
        found["reference_end"] = _END_WORDS[flipped(ENDS[found["reference_end"]], way)]
        mirrored = partial(self._mirrored, way, doubled)
        incline = found.get("incline", {})
        points = [incline[key] for key in ("foot", "head", "corner") if key in incline]
        for point in (found.get("at", {}), *points):
            if way in point:
                point[way] = mirrored(point[way])
        for part in (incline, found.get("roll", {})):
            if "towards" in part:
                part["towards"] = _FACE_WORDS[flipped(FACES[part["towards"]], way)]
        if "legs" in incline:
            legs = incline["legs"].items()
            incline["legs"] = {_FACE_WORDS[flipped(FACES[k], way)]: each for k, each in legs}
        if coordinate_along(self._timber.reference_end) == way:
            found |= {key: mirrored(found[key]) for key in ENDS_AT if key in found}
        return found

    def _turned_joint(self, way: str, doubled: int, stored: dict[str, Any]) -> dict[str, Any]:
        """What the file says of a joint, with its sides and ends turned over."""
        found = deepcopy(stored)
        record = next(each.record for each in FAMILIES if each.name == found["family"])
        for field in fields_of(record):
            if field.key in found and field.kind is Kind.FACE:
                found[field.key] = _FACE_WORDS[flipped(FACES[found[field.key]], way)]
            elif field.key in found and field.kind is Kind.END:
                found[field.key] = _END_WORDS[flipped(ENDS[found[field.key]], way)]
        along = coordinate_along(self._timber.reference_end) == way
        if found["family"] == "scarf" and along:
            found["at"] = self._mirrored(way, doubled, found["at"])
        return found

    def _mirrored(self, way: str, doubled: int, text: str) -> str:
        """A coordinate on the other side, by the lines there where they are like those here."""
        frame, total = self.bench.frame, read_sum(text, bare=self.bench.project.bare)
        goal = doubled - frame.value(total).nm
        lines = lines_at(frame, way)
        head, *rest = total.terms
        twin = lines.get(doubled - frame.levels.of(head.name).nm) if head.name else None
        if twin is not None and head.sign > 0:
            tail = (f" {'-' if each.sign > 0 else '+'} {_term_text(each.text())}" for each in rest)
            return twin + "".join(tail)
        return lines.get(goal) or figure_text(goal)

    def _likely(self) -> str:
        """What it changes over at first: the way that a face of it tells it from its twin."""
        looks = (self._timber.second_face, self._timber.first_face)
        named = [
            word for word, way in WAYS.items() for face in looks if coordinate_along(face) == way
        ]
        return next(iter(named), next(iter(WAYS)))

    def _outermost(self, way: str) -> str:
        """The first and the last of the lines that timbers stand on that way."""
        frame = self.bench.frame
        used = {
            name: frame.levels.of(name).nm
            for timber in self.bench.timbers
            if timber.at is not None and way in timber.at.sums()
            for name in timber.at.sums()[way].names()
            if name in self.bench.project.lines
        }
        ordered = sorted(used, key=lambda name: used[name])
        return ", ".join(dict.fromkeys((ordered[0], ordered[-1]))) if ordered else ""


def flipped(direction: Direction, way: str) -> Direction:
    """A direction as the mirror shows it."""
    return direction.opposite if coordinate_along(direction) == way else direction


def mirrored_box(way: str, doubled: int, box: Box) -> Box:
    """A box on the other side of the mirror."""
    axis = COORDINATES.index(way)
    spans = list(box)
    spans[axis] = (doubled - spans[axis][1], doubled - spans[axis][0])
    return spans[0], spans[1], spans[2]


def _term_text(text: str) -> str:
    return text.replace('"', " in")


def _joint_id(timber: str, new: str, words: list[str], taken: set[str], joint: str) -> str:
    """The id of a joint of the twin: after the twin where this one's is, else turned over."""
    lead = f"{timber}-"
    found = joint
    if joint.startswith(lead):
        found = f"{new}-{other_side(joint.removeprefix(lead), words)}"
    found = counted_on(found if found != joint else other_side(joint, words), taken)
    taken.add(found)
    return found
