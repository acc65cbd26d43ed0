"""What is suggested, against the trade notes it is taken from."""

import re
from fractions import Fraction
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.section import Section
from benchmate.model.project import Timber
from benchmate.outset.own import NOTHING, Own
from benchmate.workbench import usual as module
from benchmate.workbench.usual import PRACTICE, Asked, Usual, typed_text, usual


def asked(
    texts: dict[str, str], bare: Unit = Unit.INCH, kind: str = "post", own: Own = NOTHING
) -> Asked:
    """A form about an 8 x 8 of some kind."""
    timber = Timber.model_validate(
        {
            "id": "a",
            "name": "A",
            "kind": kind,
            "section": "post",
            "first_face": "south",
            "second_face": "west",
            "reference_end": "foot",
            "length": "8'",
        }
    )
    size = Length.inches(8)
    return Asked(
        timbers={"a": timber},
        sections={"post": Section(size, size)},
        texts=texts,
        bare=bare,
        own=own,
    )


@pytest.mark.parametrize(
    ("family", "key", "texts", "found"),
    [
        # TFG-offset: a quarter of the timber, 8 x 8 has 2".
        (
            "tenon",
            "thickness",
            {"timber": "a"},
            Usual("2", "a quarter of the timber", "TFG-offset"),
        ),
        # Rogers-SR and TFG-offset: as much set back as the tenon is thick.
        (
            "tenon",
            "set_back",
            {"thickness": "1-1/2"},
            Usual("1-1/2", "as much as the tenon is thick", "Rogers-SR, TFG-offset"),
        ),
        # TFHQ-stub: 2" for the stub of a post's foot.
        (
            "tenon",
            "length",
            {"timber": "a", "end": "foot"},
            Usual("2", "a stub at a post's foot", "TFHQ-stub"),
        ),
        # Beemer-shed: 1-1/2" off and thick on 3 x 5 braces.
        ("brace", "set_back", {}, Usual("1-1/2", "on 3 x 5 braces", "Beemer-shed")),
        # FF-joist: 2" of bearing.
        ("joist pocket", "bearing", {}, Usual("2", "one engineer's figure", "FF-joist")),
        # TFHQ-scarf: 2'-6" typical.
        ("scarf", "length", {}, Usual("30", "typical, of 2 to 3 ft", "TFHQ-scarf")),
    ],
)
def test_figures_are_those_of_the_trade_notes(
    family: str, key: str, texts: dict[str, str], found: Usual
) -> None:
    """Each with the tag of the text that says so."""
    assert usual(family, key, asked(texts)) == found


def test_what_hangs_on_another_field_waits_for_it() -> None:
    """Nothing is made up; nor for what is known from memory alone, as a half-dovetail's flare."""
    assert usual("tenon", "thickness", asked({"timber": "nobody"})) is None
    assert usual("tenon", "set_back", asked({})) is None
    assert usual("wedged half-dovetail", "flare", asked({"timber": "a"})) is None
    assert usual("lap", "side", asked({})) is None


def test_a_brace_and_a_tie_have_other_pegs() -> None:
    """TimberHomes: 13/16" for braces and girts, 1" for working joints."""
    sizes = {
        kind: usual("tenon", "pegs.size", asked({"timber": "a"}, kind=kind))
        for kind in ("girt", "tie")
    }
    assert [found and found.text for found in sizes.values()] == ["13/16", "1"]


def test_metric_suggestions_are_whole_millimetres() -> None:
    """A quarter of 8" is 50.8 mm."""
    found = usual("tenon", "thickness", asked({"timber": "a"}, Unit.MM))
    assert found is not None
    assert found.text == "51 mm"
    assert typed_text(Length.inches(30), metric=False) == "30"


def test_the_shop_and_the_faces() -> None:
    """What counts if left empty; and where a post's or a sill's faces usually look."""
    trim = usual("project", "shop.trim", asked({}))
    assert trim is not None
    assert trim.words() == f"1: what counts if left empty ({PRACTICE})"
    assert usual("end cut", "reference_end", asked({"kind": "joist"})) is None
    foot = usual("end cut", "reference_end", asked({"kind": "post"}))
    assert foot == Usual("foot", "the butt of the tree down", "Homestead")
    top = usual("end cut", "first_face", asked({"kind": "sill"}))
    assert top == Usual("up", "the top, then the outside", PRACTICE)


def test_every_tag_is_one_of_the_trade_notes() -> None:
    """No figure is said to be published that was not read: the tags are known by their form."""
    source = Path(module.__file__).read_text("utf-8")
    tags = set(re.findall(r'"((?:[A-Z][A-Za-z]+|TFG|TFHQ|FF)(?:-[A-Za-z]+)?)"\)', source))
    assert tags >= {"TFG-offset", "TFHQ-stub", "TimberHomes", "Wharton", "Massie-draw"}
    assert not tags & {"MEM", "CALC"}


MINE = Own(
    share=Fraction(1, 3),
    lengths={
        "set_back": Length.inches(1, 1, 2),
        "peg_size": Length.inches(0, 7, 8),
        "draw": Length.inches(0, 3, 32),
        "guide_block": Length.mm(45),
    },
)


@pytest.mark.parametrize(
    ("family", "key", "found"),
    [
        ("tenon", "thickness", "2-5/8: 1/3 of the timber (your settings)"),
        ("tenon", "set_back", "1-1/2: as you like it (your settings)"),
        ("tenon", "pegs.draw", "3/32: as you like it (your settings)"),
        ("project", "shop.guide_block", "45 mm: as you like it (your settings)"),
    ],
)
def test_his_own_settings_go_before_the_trade(family: str, key: str, found: str) -> None:
    """They are suggestions still: what is typed stands in the project's own file."""
    suggested = usual(family, key, asked({"timber": "a"}, own=MINE))
    assert suggested is not None
    assert suggested.words() == found


def test_what_he_has_not_set_and_what_is_not_meant_stays_the_trades() -> None:
    """A brace's tenon is its own; a field nobody has a usual for has none of his either."""
    for key in ("thickness", "pegs.size", "pegs.count"):
        plain = usual("brace", key, asked({"timber": "a"}))
        assert usual("brace", key, asked({"timber": "a"}, own=MINE)) == plain is not None
    assert usual("joist pocket", "set_back", asked({"timber": "a"}, own=MINE)) is None
