"""The questions about the joints."""

from benchmate.outset.answering import fill
from benchmate.outset.joint_questions import JOINTS
from tests.outset.frames import LAPPED, PEGGED


def test_pegs_are_asked_for_only_where_they_are_wanted() -> None:
    """Their holes, places and draw."""
    pegs = {"peg", "brace peg", "peg shoulder", "brace peg shoulder", "draw"}
    assert not pegs & {row.question.id for row in fill({}).rows}
    assert pegs <= {row.question.id for row in fill(PEGGED).rows}
    bare = {row.question.id for row in fill(PEGGED | {"braces": "none"}).rows}
    assert pegs & bare == {"peg", "peg shoulder", "draw"}


def test_ties_over_the_plates_have_no_tenons() -> None:
    """Nor housings in posts."""
    assert not {"tie tenon", "tie housing"} & {row.question.id for row in fill(LAPPED).rows}


def test_every_default_says_where_it_comes_from() -> None:
    """Published, common practice, or from memory."""
    assert all(question.source for question in JOINTS.questions)
