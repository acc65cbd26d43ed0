"""What is suggested, against the trade notes it is taken from."""

import re
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.section import Section
from benchmate.model.project import Timber
from benchmate.workbench import usual as module
from benchmate.workbench.usual import PRACTICE, Asked, Usual, typed_text, usual


def asked(texts: dict[str, str], bare: Unit = Unit.INCH, kind: str = "post") -> Asked:
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
        timbers={"a": timber}, sections={"post": Section(size, size)}, texts=texts, bare=bare
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
