"""What the screen shows, without a screen."""

from pathlib import Path

import pytest

from benchmate.layout.standing import State
from benchmate.measure.reading import read_length
from benchmate.model.directions import Face
from benchmate.model.progress import AsCut, Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.names import NewText


def said(desk: Desk, label: str) -> str:
    """What the words pane says under a label."""
    return " | ".join(saying.text for saying in desk.words() if saying.label == label)


def test_the_first_screen_shows_the_point_of_the_program(desk: Desk) -> None:
    """The post in hand at its next line: figure, hook, faces, waste side and the real depth."""
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
    figure = desk.figure()
    assert figure is not None
    assert figure.text() == '3-1/2"'
    assert said(desk, "from") == "the South face, in towards the North face"
    assert said(desk, "on") == "East face, West face and end grain of the foot"
    assert said(desk, "waste") == "Towards the North face."
    assert '3-11/16" to come off the North face' in said(desk, "also")
    assert said(desk, "stick") == (
        'measured 7-3/16" by 6-15/16" here, drawn 7" by 7"; the lines still come from the '
        "reference faces"
    )


def test_tick_goes_on_to_the_next_open_step(desk: Desk) -> None:
    """Space after space walks the timber."""
    desk.tick()
    assert desk.step.id == "foot-tenon/reference-edge"
    desk.tick()
    assert desk.step.id == "head-tenon/shoulder"
    assert desk.walk.done == 10


def test_tick_on_a_ticked_step_passes_on_and_keeps_its_time(desk: Desk) -> None:
    """A second press with a dusty finger takes nothing off."""
    desk.take_step(desk.walk.place("foot-tenon/shoulder"))
    before = desk.standing.tick
    desk.tick()
    assert desk.walk.progress.tick("foot-tenon/shoulder") == before
    assert desk.step.id == "foot-tenon/far-cheek"


def test_a_stale_tick_is_told_and_ticked_anew(desk: Desk) -> None:
    """Look again stays until the step is ticked with what it reads now."""
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert said(desk, "again").startswith('marked at 7", now 6-15/16"')
    desk.tick()
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert desk.standing.state is State.TICKED
    assert said(desk, "again") == ""


def test_undo_goes_back_to_where_it_was_done(desk: Desk) -> None:
    """The step undone is the step in hand again, on whatever timber."""
    desk.tick()
    desk.take_timber("plate-north")
    assert "far cheek" in desk.undo().words
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
    assert desk.standing.state is State.OPEN
    assert desk.undo().words == "Nothing to undo."


def test_untick_takes_off_the_step_in_hand_only(desk: Desk) -> None:
    """An open step has nothing to take off."""
    assert "no tick" in desk.untick().words
    desk.take_step(desk.walk.place("end/square"))
    assert desk.untick().words == ""
    assert desk.standing.state is State.OPEN


def test_a_stop_shows_no_figure_and_cannot_be_ticked(desk: Desk) -> None:
    """Law 7: a finding with a remedy, never a number to cut to."""
    thin = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"first": "3-1/4"}), as_cut=AsCut()
    )
    desk.set_sizes(thin)
    assert desk.figure() is None
    assert desk.headline() == "STOP"
    assert "To mend it: choose another stick" in said(desk, "stop")
    assert said(desk, "from") == ""
    outcome = desk.tick()
    assert outcome.failed
    assert desk.standing.state is State.OPEN
    rows = desk.step_rows(tails=True)
    assert rows.rows[rows.row_of(desk.place)].tail == ""
    assert desk.drawing(50, 12) is None
    assert desk.end_drawing(25, 12) is None
    assert desk.header()[1][0].text.strip() == "STOP"
    stopped = {row.text for row in desk.timber_rows() if row.tail.startswith("STOP")}
    assert stopped == {"SE post", "South sill"}


def test_swap_brings_the_squared_end_first(desk: Desk) -> None:
    """The other figure of a mark along the timber comes first until swapped back."""
    desk.take_step(desk.walk.place("head-tenon/shoulder"))
    assert said(desk, "from").startswith("the foot shoulder line")
    assert said(desk, "also").startswith("7' 7-1/2\" from the squared foot")
    desk.swap()
    assert said(desk, "from").startswith("the squared foot")
    desk.swap()
    assert said(desk, "from").startswith("the foot shoulder line")


