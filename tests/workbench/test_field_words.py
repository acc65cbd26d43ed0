import pytest

from benchmate.joinery import FAMILIES
from benchmate.model.project import Project
from benchmate.workbench.field_words import GROUPS, JOINS, PROJECT, TIMBER, words_for
from benchmate.workbench.record_fields import fields_of

RECORDS = [(each.name, each.record) for each in FAMILIES] + [(PROJECT, Project)]


@pytest.mark.parametrize(("family", "record"), RECORDS, ids=str)
def test_every_field_has_its_words(family: str, record: type[Project]) -> None:
    """One line of the narrowest window each, and no family is without a line on what it joins."""
    for field in fields_of(record):
        if (family, field.key) == ("chamfer", "meets"):
            continue
        words = words_for(family, field.key)
        assert 0 < len(words.label) <= 24
        assert 0 < len(words.help) <= 150
        assert words.help[-1] in ".!"
        top = field.group.partition(".")[0]
        assert not top or top in GROUPS
    assert family in (*JOINS, TIMBER, PROJECT)


def test_a_family_s_own_words_go_first() -> None:
    """And a stranger has none."""
    assert words_for("tusk tenon", "thickness").label == "Depth of tenon"
    assert words_for("tenon", "thickness").label == "Thickness"
    with pytest.raises(KeyError):
        words_for("tenon", "colour")
