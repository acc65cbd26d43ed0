"""The form for the project's names."""

from pathlib import Path

import pytest

from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.section import section_text
from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.names_form import NamesForm
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.frame_form import largest_safe
from benchmate.workbench.names import Named, NewText

MOVES = "Moves 20 figures in 12 steps on 4 timbers: 3 steps ticked."


@pytest.fixture
def form(desk: Desk) -> NamesForm:
    """The form over the demo."""
    return NamesForm(desk.bench)


def named(form: NamesForm, name: str) -> Named:
    """One name of the form."""
    found = (form.named(row) for row in range(len(form.rows)))
    return next(each for each in found if each is not None and each.name == name)


def test_every_name_has_a_row_under_its_heading(form: NamesForm) -> None:
    """As written, and what it comes to on the tape."""
    headings = [row.text for row in form.rows if row.heading]
    assert headings == ["Levels", "Lengths", "Sections"]
    row = form.rows[3]
    assert row.text == "floor top = joist bearing + joist depth + deck"
    assert row.tail == '4-3/4"'
    assert form.named(0) is None
    assert form.named(None) is None
    assert {row.text: row.tail for row in form.rows}["joist = 5-1/2 x 3-1/2"] == '5-1/2" x 3-1/2"'


@pytest.mark.parametrize(
    ("name", "about"),
    [
        ("floor top", 'floor top, now joist bearing + joist depth + deck, which is 4-3/4"'),
        ("deck", "deck, now 1-1/4"),
        ("shed length", "shed length, now 12' 4, which is 12' 4\""),
    ],
)
def test_a_name_is_called_as_it_is_now(form: NamesForm, name: str, about: str) -> None:
    """What it comes to is added where the text itself does not say it."""
    shown = form.about(named(form, name))
    assert shown in (about, about.partition(", which")[0])
    assert ("which is" in shown) is (name == "floor top")


def test_the_ripple_is_told_before_it_is_accepted(form: NamesForm, desk: Desk) -> None:
    """The name, those that follow, how much moves, what is ticked first; and nothing is kept."""
    weighed = form.weigh(named(form, "deck"), " 1-1/2 ")
    assert weighed.changed
    assert weighed.new == NewText("lengths", "deck", "1-1/2")
    assert weighed.lines[:3] == (
        'deck 1-1/4" becomes 1-1/2".',
        'With it floor top 4-3/4" becomes 5".',
        f"{MOVES} Ticked steps will say: look again.",
    )
    assert weighed.lines[3] == (
        "SW post, chamfer, North-East arris: chamfer stop, foot (ticked): "
        '11-3/4" becomes 1\' 0" from the foot shoulder line; '
        "1' 3-1/4\" becomes 1' 3-1/2\" from the squared foot"
    )
    assert desk.bench.project.lengths["deck"].text() == '1-1/4"'


def test_what_is_cut_is_told_first(form: NamesForm, desk: Desk) -> None:
    """A chamfer that has been run cannot be moved."""
    desk.bench.tick("post-ne", desk.bench.walk("post-ne").layout.step("inside-chamfer/cut"))
    lines = form.weigh(named(form, "deck"), "1-1/2").lines
    assert "already cut" in lines[2]
    assert lines[3].startswith("ALREADY CUT: NE post, chamfer, South-West arris: chamfer stop")
    assert "(ticked)" not in lines[3]
    cut = next(line for line in lines if "cut the chamfer (ticked)" in line)
    assert cut.startswith("ALREADY CUT: NE post, ")
    assert "chamfer stop, foot it was cut to" in cut
    assert any(line.startswith("SW post, ") for line in lines[lines.index(cut) + 1 :])


def test_a_bad_text_is_one_clear_error(form: NamesForm) -> None:
    """Where, what and what to do, with a caret in the line where that is known."""
    weighed = form.weigh(named(form, "deck"), "1-1/4x")
    assert weighed.new is None
    assert len(weighed.lines) == 1
    assert weighed.lines[0].startswith("deck: `x` is not a unit; use ")
    line, caret = weighed.excerpt.splitlines()
    assert line[caret.index("^")] == "x"