def test_turning_shows_every_side_of_the_step_and_the_end(desk: Desk) -> None:
    """The drawing goes round the faces the line is on and ends on the end grain."""
    seen = []
    for _ in range(len(desk.faces())):
        seen.append(desk.face())
        desk.turn()
    assert set(seen) == {Face.SECOND, Face.FAR_SECOND, Face.REFERENCE_END}
    assert desk.face() is seen[0]
    drawing = desk.drawing(50, 8)
    assert drawing is not None
    assert len(drawing.rows) == 8
    desk.turned = seen.index(Face.REFERENCE_END)
    assert desk.drawing(50, 12) == desk.end_drawing(50, 12)


def test_the_step_list_is_grouped_and_every_step_has_a_row(desk: Desk) -> None:
    """Marks stand under their joint, the rest under their stage."""
    found = desk.step_rows(tails=True)
    headings = [row.text for row in found.rows if row.heading]
    assert headings[:5] == [
        "Choose the stick",
        "Check and measure",
        "Ends",
        "Foot tenon",
        "Head tenon",
    ]
    assert [place for place in found.places if place is not None] == list(
        range(len(desk.walk.steps))
    )
    assert found.rows[found.row_of(desk.place)].text == "Far cheek line"
    assert found.rows[found.row_of(desk.place)].tail == '3-1/2"'


def test_timber_rows_tell_progress_and_what_to_look_at(desk: Desk) -> None:
    """One glance at the list finds the timber that needs a second look."""
    rows = {row.text: row.tail for row in desk.timber_rows()}
    assert rows["SE post"] == "8/49"
    assert rows["South sill"] == "1 again  9/31"
    assert desk.timber_rows()[desk.timber_place()].text == "SE post"


def test_next_says_when_all_is_done(desk: Desk) -> None:
    """No step is left: the framer is told, and stays where he is."""
    for tenoned in ("post-nw", "post-ne"):
        desk.bench.tick(tenoned, desk.bench.walk(tenoned).layout.step("head-tenon/as-cut"))
    desk.take_timber("plate-north")
    for _ in desk.walk.steps:
        outcome = desk.tick()
    assert outcome.words == "Every step of North plate is ticked. To look at again: South sill 1."
    assert desk.next_open().words == outcome.words


def test_the_header_warns_of_marks_to_look_at_and_of_read_only(desk: Desk, demo: Path) -> None:
    """Both stand out in the header of the timber concerned."""
    desk.take_timber("sill-south")
    assert [part.text.strip() for part in desk.header()[1]] == [
        "1 to look at again",
        "9 of 31 done",
    ]
    second = Desk(Bench(Keeper.open(demo)), UNICODE)
    assert second.header()[1][0].text.strip() == "READ ONLY"
    assert second.tick().words.startswith("Not kept: ")


def test_taking_over_makes_the_other_read_only(desk: Desk, demo: Path) -> None:
    """The second program may keep ticks; the first is told at its next look."""
    assert "already open" in desk.take_over().words
    second = Desk(Bench(Keeper.open(demo)), UNICODE)
    assert second.take_over().words == "Taken over: ticks are kept from here now."
    outcome = desk.look()
    assert outcome is not None
    assert outcome.failed
    assert "Read only" in outcome.words
    assert desk.take_over().words.startswith("Taken over")
    second.bench.close()


def test_a_look_that_finds_nothing_says_nothing(desk: Desk, demo: Path) -> None:
    """Changes are told once, and a broken file is told with its place."""
    assert desk.look() is None
    path = demo / "project.toml"
    whole = path.read_text()
    path.write_text(whole.replace("Orchard tool shed", "Orchard store"))
    outcome = desk.look()
    assert outcome is not None
    assert desk.header()[0][1].text.strip() == "Orchard store"
    path.write_text(whole + "\nbroken")
    broken = desk.look()
    assert broken is not None
    assert broken.failed
    assert broken.words.startswith("project.toml:")
    assert desk.look() is None
    assert desk.header()[1][0].text.strip() == "OLD FIGURES: FILE BROKEN"
    path.write_text(whole)
    assert desk.look() is not None
    assert "BROKEN" not in desk.header()[1][0].text


