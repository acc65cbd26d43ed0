"""What a question is."""

from benchmate.outset.answers import Answers
from benchmate.outset.question import Kind, Question, always, nothing_wrong


def test_a_question_is_asked_and_answered_unless_it_says_otherwise() -> None:
    """By default it is always asked, takes any answer, and is not left empty."""
    nobody = Answers({})
    question = Question(id="a", label="A", kind=Kind.TEXT, suggest=lambda _: "", about="")
    assert question.asked is always
    assert question.refuse is nothing_wrong
    assert always(nobody)
    assert nothing_wrong(nobody) is None
    assert not question.may_be_empty
