"""The questions about the members."""

from benchmate.outset.answering import fill
from benchmate.outset.member_questions import MEMBERS, PLACES
from tests.outset.frames import JOISTED, LAPPED, SQUARE


def asked(typed: dict[str, str]) -> set[str]:
    """The questions of a frame."""
    return {row.question.id for row in fill(typed).rows}


def test_only_what_the_frame_has_is_asked() -> None:
    """Joists with a floor, an inner timber by square rule, let-in where ties lap."""
    plain = asked({"roof": "none", "braces": "none"})
    assert not plain & {"joist", "rafter", "brace", "leg", "pitch", "inner", "let in", "ridge"}
    assert {"joist", "joist spacing", "deck"} <= asked(JOISTED)
    assert "inner" in asked(SQUARE)
    assert asked(LAPPED) & {"let in", "tie drop"} == {"let in"}
    assert "ridge" in asked({"roof": "on a ridge"})


def test_every_size_a_framer_buys_is_his_to_settle() -> None:
    """No section is given as if a trade rule had said so."""
    for question in (*MEMBERS.questions, *PLACES.questions):
        if question.id in ("post", "sill", "plate", "tie", "joist", "brace", "rafter"):
            assert "engineer" in question.source
