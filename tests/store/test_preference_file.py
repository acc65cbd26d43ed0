"""The settings file: every fault told at its line, and nothing lost by writing."""

import errno
from pathlib import Path

import pytest

from benchmate.store.files import trouble
from benchmate.store.preference_file import read_preferences, write_preferences
from benchmate.store.problem import KeepError, ProjectError

MINE = """\
# mine
units = "mm"        # the metric tape
trim = '30 mm'

# light in the yard
colours = "light"
"""

FAULTS = (
    (
        'units = "mm"\ncolours = "pink"\n',
        (
            ':2: colours: is "pink", which cannot be set here\n  colours = "pink"\n'
            "  write one of dark, light, high-contrast, none"
        ),
    ),
    (
        'color = "dark"\n',
        ':1: color: is no setting\n  color = "dark"\n  did you mean "colours"?',
    ),
    (
        "\nguide_block = 2\n",
        ':2: guide_block: is not text\n  guide_block = 2\n  write it in quotes, as "1-1/2 in"',
    ),
    (
        'guide_block = "2"\n',
        (
            ':1: guide_block: is a number without a unit\n  guide_block = "2"\n'
            "  write 1-1/2 in, or 38 mm"
        ),
    ),
    (
        'units = "mm"\ngraduation = "1/16"\n',
        (
            ':2: graduation: is "1/16", which cannot be set here\n  graduation = "1/16"\n'
            "  write one of 1 mm, 0.5 mm"
        ),
    ),
    (
        'tenon_share = "3/4"\n',
        (
            ':1: tenon_share: is no share of a timber up to a half\n  tenon_share = "3/4"\n'
            "  write one, as 1/4 or 1/3"
        ),
    ),
    (
        "digits = 7\n",
        ':1: digits: is not text\n  digits = 7\n  write it in quotes, as "block"',
    ),
    (
        "tenon_share = 0.25\n",
        ':1: tenon_share: is not text\n  tenon_share = 0.25\n  write it in quotes, as "1/4"',
    ),
)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Where the settings of the test lie; nothing is there yet."""
    return tmp_path / "config" / "settings.toml"


def put(path: Path, text: str) -> Path:
    """Write a settings file."""
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    return path


def test_no_file_is_nothing_set(path: Path) -> None:
    """And nothing wrong."""
    assert read_preferences(path) == ({}, ())


def test_settings_are_read_as_written(path: Path) -> None:
    """In whatever order they stand."""
    read = read_preferences(put(path, MINE))
    assert read.texts == {"units": "mm", "trim": "30 mm", "colours": "light"}
    assert not read.problems


@pytest.mark.parametrize(("text", "told"), FAULTS)
def test_a_fault_is_told_at_its_line_and_the_rest_holds(path: Path, text: str, told: str) -> None:
    """File, line, key, what is wrong, what to do; a sound setting beside it counts."""
    read = read_preferences(put(path, text + 'peg_size = "1 in"\n'))
    (problem,) = read.problems
    assert problem.text() == f"{path}{told}"
    assert read.texts["peg_size"] == "1 in"
    assert problem.key not in read.texts


def test_what_is_no_toml_is_told_with_its_line(path: Path) -> None:
    """No setting of it counts, and writing leaves the file as it is."""
    read = read_preferences(put(path, 'units = "mm"\ncolours = dark\n'))
    assert read.texts == {}
    assert read.problems[0].text().startswith(f"{path}:2: a value that cannot be read")
    with pytest.raises(ProjectError):
        write_preferences(path, {"units": "inches"})
    assert path.read_text("utf-8") == 'units = "mm"\ncolours = dark\n'


def test_bytes_that_are_no_text_are_told(path: Path) -> None:
    """A settings file may be anything at all."""
    path.parent.mkdir()
    path.write_bytes(b"\xff\xfe\x00")
    read = read_preferences(path)
    assert read.texts == {}
    assert str(path) in read.problems[0].text()


def test_a_folder_in_its_place_is_told(path: Path) -> None:
    """With what to do about it."""
    path.mkdir(parents=True)
    read = read_preferences(path)
    assert read.texts == {}
    assert read.problems[0].remedy


def test_only_what_changes_is_written(path: Path) -> None:
    """Comments, order and quotes stay; a key that goes takes its line along."""
    put(path, MINE)
    write_preferences(path, {"units": "inches", "colours": None, "digits": "thin"})
    assert path.read_text("utf-8") == (
        "# mine\n"
        'units = "inches"        # the metric tape\n'
        "trim = '30 mm'\n"
        "\n"
        "# light in the yard\n"
        'digits = "thin"\n'
    )


def test_a_first_setting_makes_folder_and_file(path: Path) -> None:
    """And taking the last one out leaves an empty file."""
    write_preferences(path, {})
    assert not path.exists()
    write_preferences(path, {"colours": "light", "units": "mm"})
    assert read_preferences(path).texts == {"colours": "light", "units": "mm"}
    write_preferences(path, {"colours": None, "units": None})
    assert read_preferences(path) == ({}, ())


def test_a_fault_that_is_not_touched_stays(path: Path) -> None:
    """The program mends nothing by itself."""
    put(path, 'colours = "pink"\nunits = "mm"\n')
    write_preferences(path, {"units": None})
    assert path.read_text("utf-8") == 'colours = "pink"\n'


def test_a_link_is_followed_and_stays_one(path: Path, tmp_path: Path) -> None:
    """Settings are often kept elsewhere."""
    real = put(tmp_path / "kept" / "mine.toml", 'units = "mm"\n')
    path.parent.mkdir()
    path.symlink_to(real)
    assert read_preferences(path).texts == {"units": "mm"}
    write_preferences(path, {"units": "inches"})
    assert path.is_symlink()
    assert real.read_text("utf-8") == 'units = "inches"\n'


def test_a_folder_that_cannot_be_made_is_told(path: Path) -> None:
    """A file stands where the folder belongs."""
    path.parent.write_text("", "utf-8")
    with pytest.raises(KeepError):
        write_preferences(path, {"units": "mm"})


def test_a_place_that_cannot_be_seen_is_told(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file that cannot be seen is not one that is not there."""

    def refuse(_path: Path) -> bool:
        raise PermissionError(errno.EACCES, "no")

    monkeypatch.setattr(Path, "exists", refuse)
    (problem,) = read_preferences(path).problems
    assert problem.message == trouble(path, PermissionError(errno.EACCES, "no")).problem
