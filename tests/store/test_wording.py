from typing import Any

import pytest
from pydantic import ValidationError

from benchmate.joinery.chamfer.record import Chamfer
from benchmate.model.progress import Progress
from benchmate.model.project import Timber
from benchmate.model.record import Record
from benchmate.store.toml_lines import Path
from benchmate.store.wording import Words, file_key, keys_at, words_for


def words_of(record: type[Record], data: dict[str, Any]) -> dict[Path, Words]:
    """What is said of each part of some data that is no such record."""
    with pytest.raises(ValidationError) as caught:
        record.model_validate(data)
    return {error["loc"]: words_for(error, record) for error in caught.value.errors()}


def test_a_bad_length_keeps_its_column() -> None:
    """What the reader of lengths found wrong is passed on with its place."""
    words = words_of(Progress, {"timber": "post", "measured": {"foot": {"first": "4-3/7"}}})
    assert words["measured", "foot", "first"] == Words(
        "3/7 is not a tape fraction", 'write 4-27/64" or 4-7/16"', 4
    )


def test_each_kind_of_slip_has_words_of_its_own() -> None:
    """None of pydantic's own wording is shown to a framer."""
    data = {
        "family": "chamfer",
        "id": "Inside",
        "on": "post",
        "arrises": [],
        "near_stop": 7,
        "far_stop": {"levle": "8"},
    }
    words = words_of(Chamfer, data)
    assert {path: each.message for path, each in words.items()} == {
        ("family",): "is not a key known here",
        ("id",): "is not a usable id",
        ("on",): "is not a list",
        ("arrises",): "is an empty list",
        ("leg",): "is missing",
        ("near_stop",): "is not a table",
        ("far_stop", "levle"): "is not a key known here",
    }
    assert words["far_stop", "levle"].remedy == 'did you mean "level"?'
    assert words["leg",].remedy == "write leg = ... here"


def test_a_word_that_is_not_known_is_told_with_those_that_are() -> None:
    """Where a few words are all that may stand, they are listed or the nearest is named."""
    data = {"id": "post", "name": "Post", "kind": "post", "section": "7 x 7", "length": "8'"}
    words = words_of(Timber, data | {"length_is": "over all"})
    assert words["length_is",] == Words(
        "is not one of the words known here", 'did you mean "overall"?'
    )


def test_a_kind_that_is_not_foreseen_is_still_told() -> None:
    """A new kind of error from pydantic has general words, not its own."""
    error: Any = {"type": "moon_phase", "loc": ("id",), "msg": "", "input": 1}
    assert words_for(error, Timber) == Words(
        "cannot be used here", "look at how a neighbouring entry writes it"
    )


@pytest.mark.parametrize(
    ("record", "path", "keys"),
    [
        (
            Progress,
            ("x",),
            ("format", "timber", "measured", "as_cut", "tick", "signed", "note", "blemish"),
        ),
        (Progress, ("notes", 0, "x"), ("id", "about", "text", "at")),
        (Progress, ("measured", "foot", "x"), ("first", "second")),
        (Progress, ("ticks", 0, "x"), ("step", "marked", "on", "waste", "at")),
        (Chamfer, ("near_stop", "x"), ("shoulder", "distance", "level")),
    ],
)
def test_the_keys_of_a_table_are_known(
    record: type[Record], path: Path, keys: tuple[str, ...]
) -> None:
    """Inside tables, named tables and lists of tables alike."""
    assert keys_at(record, path) == keys


def test_ticks_stand_under_their_own_key() -> None:
    """The file has one `[[tick]]` for each, and other fields have their own names."""
    assert file_key("ticks") == "tick"
    assert file_key("timber") == "timber"
