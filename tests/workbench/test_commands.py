"""The plain commands: what they print and how they exit."""

import json
from datetime import datetime
from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.workbench import commands
from benchmate.workbench.bench import Bench
from benchmate.workbench.commands import Code
from benchmate.workbench.opening import CannotOpenError


def test_marks_prints_every_step_of_a_timber(demo: Path) -> None:
    """Figure, hook, way, faces and waste side are all there."""
    output = commands.marks(demo, "SE post")
    assert output.code is Code.FINE
    far_cheek = output.text.split("[ ] Foot tenon: far cheek line")[1].split("  [ ]")[0]
    assert '3-1/2" from the South face, in towards the North face' in far_cheek
    assert "waste: Towards the North face." in far_cheek
    assert '3-11/16" to come off the North face' in far_cheek
    assert "licensed engineer" in output.text


def test_marks_of_all_timbers_shows_what_to_look_at_again(demo: Path) -> None:
    """A tick that is out of date is plain in print too."""
    text = commands.marks(demo).text
    assert "[!] Mortise for SW post: finish line" in text
    assert "look again" in text
    assert text.count(" done\n") == 8


def test_marks_say_what_waits_and_for_what(demo: Path) -> None:
    """In print a waiting step has a sign of its own and the tenon it waits for beside it."""
    text = commands.marks(demo, "sill-south").text
    start = text.split("[w] Mortise for SE post: start line")[1].split("  [")[0]
    assert "waits for SE post: foot tenon, measure the tenon as cut" in start
    assert "[ ] Mortise for SW post: depth" in text
    assert text.count("[w]") == text.count("waits for") == 13


def test_waiting_steps_as_data_name_the_step_they_wait_for(demo: Path) -> None:
    """The timber and step by their ids, and in words; a step that does not wait has none."""
    (sill,) = json.loads(commands.marks(demo, "sill-south", as_json=True).text)["timbers"]
    waits = {step["id"]: step["waits_for"] for step in sill["steps"]}
    assert waits["sw-foot-mortise/depth"] == []
    assert waits["se-foot-mortise/start"] == [
        {
            "timber": "post-se",
            "step": "foot-tenon/as-cut",
            "words": "SE post: foot tenon, measure the tenon as cut",
        }
    ]


def test_a_stopped_step_is_not_said_to_wait(demo: Path) -> None:
    """What cannot be cut at all is told before what had better wait."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('length = "3-1/2"', 'length = "9"'))
    text = commands.marks(demo, "sill-north").text
    start = text.split("[ ] Mortise for NW post: start line")[1].split("  [")[0]
    assert "waits for" not in start


def test_marks_as_data_is_exact_and_as_shown(demo: Path) -> None:
    """Every length in whole nanometres, and as on the tape."""
    data = json.loads(commands.marks(demo, "post-se", as_json=True).text)
    (post,) = data["timbers"]
    cheek = next(step for step in post["steps"] if step["id"] == "foot-tenon/far-cheek")
    assert cheek["readings"] == [
        {
            "nm": 88_900_000,
            "shown": '3-1/2"',
            "from": "South face",
            "way": "in towards the North face",
        }
    ]
    assert cheek["on"] == ["East face", "West face", "foot"]
    assert post["steps"][0]["state"] == "ticked"


def test_an_unknown_timber_is_named_with_the_nearest(demo: Path) -> None:
    """One clear error, and the known ones."""
    with pytest.raises(commands.UsageError, match="did you mean post-se"):
        commands.marks(demo, "post-see")
    with pytest.raises(commands.UsageError, match="timbers: post-sw, post-se"):
        commands.marks(demo, "zzz")


def test_find_answers_with_the_figure(demo: Path) -> None:
    """A look-up gives the best answer first; nothing found exits 1."""
    first = commands.find(demo, "se post relief").text.splitlines()[0]
    assert first.startswith('SE post: foot tenon: relief line, East side: 1-1/2"')
    missed = commands.find(demo, "zebra\x1b")
    assert missed.code is Code.FINDINGS
    assert "\x1b" not in missed.text
    data = json.loads(commands.find(demo, "floor top", as_json=True).text)
    assert data["hits"][0]["value"]["shown"] == '4-3/4"'
    assert json.loads(commands.find(demo, "zebra", as_json=True).text) == {"hits": []}


def test_validate_tells_every_finding(demo: Path) -> None:
    """The demo's one mark out of date is a finding, and exits 1."""
    output = commands.validate(demo)
    assert output.code is Code.FINDINGS
    assert output.text.splitlines() == [
        "Orchard tool shed: 8 timbers, 308 steps, 1 to look at",
        (
            "look tick-out-of-date sill-south/sw-foot-mortise: Mortise for SW post: finish line: "
            'marked at 7", now 6-15/16" from the squared west end; look again, mark it anew and '
            "tick it again."
        ),
    ]


