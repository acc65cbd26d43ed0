"""The words of a project file become lengths, sections, directions and names."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.section import Section, read_section
from benchmate.measure.sums import Sum, read_sum
from benchmate.model.directions import Direction
from benchmate.model.fields import (
    ENDS,
    FACES,
    EndDirection,
    ExactLength,
    FaceDirection,
    Id,
    Name,
    Note,
    Position,
    PositiveRun,
    PositiveSize,
    SectionOrName,
    SectionSize,
    Size,
)
from benchmate.model.record import Record


class Fields(Record):
    """One of every field."""

    size: Size | None = None
    positive: PositiveSize | None = None
    run: PositiveRun | None = None
    exact: ExactLength | None = None
    position: Position | None = None
    section: SectionSize | None = None
    named: SectionOrName | None = None
    face: FaceDirection | None = None
    end: EndDirection | None = None
    name: Name | None = None
    note: Note | None = None
    id: Id | None = None


def _read(key: str, value: object, bare: Unit | None = None) -> Any:  # noqa: ANN401 - any field's
    context = {"bare": bare} if bare else None
    return getattr(Fields.model_validate({key: value}, context=context), key)


@pytest.mark.parametrize(
    ("key", "text", "value"),
    [
        ("size", "4-3/4", Length.inches(4, 3, 4)),
        ("size", "0", Length(0)),
        ("positive", "1/64", Length.inches(0, 1, 64)),
        ("run", "3 ft", Length.feet(3)),
        ("run", "20'", Length.feet(20)),
        ("exact", "-190.000001 mm", Length(-190_000_001)),
        ("position", "floor top - 1/2", read_sum("floor top - 1/2")),
        ("section", "6 x 8", read_section("6 x 8")),
        ("named", "6 x 8", read_section("6 x 8")),
        ("named", "joist", "joist"),
        ("face", "up", Direction.UP),
        ("end", "head", Direction.UP),
        ("end", "west", Direction.WEST),
        ("name", "Orchard shed", "Orchard shed"),
        ("note", "Knot\non the north face", "Knot\non the north face"),
        ("note", "", ""),
        ("id", "post-se", "post-se"),
    ],
)
def test_what_a_file_says(key: str, text: str, value: object) -> None:
    """Each field reads its words, takes the value itself too, and says it again the same."""
    assert _read(key, text) == value
    assert _read(key, value) == value
    written = Fields.model_validate({key: text}).model_dump(exclude_none=True)
    assert _read(key, written[key]) == value


@pytest.mark.parametrize("key", ["size", "positive", "run", "position"])
def test_a_bare_number_takes_the_project_s_unit(key: str) -> None:
    """190 in a millimetre project is 190 mm, and an inch mark still wins."""
    millimetres = dict.fromkeys(("size", "positive", "run"), Length.mm(190))
    assert _read(key, "190", Unit.MM) == millimetres.get(key, read_sum("190 mm"))
    assert _read(key, '6"', Unit.MM) == _read(key, "6", Unit.INCH)
    assert _read(key, "6") == _read(key, '6"')


@pytest.mark.parametrize("key", ["section", "named"])
def test_a_bare_section_takes_the_project_s_unit(key: str) -> None:
    """190 x 140 in a millimetre project is in millimetres."""
    assert _read(key, "190 x 140", Unit.MM) == Section(Length.mm(190), Length.mm(140))


def test_a_stored_length_is_written_with_its_unit() -> None:
    """An exact length does not take the project's unit, because it carries its own."""
    assert _read("exact", "190", Unit.MM) == Length.inches(190)


@given(st.integers(min_value=-(10**14), max_value=10**14))
def test_every_nanometre_can_be_stored(nm: int) -> None:
    """Law 6: what a tick read is kept exactly, however long, and reads back the same."""
    stored = Fields(exact=Length(nm)).model_dump(exclude_none=True)
    assert _read("exact", stored["exact"]) == Length(nm)


@pytest.mark.parametrize(
    ("key", "value", "says"),
    [
        ("size", 4, "not text"),
        ("size", "-1", "not below zero"),
        ("size", "4' 1/64", "more than 4' 0\""),
        ("size", "1/3", "tape fraction"),
        ("positive", "0", "more than nothing"),
        ("run", "0", "more than nothing"),
        ("run", 3, "not text"),
        ("run", "201'", "more than 200' 0\""),
        ("run", "lap", "not a unit"),
        ("exact", 4.5, "not text"),
        ("exact", "x", "not a unit"),
        ("position", 12, "not text"),
        ("position", "201'", "more than 200' 0\""),
        ("section", 6, "not text"),
        ("section", "6", "two sides"),
        ("named", 6, "not text"),
        ("named", "6", "two sides"),
        ("named", "j" * 61, "at most 60"),
        ("face", "upwards", "write one of east, west"),
        ("face", "foot", "where a face looks"),
        ("face", ["up"], "where a face looks"),
        ("end", "up", "write one of foot, head"),
        ("name", "", "empty"),
        ("name", "two\nlines", "U\\+000A"),
        ("name", 7, "not text"),
        ("note", "bell\x07", "U\\+0007"),
        ("note", 7, "not text"),
        ("id", "Post", "not a usable id"),
        ("id", 7, "not text"),
    ],
)
def test_what_is_refused(key: str, value: object, says: str) -> None:
    """Each field says what it needs instead."""
    with pytest.raises(ValidationError, match=says):
        _read(key, value)


def test_every_direction_has_one_word_as_a_face_and_one_as_an_end() -> None:
    """Feet and heads are ends, up and down are where faces look."""
    assert set(FACES.values()) == set(ENDS.values()) == set(Direction)
    assert len(FACES) == len(ENDS) == len(Direction)
    for word, direction in ENDS.items():
        assert Fields(end=direction).model_dump()["end"] == word


def test_a_sum_is_written_in_one_spelling() -> None:
    """Spaces and units settle down on the first save."""
    total = _read("position", "floor top +  8")
    assert isinstance(total, Sum)
    assert Fields(position=total).model_dump()["position"] == "floor top + 8 in"
