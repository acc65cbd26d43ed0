"""The command line."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from benchmate import __version__
from benchmate.__main__ import main
from benchmate.store.preference_place import preference_path

DEMO = Path(__file__).parent / "projects" / "four-posts"


def test_version_and_help_say_so_and_exit_0(capsys: pytest.CaptureFixture[str]) -> None:
    """Both are answered without a project."""
    for option, told in (("--version", __version__), ("--help", "Exit status: 0 fine")):
        with pytest.raises(SystemExit) as ended:
            main([option])
        assert ended.value.code == 0
        assert told in capsys.readouterr().out


@pytest.mark.parametrize(
    ("arguments", "status", "told"),
    [
        (["marks", str(DEMO), "post-se"], 0, "Foot tenon: far cheek line"),
        (["find", str(DEMO), "se", "post", "relief"], 0, '1-1/2"'),
        (["find", str(DEMO), "zebra"], 1, "nothing holds all of"),
        (["frame", str(DEMO)], 0, "foot bears in South sill"),
        (["frame", str(DEMO), "--json"], 0, '"alike"'),
        (["history", str(DEMO), "post-se"], 0, "SE post: tick on Foot tenon: shoulder line"),
        (["history", str(DEMO), "--json"], 0, '"events"'),
        (["validate", str(DEMO)], 1, "tick-out-of-date"),
        (
            ["reckon", "12' 6 - 2 x 7-1/2"],
            0,
            '11\' 3"\nfeet   11\' 3"\ninches 135"\nmm     3429 mm\n',
        ),
        (["reckon", "14'", "3", "/", "2"], 0, "7' 1-1/2\""),
        (["reckon", "10 / 3", "--graduation", "1/64"], 0, '3-21/64"+'),
        (["reckon", "10 / 3", "--units", "inches"], 0, '3-5/16"+'),
        (["reckon", "-6 + 500", "--units", "mm", "--graduation", "0.5 mm"], 0, "494 mm"),
    ],
)
def test_plain_commands_print_and_exit(
    arguments: list[str], status: int, told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """0 fine, 1 something to look at or nothing found."""
    assert main(arguments) == status
    captured = capsys.readouterr()
    assert told in captured.out
    assert captured.err == ""
    assert "\x1b" not in captured.out


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["marks", "no-such-project"], "there is no project no-such-project"),
        (["marks", str(DEMO), "post-x"], "no timber"),
        (["history", str(DEMO), "post-x"], "no timber"),
        (["validate", str(DEMO.parent)], "project.toml"),
        (["reckon", "12' 6 -2"], "only; put spaces on both sides to add"),
        (["reckon", "12' 6 -2"], "\n12' 6 -2\n      ^\n"),
        (["reckon", "3", "--graduation", "1 mm"], "no graduation 1 mm; give one of 1/8, 1/16"),
        (["reckon", "\x1b[31m"], "`\\x1b` has no place in a length"),
    ],
)
def test_bad_input_is_one_message_and_2(
    arguments: list[str], told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """On stderr, without a traceback."""
    assert main(arguments) == 2
    captured = capsys.readouterr()
    assert told in captured.err
    assert captured.err.startswith("benchmate: ")
    assert captured.out == ""


@pytest.mark.parametrize("arguments", [["marks"], ["find", str(DEMO)], ["--nonsense"], ["reckon"]])
def test_bad_usage_is_2(arguments: list[str]) -> None:
    """The usual usage message and status."""
    with pytest.raises(SystemExit) as ended:
        main(arguments)
    assert ended.value.code == 2


def test_nothing_in_a_progress_file_acts_on_the_terminal(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Control codes in hooks, places and words are refused, and never printed."""
    demo = Path(shutil.copytree(DEMO, tmp_path / "shed"))
    progress = demo / "progress" / "post-se.toml"
    whole = progress.read_text()
    for planted in (
        whole.replace('"squared foot"', '"squared \\u001b[2J foot"'),
        whole.replace("[measured.foot-tenon]", '[measured."foot\\u001b[31m"]'),
        whole.replace("West face, foot", "West face, \\u009b31m foot"),
    ):
        assert planted != whole
        progress.write_text(planted)
        for arguments in (["validate", str(demo)], ["marks", str(demo)]):
            assert main(arguments) == 2
            captured = capsys.readouterr()
            for text in (captured.out, captured.err):
                assert all(char == "\n" or char.isprintable() for char in text)


def test_a_name_no_system_takes_is_one_message(capsys: pytest.CaptureFixture[str]) -> None:
    """However long the name, there is no such project."""
    assert main(["validate", "x" * 5000]) == 2
    assert "there is no project" in capsys.readouterr().err


def test_a_full_disk_under_the_output_is_one_message() -> None:
    """What cannot be printed is told, with status 2."""
    with Path("/dev/full").open("w") as full:
        run = subprocess.run(
            [sys.executable, "-m", "benchmate", "marks", str(DEMO)],
            stdout=full,
            stderr=subprocess.PIPE,
            check=False,
            text=True,
            timeout=30,
        )
    assert run.returncode == 2
    assert run.stderr == "benchmate: cannot print: No space left on device\n"


def test_json_is_one_document(capsys: pytest.CaptureFixture[str]) -> None:
    """What a script reads is data and nothing else."""
    assert main(["marks", str(DEMO), "--json"]) == 0
    assert len(json.loads(capsys.readouterr().out)["timbers"]) == 8


def test_without_a_terminal_the_screen_is_refused() -> None:
    """No hang and no escape codes: one line and status 2."""
    run = subprocess.run(
        [sys.executable, "-m", "benchmate", str(DEMO)],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        check=False,
        text=True,
        timeout=30,
    )
    assert run.returncode == 2
    assert (
        run.stderr
        == "benchmate: benchmate needs a terminal; for scripts use marks, find, frame, history, "
        "sheets or validate\n"
    )
    assert run.stdout == ""


