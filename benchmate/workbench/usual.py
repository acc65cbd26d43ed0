"""What is usual in the trade for a field, and who says so. A suggestion, never put in by itself.

Figures come from the trade notes, by the tag of the published text they were read in; what has none
is told as common practice. What is known from memory alone is not suggested at all. Good framers
differ on nearly every one of them, and none is a measure of strength.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.section import Section
from benchmate.model.project import USUAL, Timber
from benchmate.outset.answers import SHOP
from benchmate.outset.own import NOTHING, Own
from benchmate.outset.written import MM, nearest, written
from benchmate.workbench.field_words import ANY, CHAMFER, PROJECT, TIMBER

PRACTICE = "common practice, no source"
"""Said of what every framer knows and no text that was read says."""


SETTINGS = "your settings"
"""Said of what the framer himself likes to have suggested."""


class Usual(NamedTuple):
    """What to suggest: the text to type, what it is, and where it comes from."""

    text: str
    what: str
    source: str

    def words(self) -> str:
        """The suggestion in one line: `1-3/4: a quarter of the timber (published: TFG-offset)`."""
        plain = self.source in (PRACTICE, SETTINGS)
        source = self.source if plain else f"published, trade notes {self.source}"
        return f"{self.text}: {self.what} ({source})"


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What a suggestion goes by: the timbers there are, and what the form's fields say so far."""

    timbers: Mapping[str, Timber]
    sections: Mapping[str, Section]
    texts: Mapping[str, str]
    bare: Unit
    own: Own = NOTHING

    def narrow(self, key: str) -> Length | None:
        """The lesser depth of the section of the timber that a field names, as drawn."""
        timber = self.timbers.get(self.texts.get(key, "").strip())
        section = timber.section if timber is not None else None
        if isinstance(section, str):
            section = self.sections.get(section)
        return min(section.first, section.second) if section is not None else None

    def kind(self, key: str) -> str:
        """What the timber that a field names is in the frame; empty for none."""
        timber = self.timbers.get(self.texts.get(key, "").strip())
        return timber.kind if timber is not None else ""

    @property
    def metric(self) -> bool:
        """Whether a number without a unit is millimetres."""
        return self.bare is Unit.MM


_Suggest = Callable[[Asked], Usual | None]

_NM_PER_MM = 1_000_000
_EIGHTH = Length.inches(0, 1, 8)


def typed_text(length: Length, *, metric: bool) -> str:
    """A length as a framer would type it: in whole millimetres where the tape has those."""
    if metric:
        return f"{(2 * length.nm + _NM_PER_MM) // (2 * _NM_PER_MM)} mm"
    return length.exact_text().removesuffix('"')


def _inches(whole: int, over: int, under: int, what: str, source: str) -> _Suggest:
    def suggest(asked: Asked) -> Usual:
        length = Length.inches(whole, over, under)
        return Usual(typed_text(length, metric=asked.metric), what, source)

    return suggest


def _word(text: str, what: str, source: str = PRACTICE) -> _Suggest:
    return lambda _asked: Usual(text, what, source)


def _quarter(asked: Asked) -> Usual | None:
    """A tenon's thickness: a quarter of the timber, to an eighth of an inch."""
    narrow = asked.narrow("timber")
    if narrow is None:
        return None
    eighths = narrow.nm // 4 // _EIGHTH.nm
    text = typed_text(_EIGHTH * eighths, metric=asked.metric)
    return Usual(text, "a quarter of the timber", "TFG-offset")


def _set_back(asked: Asked) -> Usual | None:
    """As much as the tenon is thick: 2" with 2", 1-1/2" with 1-1/2"."""
    thick = asked.texts.get("thickness", "").strip()
    return Usual(thick, "as much as the tenon is thick", "Rogers-SR, TFG-offset") if thick else None


def _length(asked: Asked) -> Usual | None:
    """A blind tenon's length: a stub at a post's foot, about four inches elsewhere."""
    if asked.kind("timber") == "post" and asked.texts.get("end") == "foot":
        return _inches(2, 0, 1, "a stub at a post's foot", "TFHQ-stub")(asked)
    return _inches(4, 0, 1, "about what a blind tenon has", PRACTICE)(asked)


def _peg_size(asked: Asked) -> Usual | None:
    if asked.kind("timber") in ("brace", "girt"):
        return _inches(0, 13, 16, "for braces and girts", "TimberHomes")(asked)
    return _inches(1, 0, 1, "for ties, post tops and other working joints", "TimberHomes")(asked)


def _shop(rule: str, what: str, source: str) -> _Suggest:
    def suggest(asked: Asked) -> Usual:
        length: Length = getattr(USUAL[asked.bare], rule)
        return Usual(typed_text(length, metric=asked.metric), what, source)

    return suggest


