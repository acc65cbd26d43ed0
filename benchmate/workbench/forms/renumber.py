"""Numbering timbers in the order of their places: ids, names and what they are called after."""

from benchmate.model.place import COORDINATES
from benchmate.store.toml_lines import Path
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import Blank, Form, FormError, Texts
from benchmate.workbench.forms.naming import slug
from benchmate.workbench.project_edits import Edit, path_of, renamed
from benchmate.workbench.touching import Box, box_of

ORDERS = {
    "west to east": ("east", 1),
    "east to west": ("east", -1),
    "south to north": ("north", 1),
    "north to south": ("north", -1),
    "bottom to top": ("up", 1),
    "top to bottom": ("up", -1),
}
"""The ways to count, and the coordinate that says which comes first."""


class Renumber(Form):
    """The timbers of one kind, numbered along a line; their ticks and their joints go with them."""

    def __init__(self, bench: Bench, timber: str) -> None:
        super().__init__(bench)
        kind = bench.frame.timber(timber).kind
        like = [each.id for each in bench.timbers if each.kind == kind]
        self._boxes = {id_: box for id_ in like if (box := box_of(bench.frame, id_)) is not None}
        self.title = f"Renumber {kind} timbers"
        self.blanks = (
            Blank(
                key="timbers",
                label="Timbers",
                help="Those to be numbered, with commas between.",
                text=", ".join(self._boxes),
                required=True,
                many=True,
            ),
            Blank(
                key="order",
                label="Order",
                help="Which way they are counted; those abreast the other way.",
                text=self._widest(),
                required=True,
            ),
            Blank(
                key="id",
                label="Ids",
                help="What stands before the number, as joist-.",
                text=f"{slug(kind)}-",
                required=True,
            ),
            Blank(
                key="name",
                label="Names",
                help="What stands before the number, as Joist.",
                text=kind.capitalize(),
                required=True,
            ),
            Blank(key="start", label="From", help="The first number.", text="1", required=True),
        )
        self.first = "order"

    def _widest(self) -> str:
        """The order along which they lie farthest apart."""
        centres = [_centre(box) for box in self._boxes.values()]
        spans = [max(axis) - min(axis) for axis in zip(*centres, strict=True)] or [0, 0, 0]
        way = COORDINATES[spans.index(max(spans))]
        return next(word for word, (each, _) in ORDERS.items() if each == way)

    def choices(self, key: str, texts: Texts) -> tuple[str, ...]:  # noqa: ARG002 - the same always
        """The orders, and the timbers of the kind."""
        return {"order": tuple(ORDERS), "timbers": tuple(self._boxes)}.get(key, ())

    def edit(self, texts: Texts) -> Edit:
        """The file with the new ids and names. Raises FormError."""
        order = self._ordered(texts)
        start = texts.get("start", "").strip()
        if not (start.isascii() and start.isdecimal() and len(start) <= len("9999")):
            raise FormError("start", "is no number; type the first one")
        stem, word = texts.get("id", "").strip(), texts.get("name", "").strip()
        numbers = range(int(start), int(start) + len(order))
        ids = {old: f"{stem}{number}" for old, number in zip(order, numbers, strict=True)}
        names = {old: f"{word} {number}" for old, number in zip(order, numbers, strict=True)}
        project = self.bench.project
        timbers = {old: new for old, new in ids.items() if old != new}
        works = {
            work.id: f"{timbers[first]}-{work.id.removeprefix(f'{first}-')}"
            for work in project.works
            if (first := work.timbers().get("timber", "")) in timbers
            and work.id.startswith(f"{first}-")
        }
        draft, moves = renamed(self.draft, project, timbers, works)
        paths = {(*path_of(project, old, timber=True), "name"): name for old, name in names.items()}
        taken = {each.name for each in project.timbers if each.id not in ids}
        for name in names.values():
            if name in taken:
                raise FormError("name", f"gives {name}, which another timber is called already")
        text = draft.put_all(paths).text
        told = tuple(
            f"{self.bench.frame.timber(old).name} becomes {names[old]} ({ids[old]})."
            for old in order
        )
        return Edit(
            words=f"{len(order)} timbers renumbered",
            text=text,
            moves=moves,
            base=text,
            told=told,
            timber=ids[order[0]],
            path=self._path_of(order[0]),
        )

    def _path_of(self, timber: str) -> Path:
        return path_of(self.bench.project, timber, timber=True)

    def _ordered(self, texts: Texts) -> list[str]:
        order = texts.get("order", "").strip()
        if order not in ORDERS:
            raise FormError("order", f"is not one of {', '.join(ORDERS)}; pick one with tab")
        meant = [part for each in texts.get("timbers", "").split(",") if (part := each.strip())]
        strange = next((each for each in meant if each not in self._boxes), None)
        if strange is not None or not meant:
            raise FormError(
                "timbers", f"{strange or 'nothing'} is no timber of this kind with a place"
            )
        way, sign = ORDERS[order]
        axis = COORDINATES.index(way)
        others = [each for each in range(3) if each != axis]

        def place(timber: str) -> tuple[int, ...]:
            centre = _centre(self._boxes[timber])
            return (sign * centre[axis], *(centre[each] for each in others))

        return sorted(dict.fromkeys(meant), key=place)


def _centre(box: Box) -> tuple[int, int, int]:
    """Twice the middle of a box, in whole nanometres."""
    east, north, up = (low + high for low, high in box)
    return east, north, up