def test_a_reader_that_goes_away_is_no_error() -> None:
    """`benchmate marks ... | head` ends quietly."""
    script = f"{sys.executable} -m benchmate marks {DEMO} | head -n 1"
    run = subprocess.run(
        ["sh", "-c", script], capture_output=True, check=False, text=True, timeout=30
    )
    assert run.stdout == "Orchard tool shed\n"
    assert run.stderr == ""


def test_a_working_copy_is_read_and_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """A demo of a clone that has been worked on: its copy is read, and the first line says so."""
    demo = Path(__file__).parents[1] / "projects" / "orchard-tool-shed"
    shutil.copytree(demo, tmp_path / "projects" / demo.name)
    monkeypatch.chdir(tmp_path)
    own = tmp_path / "own"
    monkeypatch.setenv("XDG_DATA_HOME", str(own))
    main(["find", demo.name, "girder"])
    assert capsys.readouterr().out.startswith("Girder")
    assert not own.exists()
    copy = Path(shutil.copytree(demo, own / "benchmate" / "projects" / demo.name))
    text = (copy / "project.toml").read_text()
    (copy / "project.toml").write_text(text.replace('name = "Girder"', 'name = "Great girder"'))
    main(["find", demo.name, "girder"])
    first, second = capsys.readouterr().out.splitlines()[:2]
    assert first == f"Reading {copy}"
    assert second.startswith("Great girder")
    main(["find", demo.name, "girder", "--json"])
    assert json.loads(capsys.readouterr().out)["hits"]


def test_sheets_are_written_beside_and_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Without --out into ./sheets-PROJECT; what was written is listed."""
    monkeypatch.chdir(tmp_path)
    assert main(["sheets", str(DEMO)]) == 0
    told = capsys.readouterr().out
    folder = tmp_path / "sheets-four-posts"
    names = sorted(path.name for path in folder.iterdir())
    assert f"Wrote {len(names)} files into {folder}" in told
    assert "Open all_timbers.html in a browser and print it." in told
    assert {"post-se.html", "post-se.txt", "post-se.csv", "frame_schedule.csv"} <= set(names)
    assert [path.name for path in tmp_path.iterdir()] == [folder.name]


def test_one_timber_s_sheet_on_the_paper_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Only that one's, by its name or id, into the folder named."""
    out = tmp_path / "out"
    arguments = ["sheets", str(DEMO), "--timber", "SE post", "--out", str(out), "--paper", "a4"]
    assert main(arguments) == 0
    assert sorted(path.name for path in out.iterdir()) == [
        "post-se.csv",
        "post-se.html",
        "post-se.txt",
    ]
    assert "size:A4;" in (out / "post-se.html").read_text("utf-8")
    assert "post-se.html" in capsys.readouterr().out


def test_a_file_of_somebody_else_s_is_never_written_over(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """One message, status 2, and nothing at all is written."""
    (tmp_path / "post-se.txt").write_text("my own notes", "utf-8")
    assert main(["sheets", str(DEMO), "--out", str(tmp_path)]) == 2
    captured = capsys.readouterr()
    assert "post-se.txt: is there and is no sheet of benchmate's" in captured.err
    assert [path.name for path in tmp_path.iterdir()] == ["post-se.txt"]
    assert (tmp_path / "post-se.txt").read_text("utf-8") == "my own notes"


def test_a_broken_progress_file_is_told_on_the_sheets_and_by_the_status(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The sheets are written all the same, without the figures that cannot be trusted."""
    demo = Path(shutil.copytree(DEMO, tmp_path / "four-posts"))
    (demo / "progress" / "post-se.toml").write_text("format = ", "utf-8")
    assert main(["sheets", str(demo), "--out", str(tmp_path / "out")]) == 2
    assert "post-se.toml" in capsys.readouterr().out
    assert "FIGURES WITHHELD" in (tmp_path / "out" / "post-se.txt").read_text("utf-8")


def test_a_project_is_copied_under_another_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The frame alone, or with its progress; never over another."""
    (tmp_path / "projects").mkdir()
    monkeypatch.chdir(tmp_path)
    assert main(["copy", str(DEMO), "North shed"]) == 0
    assert f"to {tmp_path / 'projects' / 'north-shed'}" in capsys.readouterr().out
    assert list((tmp_path / "projects" / "north-shed" / "progress").iterdir()) == []
    assert main(["copy", str(DEMO), "North shed"]) == 2
    assert "north-shed is there already; take another name" in capsys.readouterr().err
    assert main(["copy", str(DEMO), "East shed", "--progress"]) == 0
    assert list((tmp_path / "projects" / "east-shed" / "progress").iterdir())
    assert main(["copy", "nowhere", "West shed"]) == 2


def test_a_new_frame_needs_a_terminal(capsys: pytest.CaptureFixture[str]) -> None:
    """As the screen does."""
    assert main(["new"]) == 2
    assert "needs a terminal" in capsys.readouterr().err


def test_the_calculator_goes_by_the_settings_and_tells_a_bad_one(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Units from the file; a fault is told beside the answer, which counts by the default."""
    path = preference_path(os.environ)
    path.parent.mkdir(parents=True)
    path.write_text('units = "mm"\n', "utf-8")
    assert main(["reckon", "500 - 6"]) == 0
    assert capsys.readouterr().out.startswith("494 mm")
    path.write_text('units = "ells"\n', "utf-8")
    assert main(["reckon", "1 + 1"]) == 0
    said = capsys.readouterr()
    assert said.out.startswith('2"')
    assert f'{path}:1: units: is "ells"' in said.err