def test_a_finding_between_two_joints_is_told_once(demo: Path) -> None:
    """In print it names both; as data the other one is in `also`."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('at = "shed length"', 'at = "1\' 2-1/4"', 1))
    lines = [line for line in commands.validate(demo).text.splitlines() if "between" in line]
    assert lines == [
        (
            "look little-wood-between sill-south/sw-foot-mortise: The cuts of the mortise for SW "
            'post and the mortise for SE post leave 3/8" of wood between them, less than 1/2"; '
            "move one of them or make it smaller; if the engineer lets it be, write "
            'meets = ["se-foot"] in joint sw-foot.'
        )
    ]
    (sill,) = json.loads(commands.marks(demo, "sill-south", as_json=True).text)["timbers"]
    also = {found["code"]: found["also"] for found in sill["findings"]}
    assert also == {"tick-out-of-date": "", "little-wood-between": "se-foot-mortise"}


def test_validate_of_a_sound_project_exits_0(demo: Path) -> None:
    """No findings, one line."""
    (demo / "progress" / "sill-south.toml").unlink()
    output = commands.validate(demo)
    assert output.code is Code.FINE
    assert output.text == "Orchard tool shed: 8 timbers, 308 steps, no findings"


def test_ticks_of_a_renamed_timber_are_told(demo: Path) -> None:
    """A timber given another id leaves its ticks behind, and validate says so."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('"sill-south"', '"sill-door"'))
    output = commands.validate(demo)
    assert output.code is Code.FINDINGS
    assert "look progress-without-timber sill-south: progress/sill-south.toml" in output.text


def test_a_broken_progress_file_is_bad_input(demo: Path) -> None:
    """It is told once, and no figures it could change are printed."""
    (demo / "progress" / "post-sw.toml").write_text("format = ")
    output = commands.validate(demo)
    assert output.code is Code.BAD_INPUT
    assert output.text.count("progress/post-sw.toml") == 1
    marks = commands.marks(demo, "post-sw")
    assert marks.code is Code.BAD_INPUT
    assert "figures withheld" in marks.text
    assert "from the" not in marks.text
    data = json.loads(commands.marks(demo, "post-sw", as_json=True).text)
    assert all(step["readings"] == [] for step in data["timbers"][0]["steps"])


