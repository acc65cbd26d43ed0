"""The steps of a sheet joint by joint, and each caution and each wait once.

How it works
1. What is done to the whole stick comes first, then the marks joint by joint, the chamfers, the
   back-check, then the knife and the saw joint by joint, and the label last: the order of the walk,
   but that the cutting of one joint stands together.
2. A mark's figure from the far end stands with the mark, so the back-check keeps only the rest.
3. Cautions go by numbers, what more there is to say of the waste by R and settings by Q with a
   number, waits by small letters.
"""

from collections import Counter
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.model.feature import Reading, Stage
from benchmate.model.stick import ENDS
from benchmate.sheets.sheet import Item, TimberSheet
from benchmate.sheets.words import plain_waste

_STICK_TITLES = {
    Stage.CHOOSE: "Choose the stick",
    Stage.MEASURE: "Check square and wind, measure",
    Stage.END: "Ends",
    Stage.BACK_CHECK: "Back-check",
    Stage.LABEL: "Label",
}


WAITS_APART = "; "
"""What stands between two things that one step waits for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Group:
    """Steps that stand together: the marks of one joint, the cutting of one, or one kind of work.

    `marks` tells whether lines are struck. `withheld` and `waits_for` are filled in where they hold
    for all of its steps that are open.
    """

    title: str
    marks: bool
    items: tuple[Item, ...]

    @property
    def withheld(self) -> str:
        """Why none of its figures can be trusted; empty where that is not so of all of them."""
        return _common(item.withheld for item in self.items)

    @property
    def waits_for(self) -> str:
        """What all of its open steps wait for; empty where they wait for different things."""
        return _common(
            item.waits_for for item in self.items if item.state in ("open", "waits", "stop")
        )


def _common(texts: Iterable[str]) -> str:
    found = set(texts)
    return found.pop() if len(found) == 1 else ""


def groups(sheet: TimberSheet) -> tuple[Group, ...]:
    """The steps of a sheet, group by group."""
    found: dict[tuple[int, str], list[Item]] = {}
    for item in sorted(sheet.items, key=_block):
        found.setdefault((_block(item), _part(item)), []).append(item)
    return tuple(
        Group(
            title=_title(sheet, items[0]),
            marks=items[0].step.stage in (Stage.MARK, Stage.CHAMFER),
            items=tuple(items),
        )
        for items in found.values()
    )


def _block(item: Item) -> int:
    """The stages in order, all between the knife and the finish as one."""
    stage = item.step.stage
    return Stage.KNIFE if Stage.KNIFE <= stage < Stage.LABEL else stage


def _part(item: Item) -> str:
    """What keeps groups of one block apart: the joint, where work is done joint by joint."""
    return "" if item.step.stage in _STICK_TITLES else item.step.feature


def _title(sheet: TimberSheet, item: Item) -> str:
    named = _STICK_TITLES.get(item.step.stage)
    if named:
        return named
    feature = sheet.layout.feature(item.step.feature)
    joint = feature.title if feature else sheet.timber.name
    if item.step.feature == ENDS:
        joint = "Ends"
    return f"Cut: {joint}" if _block(item) is Stage.KNIFE else joint


def back_figures(sheet: TimberSheet) -> dict[str, Reading]:
    """How each mark reads from the far end, by its step; nothing for one that is withheld."""
    known = {item.step.id for item in sheet.items if not item.withheld}
    return {
        reading.key: reading
        for item in sheet.items
        if item.step.stage is Stage.BACK_CHECK
        for reading in item.readings
        if reading.key in known
    }


def own_readings(item: Item, back: dict[str, Reading]) -> tuple[Reading, ...]:
    """A step's figures but for those that stand with their marks, the first of all among them."""
    if item.step.stage is not Stage.BACK_CHECK:
        return item.readings
    return tuple(reading for reading in item.readings if reading.key not in back)


@dataclass(frozen=True, slots=True, kw_only=True)
class Notes:
    """What is said once and referred to: in the order first met, each different one once.

    `cautions` are single sentences, as several steps share some of theirs; `wastes` are those that
    are more than a side, `settings` those of a square that several steps share, `waits` what steps
    wait for.
    """

    cautions: tuple[str, ...]
    wastes: tuple[str, ...]
    settings: tuple[str, ...]
    waits: tuple[str, ...]

    def caution_marks(self, caution: str) -> str:
        """The reference marks of a caution, sentence by sentence: `2, 3`; empty for none."""
        found = (str(self.cautions.index(each) + 1) for each in sentences(caution))
        return ", ".join(found)

    def waste_mark(self, waste: str) -> str:
        """The reference mark of what goes: `R2`; empty for a plain side or nothing.

        No mark is a letter alone: `E` is the East face.
        """
        return f"R{self.wastes.index(waste) + 1}" if waste in self.wastes else ""

    def setting(self, setting: str) -> str:
        """A setting by its reference mark, or in full where only one step has it."""
        shared = setting in self.settings
        return f"Q{self.settings.index(setting) + 1}" if shared else setting

    def wait_marks(self, waits: str) -> str:
        """The reference marks of what is waited for, one by one: `a, b`; empty for none."""
        found = sorted(
            self.waits.index(each) for each in waits.split(WAITS_APART) if each in self.waits
        )
        return ", ".join(map(letters, found))

    def lists(self) -> tuple["NoteList", ...]:
        """What is to be printed under the steps: each list with its marks, none that is empty."""
        found = (
            NoteList("Take care", self.caution_marks, self.cautions),
            NoteList("Waste", self.waste_mark, self.wastes),
            NoteList("Square", self.setting, self.settings),
            NoteList("Waits for", self.wait_marks, self.waits),
        )
        return tuple(each for each in found if each.texts)


class NoteList(NamedTuple):
    """One list of notes: what it is of, how one of them is marked, and the notes."""

    lead: str
    mark: Callable[[str], str]
    texts: tuple[str, ...]


def letters(place: int) -> str:
    """A place as letters: `a` for 0, `z` for 25, `aa` for 26."""
    ahead, last = divmod(place, 26)
    return (letters(ahead - 1) if ahead else "") + chr(ord("a") + last)


def sentences(text: str) -> tuple[str, ...]:
    """The sentences of a text, each with its full stop."""
    parts = text.split(". ")
    return tuple(part if part.endswith(".") else f"{part}." for part in parts if part)


def notes(sheet: TimberSheet) -> Notes:
    """The cautions, wastes and waits of a sheet; what is withheld has none."""
    order = [item for group in groups(sheet) for item in group.items if not item.withheld]
    cautions = (each for item in order for each in sentences(item.step.caution))
    wastes = (item.step.waste for item in order if not plain_waste(item.step))
    waits = (
        each
        for item in order
        if item.state == "waits"
        for each in item.waits_for.split(WAITS_APART)
    )
    settings = Counter(
        item.step.setting.words(sheet.tape) for item in order if item.step.setting is not None
    )
    return Notes(
        cautions=tuple(dict.fromkeys(cautions)),
        wastes=tuple(dict.fromkeys(wastes)),
        settings=tuple(setting for setting, count in settings.items() if count > 1),
        waits=tuple(dict.fromkeys(waits)),
    )
