"""What must not be overlooked."""

from pathlib import Path

from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.telling import elsewhere, greeting, header, measured
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench


def test_a_renamed_timber_is_told_when_the_project_is_opened(demo: Path) -> None:
    """Its ticks are still in the old file, and the framer is told which."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('"sill-south"', '"sill-door"'))
    bench = Bench(Keeper.read(demo))
    assert "progress/sill-south.toml is kept" in greeting(bench)


def test_all_is_well_is_not_told(desk: Desk) -> None:
    """A sound project greets with nothing."""
    assert greeting(desk.bench) == ""


def test_flags_come_before_progress(desk: Desk) -> None:
    """The timber's name first on the left, and the project's last, to be cut first."""
    left, right = header(desk.bench, desk.bench.walk("sill-south"))
    assert [part.text.strip() for part in left] == ["South sill", "Orchard tool shed"]
    assert [part.warning for part in right] == [True, False]


def test_marks_spoilt_on_other_timbers_are_named(desk: Desk) -> None:
    """The timber in hand shows its own; the others are told by name."""
    assert elsewhere(desk.bench, "post-se") == "To look at again: South sill 1."
    assert elsewhere(desk.bench, "sill-south") == ""


def test_back_returns_from_a_look_up(demo: Path) -> None:
    """One key back to the step in hand before finding something."""
    desk = Desk(Bench(Keeper.read(demo)), UNICODE)
    assert desk.back().words == "There is nowhere to go back to."
    before = (desk.timber, desk.step.id)
    desk.go_to("sill-north", "ne-foot-mortise/depth")
    desk.go_to("plate-north", "")
    desk.back()
    assert desk.step.id == "ne-foot-mortise/depth"
    desk.back()
    assert (desk.timber, desk.step.id) == before


def test_a_measurement_kept_is_read_back(desk: Desk) -> None:
    """On the tape, the section or the sizes as cut, whichever the step asked for."""
    layout, tape = desk.bench.walk("post-nw").layout, desk.bench.project.tape
    sizes = Sizes(
        place="foot-tenon",
        measured=Measured.model_validate({"first": "7", "second": "6-7/8"}),
        as_cut=AsCut.model_validate({"thickness": "2", "length": "4"}),
    )
    section, cut = layout.step("foot-tenon/section"), layout.step("foot-tenon/as-cut")
    assert measured(section, sizes, tape) == 'Kept as measured: 7" x 6-7/8".'
    assert measured(cut, sizes, tape) == 'Kept as cut: 2" x 4".'
