"""A whole project set out from its driving dimensions."""

import re

import pytest
from hypothesis import HealthCheck, assume, given, settings

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO, Length
from benchmate.outset.answering import fill
from benchmate.outset.project_text import frame_text
from benchmate.store.progress_file import project_text
from benchmate.store.reading import parse_project
from tests.outset.frames import (
    CHOICES,
    JOISTED,
    LAPPED,
    METRIC,
    PEGGED,
    SMALL,
    SQUARE,
    answers,
    frame,
    sensible,
)
from tests.proof.sizes import UNSHRUNK

KEYS = (
    "id",
    "name",
    "kind",
    "note",
    "section",
    "family",
    "end",
    "into",
    "units",
    "graduation",
    "rule",
)
"""Keys of the file's own, beside the names that a framer gives."""


def found(typed: dict[str, str]) -> list[str]:
    """What every check finds in a frame, as `validate` would tell it."""
    made = frame(typed)
    return [
        f"{timber.id}: {finding.code}: {finding.message}"
        for timber in made.project.timbers
        for finding in findings_of(lay_out(made, timber.id), made.project.tape)
    ]


@pytest.mark.parametrize(
    "typed",
    [
        {},
        SMALL | METRIC | SQUARE | {"length": "3000", "rafter spacing": "3000"},
        SMALL | LAPPED | PEGGED,
        {"length": "34'", "bays": "3", "longest": "28'", "roof": "none", "leg": "24"},
        {"roof": "none", "braces": "none", "overhang": "0", "bays": "1", "length": "10'"},
    ],
)
def test_nothing_is_found_in_a_frame_as_suggested(typed: dict[str, str]) -> None:
    """Every check passes, with the trade's defaults in every joint."""
    assert found(typed) == []


@pytest.mark.parametrize(
    ("question", "choice"),
    [(question, choice) for question, choices in CHOICES.items() for choice in choices[1:]],
)
def test_every_choice_makes_a_sound_frame(question: str, choice: str) -> None:
    """With all the rest of the work that a small frame may have."""
    assert found(SMALL | JOISTED | PEGGED | SQUARE | {question: choice}) == []


@given(typed=sensible())
@settings(
    max_examples=6,
    phases=UNSHRUNK,
    deadline=None,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
def test_nothing_is_found_in_any_sensible_frame(typed: dict[str, str]) -> None:
    """Random sizes, sections and choices: what is not refused while typing is sound."""
    assume(not fill(typed).faults)
    assert found(typed) == []


def test_a_framer_reads_it_as_if_he_had_written_it() -> None:
    """Names are sums of one another, with what they are behind them; timbers lie on names."""
    text = frame_text(answers(name='Fred\'s "old" shed', species="white oak"))
    for line in (
        r'name = "Fred\'s \"old\" shed"'.replace(r"\'", "'"),
        '"line 2" = "line 1 + bay"',
        '"line 3" = "line 1 + frame length"',
        '"plate top" = "plate underside + plate depth"',
        '"tie top" = "plate underside - tie drop"',
        '"line b" = "centre line + half width"',
        'at = { east = "line 2", north = "line a" }',
        'species = "white oak"',
    ):
        assert line in text
    assert "# outside to outside of the end posts" in text
    assert max(map(len, text.splitlines())) < 240


def test_everything_follows_one_name() -> None:
    """Posts a foot longer lift the plates, the ties and the whole roof by a foot."""
    text = frame_text(answers())
    higher = text.replace('"post height" = "8\'"', '"post height" = "9\'"')
    before, after = (Frame(parse_project(each.encode()), {}) for each in (text, higher))
    for timber in ("plate-south", "tie-2", "rafter-3-north", "brace-sw"):
        (*level, up), (*same, risen) = (
            each.standing(timber).point(ZERO, ZERO, ZERO) for each in (before, after)
        )
        assert level == same
        assert risen - up == Length.feet(1).nm


def test_every_length_of_the_file_is_used() -> None:
    """No name stands in it that nothing goes by, but the floor top, which is looked up."""
    text = frame_text(answers(JOISTED, LAPPED, roof="on a ridge"))
    for name in re.findall(r'^"?([a-z][a-z0-9 -]*?)"? = "', text, re.MULTILINE):
        if name not in (*KEYS, "floor top"):
            assert len(re.findall(rf"\b{name}\b", text)) > 1, name


def test_it_makes_the_round_trip() -> None:
    """What is written is read as the same project in the canonical spelling."""
    made = parse_project(frame_text(answers(PEGGED, LAPPED)).encode())
    assert parse_project(project_text(made).encode()) == made