def test_a_timber_taken_out_of_the_file_is_let_go(desk: Desk, demo: Path) -> None:
    """The place in hand stays sound when the project shrinks under it."""
    (demo / "project.toml").write_text('format = 1\nname = "Bare"\n')
    desk.look()
    assert desk.empty
    assert desk.timber_rows() == ()
    assert desk.header()[1] == ()


@pytest.mark.parametrize("place", range(49))
def test_every_step_of_a_post_can_be_shown(desk: Desk, place: int) -> None:
    """Figure or headline, words and drawings, at any step."""
    desk.take_step(place)
    assert desk.figure() or desk.headline()
    assert desk.words()[0].strong
    drawing, end = desk.drawing(49, 8), desk.end_drawing(25, 12)
    assert drawing is not None
    assert end is not None
    assert (len(drawing.rows), len(end.rows)) == (8, 12)
    figure = desk.figure()
    if figure is not None:
        first = desk.walk.readings(desk.step)[0].value
        assert read_length(figure.text().rstrip("+-")) == first


def test_a_step_is_held_on_to_when_steps_before_it_come_or_go(desk: Desk) -> None:
    """A shoulder with nothing to saw any more must not push the framer on to another step."""
    desk.go_to("post-ne", "foot-tenon/as-cut")
    flush = Sizes(
        place="foot-tenon", measured=Measured.model_validate({"first": "3-1/2"}), as_cut=AsCut()
    )
    steps = len(desk.walk.steps)
    desk.set_sizes(flush)
    assert len(desk.walk.steps) == steps - 2, "no far cheek to strike, none to saw"
    assert desk.step.id == "foot-tenon/as-cut"
    desk.undo()
    assert desk.step.id == "foot-tenon/as-cut"


def test_a_page_of_its_own_tells_the_big_figure_too(desk: Desk) -> None:
    """Read in full, a step lacks nothing of what the big digits say beside it."""
    whole = {saying.label: saying.text for saying in desk.words(whole=True)}
    assert whole["set"] == '3-1/2" from the South face, in towards the North face'
    desk.take_step(desk.walk.place("head-tenon/shoulder"))
    whole = {saying.label: saying.text for saying in desk.words(whole=True)}
    assert whole["set"].startswith("7' 4\" from the foot shoulder line")
    assert whole["or"].startswith("7' 7-1/2\" from the squared foot")