_FACES = {
    "sill": ("up", "the top, then the outside"),
    "plate": ("up", "the top, then the outside"),
    "tie": ("up", "the top, then the agreed face of the bent"),
    "girt": ("up", "the top, then the agreed face of the bent"),
    "girder": ("up", "the top, then an agreed side"),
    "joist": ("up", "the top, which is the crowned-up face, then an agreed side"),
    "rafter": ("up", "the roof plane, then an agreed side"),
    "purlin": ("up", "the roof plane, then an agreed side"),
}


def _first_face(asked: Asked) -> Usual | None:
    found = _FACES.get(asked.texts.get("kind", "").strip())
    return Usual(found[0], found[1], PRACTICE) if found else None


def _reference_end(asked: Asked) -> Usual | None:
    if asked.texts.get("kind", "").strip() != "post":
        return None
    return Usual("foot", "the butt of the tree down", "Homestead")


_PEGS: dict[str, _Suggest] = {
    "pegs.count": _word("2", "two to a working tenon", "Wharton"),
    "pegs.size": _peg_size,
    "pegs.from_shoulder": _inches(1, 1, 2, 'with a 4" hardwood tenon', "Wharton"),
    "pegs.draw": _inches(0, 1, 16, 'to 1/8" in hardwood, about double in softwood', "Massie-draw"),
}

_TENON: dict[str, _Suggest] = {"thickness": _quarter, "set_back": _set_back, "length": _length}

_HALF_INCH = _inches(0, 1, 2, 'commonly, to 1" for heavier timbers', PRACTICE)

_SUGGESTED: dict[str, dict[str, _Suggest]] = {
    "tenon": {**_TENON, **_PEGS, "housing": _HALF_INCH},
    "diminished tenon": {**_TENON, "housing": _HALF_INCH},
    "wedged half-dovetail": {"thickness": _quarter, "set_back": _set_back},
    "brace": {
        "thickness": _inches(1, 1, 2, "on 3 x 5 braces", "Beemer-shed"),
        "set_back": _inches(1, 1, 2, "on 3 x 5 braces", "Beemer-shed"),
        "ease": _inches(0, 1, 4, "at least, so that rough stock enters", "Rogers-var"),
        **_PEGS,
        "pegs.count": _word("1", "one in a brace"),
    },
    "joist pocket": {"bearing": _inches(2, 0, 1, "one engineer's figure", "FF-joist")},
    "joggle": {"abutment": _word("bisecting", "or square to the notched piece", "Strut")},
    "scarf": {
        "length": _inches(30, 0, 1, "typical, of 2 to 3 ft", "TFHQ-scarf"),
        "tongue": _inches(1, 1, 2, "usually", "Cadley"),
    },
    TIMBER: {"first_face": _first_face, "reference_end": _reference_end},
    PROJECT: {
        "shop.trim": _shop("trim", "what counts if left empty", PRACTICE),
        "shop.guide_block": _shop("guide_block", "what counts if left empty", PRACTICE),
        "shop.bottom_clearance": _shop(
            "bottom_clearance", "what counts if left empty", "TFHQ-stub"
        ),
        "shop.least_wood": _shop("least_wood", "what counts if left empty", PRACTICE),
    },
    CHAMFER: {"arrises": _word("far-far", "the inside arris of a corner post")},
    ANY: {},
}


def usual(family: str, key: str, asked: Asked) -> Usual | None:
    """What to suggest for a field of a family; None where nothing is usual."""
    suggest = _SUGGESTED.get(family, {}).get(key)
    if suggest is None:
        return None
    return _own(family, key, asked) or suggest(asked)


_OWN = {
    "set_back": "set_back",
    "housing": "housing",
    "pegs.size": "peg_size",
    "pegs.from_shoulder": "peg_from_shoulder",
    "pegs.draw": "draw",
    **{f"shop.{rule}": rule for rule in SHOP},
}
"""The fields that a length of the framer's settings goes to."""

_NOT_OF_BRACES = ("thickness", "set_back", "pegs.size")


def _own(family: str, key: str, asked: Asked) -> Usual | None:
    """What the framer's own settings suggest; None where they say nothing."""
    if family == "brace" and key in _NOT_OF_BRACES:
        return None
    length, narrow, share = asked.own.lengths.get(_OWN.get(key, "")), None, asked.own.share
    if key == "thickness" and share is not None:
        narrow = asked.narrow("timber")
        length = None if narrow is None else nearest(narrow.nm * share, _EIGHTH)
    if length is None:
        return None
    what = f"{share} of the timber" if narrow is not None else "as you like it"
    if narrow is not None and asked.metric:
        return Usual(typed_text(length, metric=True), what, SETTINGS)
    return Usual(written(length, MM if asked.metric else "inches"), what, SETTINGS)
