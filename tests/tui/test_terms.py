"""Trade terms."""

import re
from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.help_text import STEPS, TIMBERS, explained, help_sayings
from benchmate.tui.terms import TERMS, terms_in
from benchmate.tui.words import Saying
from benchmate.workbench.bench import Bench


def found(text: str) -> list[str]:
    """The terms of a text by their words."""
    return [term.word for term in terms_in([text])]


@pytest.mark.parametrize(
    ("text", "terms"),
    [
        ("Shoulder to shoulder, not overall", ["overall", "shoulder to shoulder"]),
        ("the shoulders bear", ["shoulder"]),
        ("Pare the cheeks: square to the face", ["cheek", "pare"]),
        ("no word of the trade", []),
        ("wedged between, relished", []),
        ("mortise-and-tenon", []),
        ("SW post's tenon", ["post", "tenon"]),
        ("measured as-cut", ["as cut"]),
        ("Knifed lines, housings, both arrises", ["arris", "housing", "knife"]),
        ("Follows the tenon as drawn", ["tenon"]),
        ('Draw 1/8" towards the shoulder', ["draw", "shoulder"]),
    ],
)
def test_terms_are_whole_words_and_the_longer_is_meant(text: str, terms: list[str]) -> None:
    """In any case, and in the forms that are listed."""
    assert found(text) == terms


def test_every_term_is_found_by_each_of_its_words_and_explained_without_a_full_stop() -> None:
    """In the order of the alphabet, each once; the help puts the stop."""
    words = [term.word for term in TERMS]
    assert len(set(words)) == len(words)
    assert words == sorted(words)
    for term in TERMS:
        assert term.meaning
        assert not term.meaning.endswith(".")
        for word in (term.word, *term.others):
            assert term.word in found(f"The {word.upper()}.")


def test_a_step_in_full_explains_its_own_words() -> None:
    """And says nothing of others."""
    step = (Saying(label="why", text="Relish keeps the mortise from splitting out."),)
    texts = [saying.text for saying in explained(step)]
    assert texts[0] == step[0].text
    assert any(text.startswith("relish: ") for text in texts)
    assert not any(text.startswith(("brace", "nose: ")) for text in texts)


@pytest.mark.parametrize("pane", [STEPS, TIMBERS])
def test_help_begins_with_the_pane_in_hand_and_the_step_s_words(pane: str) -> None:
    """What one is in front of comes before all that one might ask."""
    step = (Saying(label="why", text="The set-back, so that the faces come flush."),)
    texts = [saying.text for saying in help_sayings(UNICODE, pane=pane, step=step)]
    assert texts[0] == pane
    assert texts.index("Words of this step") < texts.index("Keys")
    own = texts[texts.index("Words of this step") : texts.index("Keys")]
    assert any(text.startswith("set-back: ") for text in own)
    assert all(any(text.startswith(f"{term.word}: ") for text in texts) for term in TERMS)


PROJECTS = Path(__file__).parents[2] / "projects"


def test_no_form_of_a_listed_word_goes_unexplained_in_the_demos() -> None:
    """A plural or an -ed that a step uses is listed with its word."""
    bench = Bench(Keeper.read(PROJECTS / "meadow-cart-house"))
    said = {
        word
        for timber in bench.timbers
        for step in bench.walk(timber.id).steps
        for text in (step.title, step.why, step.caution, step.waste)
        for word in re.findall(r"[a-z-]+", text.lower())
    }
    plain = {form for term in TERMS for form in (term.word, *term.others)}
    forms = {f"{term.word}{ending}" for term in TERMS for ending in ("s", "es", "ed", "d")}
    # A peg draws, and a tail is wedged up: there the word is no name of a thing.
    assert (said & forms) - plain <= {"draws", "wedged"}
