"""Steps joint by joint, and notes once."""

from collections.abc import Callable

import pytest

from benchmate.sheets.groups import (
    WAITS_APART,
    back_figures,
    groups,
    letters,
    notes,
    own_readings,
    sentences,
)
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]


def test_every_step_stands_in_one_group(sheet_of: SheetOf) -> None:
    """None is lost and none told twice; marks come before the saw, the label last."""
    sheet = sheet_of("post-se")
    found = groups(sheet)
    told = [item.step.id for group in found for item in group.items]
    assert sorted(told) == sorted(item.step.id for item in sheet.items)
    titles = [group.title for group in found]
    assert titles[:4] == [
        "Choose the stick",
        "Check square and wind, measure",
        "Ends",
        "Foot tenon",
    ]
    assert titles.index("Head tenon") < titles.index("Back-check") < titles.index("Cut: Foot tenon")
    assert titles[-1] == "Label"


def test_a_mark_reads_back_where_it_stands(sheet_of: SheetOf) -> None:
    """The back-check keeps only the length in all."""
    sheet = sheet_of("post-ne")
    back = back_figures(sheet)
    assert sheet.tape.text(back["foot-tenon/shoulder"].value) == "7' 8-1/2\""
    (check,) = (item for item in sheet.items if item.step.id == "stick/back-check")
    assert [sheet.tape.text(each.value) for each in own_readings(check, back)] == ["8' 0\""]


def test_each_caution_is_told_once(sheet_of: SheetOf) -> None:
    """Sentence by sentence, and every mark leads to one."""
    sheet = sheet_of("post-ne")
    told = notes(sheet)
    assert len(set(told.cautions)) == len(told.cautions)
    for item in sheet.items:
        marks = told.caution_marks(item.step.caution)
        found = [told.cautions[int(mark) - 1] for mark in marks.split(", ") if mark]
        assert " ".join(found) == item.step.caution


def test_marks_of_notes_cannot_be_taken_for_faces(sheet_of: SheetOf) -> None:
    """`E` is the East face, so no note goes by a capital alone."""
    told = notes(sheet_of("post-se"))
    assert told.wastes
    assert {told.waste_mark(each)[0] for each in told.wastes} == {"R"}
    assert told.waste_mark("Towards the East face.") == ""
    assert [each.lead for each in told.lists()] == ["Take care", "Waste"]


def test_what_is_waited_for_goes_by_letters(sheet_of: SheetOf) -> None:
    """One letter for each thing, several for a step that waits for several."""
    sheet = sheet_of("sill-north")
    told = notes(sheet)
    assert len(told.waits) == 2
    assert told.wait_marks(WAITS_APART.join(told.waits)) == "a, b"
    assert told.wait_marks("nothing known") == ""


def test_a_setting_of_one_step_is_told_in_full(sheet_of: SheetOf) -> None:
    """Only shared ones go by a mark."""
    assert notes(sheet_of("post-se")).setting("12 on 12") == "12 on 12"


@pytest.mark.parametrize(("place", "word"), [(0, "a"), (25, "z"), (26, "aa"), (51, "az")])
def test_places_have_letters(place: int, word: str) -> None:
    """As many as are needed."""
    assert letters(place) == word


def test_sentences_keep_their_stops() -> None:
    """Also the last one."""
    assert sentences("Mind it. Stop") == ("Mind it.", "Stop.")
    assert sentences("") == ()
