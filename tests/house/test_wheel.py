"""The wheel holds the program, its stylesheet and its demo, and describes itself truly."""

import email
import re
import shutil
import sys
import zipfile
from email.message import Message
from pathlib import Path, PurePosixPath

import pytest

import benchmate
from tests.house.tree import ROOT, files, run

RUNTIME = {"textual", "rich", "pydantic", "tomli-w"}

REQUIREMENT = re.compile(r"(?P<name>[\w-]+)<(?P<upper>\d+),>=(?P<lower>\d+(?:\.\d+)*)")


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder that the wheel of the tree as it stands unpacks to."""
    source, built, unpacked = (tmp_path_factory.mktemp(name) for name in ("tree", "dist", "wheel"))
    for path in files():
        (source / path).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / path, source / path)
    command = (sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(built))
    outcome = run(*command, cwd=source)
    assert outcome.returncode == 0, outcome.stdout
    (wheel,) = built.iterdir()
    assert wheel.name == f"benchmate-{benchmate.__version__}-py3-none-any.whl"
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(unpacked)
    return unpacked


@pytest.fixture(scope="module")
def record(unpacked: Path) -> Path:
    """The folder of the wheel's own description."""
    (folder,) = unpacked.glob("*.dist-info")
    return folder


@pytest.fixture(scope="module")
def metadata(record: Path) -> Message:
    """What the wheel says of itself."""
    return email.message_from_string((record / "METADATA").read_text("utf-8"))


def test_it_holds_the_package_and_the_demo_and_nothing_else(unpacked: Path) -> None:
    """Every file of `benchmate/` is in its place, `projects/` is the demo, and no test ships."""
    shipped = {
        path.relative_to(unpacked).as_posix()
        for path in unpacked.rglob("*")
        if path.is_file() and not path.relative_to(unpacked).parts[0].endswith(".dist-info")
    }
    assert shipped == {str(place) for path in files() if (place := _place(path))}


@pytest.mark.parametrize(
    "pattern",
    [
        "benchmate/__main__.py",
        "benchmate/py.typed",
        "benchmate/tui/*.tcss",
        "benchmate/demo/*/project.toml",
        "benchmate/demo/*/progress/*.toml",
    ],
)
def test_it_holds_what_the_program_needs(unpacked: Path, pattern: str) -> None:
    """The program, its types, its stylesheet and a partly ticked demo are there."""
    assert list(unpacked.glob(pattern))


def test_it_runs_where_it_is_unpacked(unpacked: Path) -> None:
    """The program in the wheel starts and tells its version."""
    outcome = run(sys.executable, "-m", "benchmate", "--version", cwd=unpacked)
    assert outcome.returncode == 0, outcome.stdout
    assert benchmate.__version__ in outcome.stdout


def test_it_installs_the_command(record: Path) -> None:
    """Installing it gives the one command, `benchmate`."""
    assert (record / "entry_points.txt").read_text("utf-8").split("\n") == [
        "[console_scripts]",
        "benchmate = benchmate.__main__:main",
        "",
    ]


def test_it_requires_four_packages_within_bounds(metadata: Message) -> None:
    """The four packages agreed on, each from a tested version up to an untested major."""
    required = [
        line for line in metadata.get_all("Requires-Dist", []) if "extra ==" not in str(line)
    ]
    bounds = [REQUIREMENT.fullmatch(str(line)) for line in required]
    assert all(bounds), required
    assert {bound["name"] for bound in bounds if bound} == RUNTIME
    assert metadata["Requires-Python"] == ">=3.11"


def test_it_names_no_licence(metadata: Message, record: Path) -> None:
    """The licence is left for the owner to choose."""
    assert "licen" not in " ".join(f"{name} {value}" for name, value in _headers(metadata)).lower()
    assert not list(record.glob("licen*"))


def _place(path: PurePosixPath) -> PurePosixPath | None:
    """Where the wheel puts a file of the tree; None if it stays behind."""
    if path.is_relative_to("projects"):
        return PurePosixPath("benchmate/demo") / path.relative_to("projects")
    return path if path.is_relative_to("benchmate") else None


def _headers(metadata: Message) -> list[tuple[str, str]]:
    return [(name, str(value)) for name, value in metadata.items()]