def test_marks_spoilt_elsewhere_by_an_outside_edit_are_told(desk: Desk, demo: Path) -> None:
    """A length changed in an editor names the timbers it spoils."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('length = "7\' 4"', 'length = "7\' 3"'))
    outcome = desk.look()
    assert outcome is not None
    assert "To look at again: SW post" in outcome.words


def test_nothing_is_ticked_from_old_figures(desk: Desk, demo: Path) -> None:
    """With a broken file outside the figures are old, and a mark made from them may be wrong."""
    (demo / "project.toml").write_text("broken")
    desk.look()
    outcome = desk.tick()
    assert outcome.failed
    assert outcome.words.startswith("Not ticked: put right first project.toml")
    assert desk.standing.tick is None


def test_a_depth_of_cut_is_not_written_along_the_face(desk: Desk) -> None:
    """The kerf lies on the shoulder line: its depth beside the pointer would read as a distance."""
    desk.take_step(desk.walk.place("foot-tenon/saw-far-first"))
    drawing = desk.drawing(60, 12)
    assert drawing is not None
    assert '3-11/16"' not in drawing.text
    desk.take_step(desk.walk.place("end/saw"))
    drawing = desk.drawing(60, 12)
    assert drawing is not None
    assert "8' 0\"" in drawing.text


def test_a_size_that_spoils_nothing_new_says_nothing(desk: Desk) -> None:
    """Only what this size has spoilt is told, not what was to be looked at before."""
    desk.go_to("post-ne", "foot-tenon/as-cut")
    narrow = AsCut.model_validate({"width": "5-1/4"})
    quiet = desk.set_sizes(Sizes(place="foot-tenon", measured=Measured(), as_cut=narrow))
    assert quiet.words == ""
    desk.go_to("post-sw", "foot-tenon/as-cut")
    as_drawn = desk.set_sizes(Sizes(place="foot-tenon", measured=Measured(), as_cut=AsCut()))
    assert as_drawn.words == ""
    desk.go_to("sill-north", "ne-foot-mortise/start")
    desk.tick_out_of_order()
    desk.go_to("post-ne", "foot-tenon/as-cut")
    moved = Measured.model_validate({"second": "7-1/4"})
    loud = desk.set_sizes(Sizes(place="foot-tenon", measured=moved, as_cut=AsCut()))
    assert loud.words == "To look at again: North sill 1."


def test_undo_of_a_tick_on_a_timber_taken_away_stays_where_one_is(desk: Desk, demo: Path) -> None:
    """The tick comes off its file; there is no timber left to go to."""
    desk.tick()
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('"post-se"', '"post-xx"'))
    desk.look()
    here = (desk.timber, desk.step.id)
    assert desk.undo().words.startswith("Undone: SE post, tick on Foot tenon")
    assert (desk.timber, desk.step.id) == here
    assert "far-cheek" not in (demo / "progress" / "post-se.toml").read_text()


def test_a_name_changed_tells_the_timbers_it_spoils_and_can_be_undone(desk: Desk) -> None:
    """The bench top moves the door chamfers; undo brings it back, and the framer with it."""
    desk.go_to("post-nw", "end/square")
    outcome = desk.set_name(NewText("lengths", "bench top", "3' 3\""))
    assert outcome.words == "To look at again: SW post 3, South sill 1."
    assert desk.set_name(NewText("lengths", "overhang", "1' 3\"")).words == ""
    desk.take_timber("plate-north")
    assert desk.undo().words == "Undone: overhang written as 1' 3\"."
    assert desk.undo().words == "Undone: bench top written as 3' 3\"."
    assert (desk.timber, desk.step.id) == ("post-nw", "end/square")
    assert desk.bench.walk("post-sw").look_again == 0


def test_a_name_that_cannot_stand_is_not_kept(desk: Desk) -> None:
    """One clear message, and nothing has moved."""
    outcome = desk.set_name(NewText("lengths", "bench top", "no such name"))
    assert outcome.failed
    assert outcome.words.startswith("Not kept: ")
    assert desk.bench.walk("post-sw").look_again == 0


def test_a_measuring_step_says_what_it_keeps(desk: Desk) -> None:
    """Ticked unmeasured, it tells the sizes it takes for measured; ticked again, nothing."""
    desk.go_to("post-nw", "foot-tenon/section")
    assert desk.tick().words == 'Kept as measured: 7" x 7".'
    desk.go_to("post-nw", "foot-tenon/section")
    assert desk.tick().words == ""
    assert desk.undo().words == (
        "Undone: NW post, tick on Foot tenon: check square and wind, measure the section."
    )
    assert desk.walk.progress.measured == {}


def test_a_mortise_measured_out_of_order_says_both(desk: Desk) -> None:
    """What is kept as cut and what the tick went before."""
    desk.go_to("post-ne", "foot-tenon/as-cut")
    assert desk.tick_out_of_order().words.startswith("Kept as cut: ")


def test_what_an_editor_overtook_is_not_undone(desk: Desk, demo: Path) -> None:
    """The refusal says what the name is now, and the step in hand stays."""
    desk.set_name(NewText("lengths", "overhang", "1' 3"))
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('overhang = "1\' 3"', 'overhang = "1\' 4"'))
    here = (desk.timber, desk.step.id)
    outcome = desk.undo()
    assert outcome.failed
    assert outcome.words == "overhang is 1' 4 now, changed outside; not undone."
    assert (desk.timber, desk.step.id) == here
    assert desk.undo().words == "Nothing to undo."
