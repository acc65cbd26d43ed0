"""The one table of questions."""

from benchmate.outset.answering import fill
from benchmate.outset.question import Kind
from benchmate.outset.questions import GROUPS, QUESTIONS, WHOLE
from tests.outset.frames import JOISTED, LAPPED, PEGGED, SQUARE

EVERYTHING: tuple[dict[str, str], ...] = (
    {},
    LAPPED | JOISTED | PEGGED | SQUARE | {"roof": "on a ridge", "corners": "half-lapped"},
)


def test_each_has_a_name_of_its_own_and_words() -> None:
    """An id once; a label that fits beside its answer; a sentence on what it is."""
    ids = [question.id for question in QUESTIONS]
    assert len(ids) == len(set(ids))
    assert {question for question, _ in WHOLE} <= set(ids)
    assert sum(len(group.questions) for group in GROUPS) == len(QUESTIONS)
    for question in QUESTIONS:
        assert len(question.label) <= 32, question.label
        assert question.about.endswith("."), question.id
        assert bool(question.choices) is (question.kind is Kind.CHOICE), question.id


def test_each_size_says_where_its_default_comes_from() -> None:
    """Published, common practice, or from memory: never a bare figure."""
    tags = ("published", "ommon practice, no source", "from memory", "No source")
    for question in QUESTIONS:
        if question.kind in (Kind.LENGTH, Kind.SECTION, Kind.PITCH, Kind.COUNT):
            assert any(tag in question.source for tag in tags), question.id


def test_every_question_is_asked_of_some_frame() -> None:
    """None is in the table for nothing."""
    asked = {row.question.id for typed in EVERYTHING for row in fill(typed).rows}
    assert asked == {question.id for question in QUESTIONS}