def test_the_text_as_it_is_changes_nothing(form: NamesForm) -> None:
    """Nothing to accept yet."""
    weighed = form.weigh(named(form, "deck"), "1-1/4 ")
    assert not weighed.changed
    assert "Type what it is to be" in weighed.lines[0]


def test_a_name_written_otherwise_may_stay_the_same(form: NamesForm) -> None:
    """It may be accepted all the same: the sum is what counts from now on."""
    weighed = form.weigh(named(form, "floor top"), "joist bearing + 6-3/4")
    assert weighed.changed
    assert weighed.lines == ('floor top stays 4-3/4".', "No mark moves.")


def test_a_stop_is_told_before_it_is_accepted(form: NamesForm) -> None:
    """A post too thin for its tenon."""
    lines = form.weigh(named(form, "post"), "3 x 7").lines
    assert lines[0] == 'post 7" x 7" becomes 3" x 7".'
    assert lines[1].startswith("STOP on SW post, SE post, NW post and 5 more: The far cheek comes ")
    assert any(
        "far cheek line (ticked): withheld until the stop is mended" in line for line in lines
    )
    assert not any(' -1/2"' in line for line in lines), "no figure that cannot be"


def test_a_value_that_cannot_be_reworded_is_told(form: NamesForm, demo: Path) -> None:
    """It is changed in an editor."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('deck = "1-1/4"', 'deck = """1-1/4"""'))
    weighed = form.weigh(named(form, "deck"), "2")
    assert weighed.new is None
    assert "in your editor" in weighed.lines[0]
    assert weighed.excerpt == ""


def test_a_timber_whose_file_is_broken_is_told(desk: Desk, demo: Path) -> None:
    """What is ticked there cannot be known, so it is not passed over in silence."""
    (demo / "progress" / "post-nw.toml").write_text("format = ")
    form = NamesForm(Bench(Keeper.read(demo)))
    lines = form.weigh(named(form, "deck"), "2").lines
    assert any(line.startswith("NOT KNOWN what is done on NW post: ") for line in lines)
    assert desk.bench.broken == ""


def test_it_says_at_once_when_nothing_can_be_changed(
    form: NamesForm, desk: Desk, demo: Path
) -> None:
    """Before anything is typed: another program has the project, or its file is broken."""
    assert form.blocked == ""
    reader = NamesForm(Bench(Keeper.open(demo)))
    assert reader.blocked.startswith("READ ONLY: another benchmate has this project open")
    (demo / "project.toml").write_text("broken")
    desk.bench.look()
    assert form.blocked.startswith("READ ONLY for now: put right first project.toml:1")


def test_a_section_and_real_sizes_speak_the_same_way(form: NamesForm, desk: Desk) -> None:
    """One way to say what a change moves, wherever it is typed."""
    desk.go_to("post-sw", "foot-tenon/as-cut")
    narrow = Sizes(
        place="foot-tenon", measured=Measured(), as_cut=AsCut.model_validate({"width": "5-3/8"})
    )
    by_size = desk.sizes_form().effect(narrow)
    by_name = form.weigh(named(form, "sill"), "8-1/2 x 8").lines
    assert by_size[1].startswith("Moves ")
    assert by_name[1].startswith("Moves ")


def test_an_inner_section_tells_the_largest_that_every_stick_allows() -> None:
    """Nobody picks one that a measured stick is too small for by not having looked."""
    store = Path(__file__).parents[2] / "projects" / "hillside-wood-store"
    bench = Bench(Keeper.read(store))
    form = NamesForm(bench)
    rows = (form.named(row) for row in range(len(form.rows)))
    inner = {each.name: form.about(each) for each in rows if each and each.table.table == "inner"}
    least = largest_safe(bench.frame, "post")
    assert least is not None
    shown = section_text(least, Tape(style=Style.MM, graduation=Graduation.MM))
    assert inner["post"].endswith(f"every stick measured allows {shown}")
