"""The form for real sizes."""

import pytest

from benchmate.measure.reading import read_length
from benchmate.tui.desk import Desk
from benchmate.tui.sizes_form import SizesForm


def form_at(desk: Desk, timber: str, step: str) -> SizesForm:
    """The form at a step."""
    desk.go_to(timber, step)
    return desk.sizes_form()


def test_a_tenon_asks_for_the_section_and_three_sizes_as_cut(desk: Desk) -> None:
    """What is kept is filled in, what is not is left empty beside the size as drawn."""
    form = form_at(desk, "post-se", "foot-tenon/section")
    assert form.title == "SE post, Foot tenon: what it really measures"
    assert [(blank.id, blank.text, form.drawn_text(blank)) for blank in form.blanks()] == [
        ("first", '7-3/16"', '7"'),
        ("second", '6-15/16"', '7"'),
        ("thickness", "", '1-3/4"'),
        ("width", "", '5-7/16"'),
        ("length", "", '3-1/2"'),
    ]
    assert form.blanks()[0].label == "South face to North face"


def test_the_field_to_start_in_follows_the_step(desk: Desk) -> None:
    """Measuring as cut starts at the thickness, anything else at the section."""
    assert form_at(desk, "post-se", "foot-tenon/as-cut").first == "thickness"
    assert form_at(desk, "post-se", "foot-tenon/shoulder").first == "first"
    assert len(form_at(desk, "sill-south", "se-foot-mortise/depth").blanks()) == 2
    assert "the whole stick" in form_at(desk, "post-se", "stick/label").title


def test_what_was_kept_is_no_change(desk: Desk) -> None:
    """Reading the form as it was filled in changes nothing."""
    form = form_at(desk, "post-se", "foot-tenon/section")
    typed = form.read({blank.id: blank.text for blank in form.blanks()})
    assert typed.sizes == form.kept
    assert not typed.changed


def test_typed_sizes_are_read_in_the_projects_unit(desk: Desk) -> None:
    """A bare number is inches here, and any way of writing a length will do."""
    form = form_at(desk, "post-nw", "foot-tenon/as-cut")
    sizes = form.read({"width": " 5 3/8 ", "first": "180 mm"}).sizes
    assert sizes is not None
    assert sizes.as_cut is not None
    assert sizes.as_cut.width == read_length("5-3/8")
    assert sizes.measured.first == read_length("180 mm")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("5-3/8x", "not a unit"),
        ("0", "more than nothing"),
        ("6'", "4'"),
        ("0.333", 'finer than 1/64"'),
    ],
)
def test_a_bad_size_is_told_with_its_field(desk: Desk, text: str, told: str) -> None:
    """Nothing is accepted, and the message names the field."""
    typed = form_at(desk, "post-nw", "foot-tenon/as-cut").read({"width": text})
    assert typed.sizes is None
    assert typed.field == "width"
    assert typed.problem.startswith("tenon width, as cut: ")
    assert told in typed.problem


def test_the_effect_tells_ticked_marks_first(desk: Desk) -> None:
    """What is already on the wood comes before what is not."""
    form = form_at(desk, "post-sw", "foot-tenon/as-cut")
    typed = form.read({"width": "5-3/8"})
    assert typed.sizes is not None
    read_back, *lines = form.effect(typed.sizes)
    assert read_back == 'CHECK THE TAPE: tenon width, as cut: 5-3/8", 1/8" under.'
    assert lines[0].startswith("Moves ")
    assert lines[0].endswith(": 1 step ticked. Ticked steps will say: look again.")
    assert lines[1] == (
        "South sill, mortise for SW post: finish line (ticked): "
        '6-15/16" becomes 6-7/8" from the squared west end; 5-7/16" becomes 5-3/8" mortise length'
    )


def test_the_effect_puts_a_stop_before_all(desk: Desk) -> None:
    """A stick too small for the joint is told before it is accepted."""
    form = form_at(desk, "post-ne", "foot-tenon/section")
    typed = form.read({"first": "3-1/4"})
    assert typed.sizes is not None
    read_back, stop, *_ = form.effect(typed.sizes)
    assert read_back.startswith("CHECK THE TAPE: North face to South face: ")
    assert stop.startswith("STOP on NE post and North sill: The far cheek comes")


def test_a_size_that_moves_nothing_says_so(desk: Desk) -> None:
    """A plate measured where nothing hangs on it."""
    form = form_at(desk, "plate-north", "nw-head-mortise/section")
    typed = form.read({"second": "8-1/16"})
    assert typed.sizes is not None
    assert form.effect(typed.sizes) == (
        'North face to South face: 8-1/16", 1/16" over.',
        "No mark moves.",
    )


@pytest.mark.parametrize(
    ("text", "read_back"),
    [
        ("7", 'North face to South face: 7", as drawn.'),
        ("7-1/64", 'North face to South face: 7-1/64" (on your tape 7"+), 1/64" over.'),
        ("7-7/16", 'North face to South face: 7-7/16", 7/16" over.'),
        ("7-1/2", 'CHECK THE TAPE: North face to South face: 7-1/2", 1/2" over.'),
        ("65/8", 'CHECK THE TAPE: North face to South face: 8-1/8", 1-1/8" over.'),
    ],
)
def test_a_size_is_read_back_as_understood(desk: Desk, text: str, read_back: str) -> None:
    """A slip of the finger is seen before it is accepted."""
    form = form_at(desk, "post-ne", "foot-tenon/section")
    typed = form.read({"first": text})
    assert typed.sizes is not None
    assert form.effect(typed.sizes)[0] == read_back


def test_a_tenon_fatter_than_laid_out_is_questioned(desk: Desk) -> None:
    """A quarter read for three quarters, or a cheek not yet pared: its mortise would grow."""
    form = form_at(desk, "post-ne", "foot-tenon/as-cut")
    typed = form.read({"thickness": "2-1/4"})
    assert typed.sizes is not None
    assert form.effect(typed.sizes)[0] == (
        'CHECK THE TAPE: tenon thickness, as cut: 2-1/4", 1/2" over: '
        "pare it, or what takes it grows."
    )


def test_a_size_taken_back_is_read_back(desk: Desk) -> None:
    """An emptied field is a change too: what it was, and what is drawn there."""
    form = form_at(desk, "post-se", "foot-tenon/section")
    typed = form.read({"first": '7-3/16"', "second": ""})
    assert typed.sizes is not None
    first, *rest = form.effect(typed.sizes)
    assert first == 'East face to West face: 6-15/16" taken back, as drawn again: 7".'
    assert not any("taken back" in line for line in rest)


def test_a_size_as_cut_taken_back_is_read_back(desk: Desk) -> None:
    """The tenon counts as laid out again, and its mortise with it."""
    form = form_at(desk, "post-sw", "foot-tenon/as-cut")
    texts = {blank.id: blank.text for blank in form.blanks()}
    typed = form.read({**texts, "width": ""})
    assert typed.sizes is not None
    assert form.effect(typed.sizes)[0] == (
        'tenon width, as cut: 5-7/16" taken back, as drawn again: 5-1/2".'
    )