def test_a_stop_withholds_figures_in_print(demo: Path) -> None:
    """A tenon that cannot be has no marks to print."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('length = "3-1/2"', 'length = "9"', 1))
    text = commands.marks(demo, "sill-south").text
    assert 'stop: The mortise goes 9-1/8" in' in text
    assert '9-1/8" from the top face' not in text


def test_a_broken_project_is_one_clear_error(demo: Path) -> None:
    """Every command refuses it with the place."""
    (demo / "project.toml").write_text("format = 1\nname = \n")
    with pytest.raises(CannotOpenError, match=r"project\.toml:2"):
        commands.validate(demo)


def test_the_frame_is_listed_with_what_meets_what(demo: Path) -> None:
    """Every timber, its like, every name and what it comes to; the caution comes last."""
    text = commands.frame(demo).text
    assert text.startswith("Orchard tool shed: 8 timbers, mill rule")
    assert "takes SW post's foot from 1-1/2\"" in text
    assert '  floor top = joist bearing + joist depth + deck: 4-3/4"' in text
    assert text.endswith("licensed engineer.")
    data = json.loads(commands.frame(demo, as_json=True).text)
    assert [len(group["right_hand"]) for group in data["alike"]][:2] == [1, 1]
    assert data["names"]["floor top"]["shown"] == '4-3/4"'
    assert not any(timber["stopped"] for timber in data["timbers"])


def test_the_frame_tells_how_far_each_timber_is(demo: Path) -> None:
    """In words with each, counted by kind, and in the data."""
    text = commands.frame(demo).text
    assert "  cut; 44 of 49 steps done" in text
    assert "By kind\n  4 posts: 2 right, 2 left; 1 cut, 1 begun\n" in text
    data = json.loads(commands.frame(demo, as_json=True).text)
    assert [timber["state"] for timber in data["timbers"]][:3] == ["cut", "begun", "not started"]


def test_the_frame_says_which_lengths_are_not_fit_to_cut_to(demo: Path) -> None:
    """A stop on a joint stands with the timber, and a file that cannot be read is bad input."""
    path = demo / "project.toml"
    path.write_text(path.read_text("utf-8").replace('length = "3-1/2"', 'length = "9"'), "utf-8")
    output = commands.frame(demo)
    assert "  ! stop: The mortise goes 9-1/8" in output.text
    assert output.code is commands.Code.FINE
    (demo / "progress" / "post-sw.toml").write_text("format =")
    assert commands.frame(demo).code is commands.Code.BAD_INPUT


def test_reckon_answers_on_the_tape_that_is_asked_for() -> None:
    """Feet and inches to a sixteenth, unless told otherwise."""
    assert commands.reckon("10 / 3", "feet and inches").text.startswith('3-5/16"+\nfeet')
    assert commands.reckon("100 / 3", "mm").text.startswith("33 mm+\nfeet")
    assert commands.reckon("10 / 3", "inches", "1/64").text.startswith('3-21/64"+\n')
    assert commands.reckon("10 / 3", "inches").code is Code.FINE


@pytest.mark.parametrize(
    ("line", "graduation", "told"),
    [
        ("12' 6 -", "", "a length is missing; write one here, as 7-1/2\n12' 6 -\n       ^"),
        ("floor top + 3", "", "`floor top` is no name or word known here"),
        ("3", "0.5 mm", "a tape in inches has no graduation 0.5 mm; give one of 1/8, 1/16"),
    ],
)
def test_what_cannot_be_reckoned_is_refused(line: str, graduation: str, told: str) -> None:
    """Where and what, with a caret; and a graduation has to be one of its units."""
    with pytest.raises(commands.UsageError) as caught:
        commands.reckon(line, "inches", graduation)
    assert str(caught.value).startswith(told)


def test_history_tells_what_was_done_under_its_days(demo: Path) -> None:
    """Of one timber or of all, newest first, each thing once; 1 where nothing was done."""
    bench = Bench(Keeper.open(demo), lambda: datetime(2027, 3, 4, 12).astimezone())
    bench.tick("post-nw", bench.walk("post-nw").layout.step("foot-tenon/far-cheek"))
    bench.set_name("lengths", "deck", "1-1/2", timber="post-se")
    bench.close()
    output = commands.history(demo)
    assert output.code is Code.FINE
    assert output.text.splitlines()[:3] == [
        "2027-03-04 Thursday",
        "  12:00  frame: deck written as 1-1/2  (was 1-1/4)",
        '  12:00  NW post: tick on Foot tenon: far cheek line  (3-1/2")',
    ]
    assert output.text.count("frame: deck") == 1
    assert "SE post: tick on" in output.text
    assert "SE post" not in commands.history(demo, "NW post").text


def test_history_as_data_and_with_a_torn_journal(demo: Path) -> None:
    """The plain data; what cannot be read is told before the rest, and is something to look at."""
    events = json.loads(commands.history(demo, "post-se", as_json=True).text)["events"]
    assert {event["timber"] for event in events} == {"post-se"}
    (demo / "journal.jsonl").write_text("nonsense\n")
    output = commands.history(demo)
    assert output.code is Code.FINDINGS
    assert output.text.startswith("Line 1 of journal.jsonl cannot be read")
    assert json.loads(commands.history(demo, as_json=True).text)["trouble"]
    assert (demo / "journal.jsonl").read_text() == "nonsense\n"


def test_history_of_nothing_says_so(tmp_path: Path) -> None:
    """A project nobody has worked in."""
    (tmp_path / "project.toml").write_text('format = 1\nname = "New"\n')
    assert commands.history(tmp_path) == commands.Output("nothing done yet", Code.FINDINGS)
    with pytest.raises(commands.UsageError):
        commands.history(tmp_path, "post-se")
