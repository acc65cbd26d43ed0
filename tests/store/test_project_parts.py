import pytest

from benchmate.frame.levels import Levels
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.model.directions import Direction
from benchmate.store.document import Document
from benchmate.store.progress_file import project_text
from benchmate.store.project_parts import SECTION_TABLES, SUM_TABLES, Parts, read_parts
from benchmate.store.syntax import read_document
from tests.store.samples import CHAMFER, HEAD, JOINT, STORE


def parts_of(text: str) -> tuple[Parts, Document]:
    """The parts of a project file with this text, and the file with its problems."""
    document = read_document("project.toml", text.encode())
    return read_parts(document), document


def keys(document: Document) -> list[str]:
    """The keys of the problems noted."""
    return [problem.key for problem in document.problems]


def test_every_part_is_read() -> None:
    """Timbers and work come in the order of the file, each with its path."""
    parts, document = parts_of(STORE)
    assert not document.problems
    assert [path for path, _ in parts.timbers] == [("timber", 0), ("timber", 1)]
    assert [path for path, _ in parts.works] == [("joint", 0), ("chamfer", 0)]
    project = parts.project()
    assert project is not None
    assert [timber.id for timber in project.timbers] == ["south-sill", "post-sw"]


def test_bare_numbers_take_the_unit_of_the_project() -> None:
    """In a metric project a bare number is in millimetres, everywhere in the file."""
    text = (
        HEAD + 'units = "mm"\ngraduation = "1 mm"\n[shop]\ntrim = "25"\n'
        '[lengths]\ndeck = "40"\n[sections]\nj = "2 x 1"'
    )
    parts, _ = parts_of(text)
    assert parts.head is not None
    assert parts.head.shop.trim == Length.mm(25)
    assert parts.sums["lengths"]["deck"].terms[0].length == Length.mm(40)
    assert parts.sections["sections"]["j"].first == Length.mm(2)


def test_a_unit_that_is_not_known_does_not_spoil_the_rest() -> None:
    """The wrong word is noted and the lengths are read as inches."""
    parts, document = parts_of(HEAD + 'units = 7\n[lengths]\ndeck = "2"')
    assert keys(document) == ["units"]
    assert parts.sums["lengths"]["deck"].terms[0].length == Length.inches(2)


@pytest.mark.parametrize(
    ("head", "said"),
    [
        ('units = "mm"\ngraduation = "1/16"\n', 'is "1/16", which is no mark on a tape in mm'),
        ('graduation = "1 mm"\n', 'is "1 mm", which is no mark on a tape in feet and inches'),
    ],
)
def test_the_graduation_must_be_on_the_tape(head: str, said: str) -> None:
    """Sixteenths are not found on a metric tape, nor millimetres on one in inches."""
    parts, document = parts_of(HEAD + head)
    assert [problem.message for problem in document.problems] == [said]
    assert parts.project() is None


def test_without_a_sound_head_there_is_no_project() -> None:
    """The other parts are read all the same."""
    parts, _ = parts_of(STORE.replace('name = "Apple store"', ""))
    assert parts.project() is None
    assert len(parts.timbers) == 2


def test_the_program_s_own_names_for_lists_are_no_keys_of_the_file() -> None:
    """A file has `[[timber]]`, `[[joint]]` and `[[chamfer]]`, and nothing that gathers them."""
    _, document = parts_of("timbers = []\nworks = []\n" + HEAD)
    assert keys(document) == ["timbers", "works"]


def test_a_bad_entry_hides_no_other() -> None:
    """Each entry is read alone."""
    text = STORE + JOINT.replace('"tenon"', '"bolted"') + JOINT.replace('"4"', "4")
    parts, document = parts_of(text + CHAMFER.replace('family = "tenon"\n', ""))
    assert keys(document) == ["joint[2].family", "joint[3].length"]
    assert [path for path, _ in parts.works] == [("joint", 0), ("chamfer", 0), ("chamfer", 1)]


PLACED = (
    HEAD
    + """
rule = "square"

[lines]
"line 1" = "0"
"line 2" = "line 1 + bay + post inner width"
[lengths]
bay = "8'"
[levels]
"sill top" = "1'"
[sections]
post = "8 x 8"
[inner]
post = "7-1/2 x 7-1/4"

[[timber]]
id = "post"
name = "Post"
kind = "post"
section = "post"
first_face = "south"
second_face = "west"
reference_end = "foot"
rule = "mill"
at = { east = "line 2", north = "0" }
reference_end_at = "sill top"
far_end_at = "sill top + 7'"

[[timber]]
id = "brace"
name = "Brace"
kind = "brace"
section = "4 x 4"
inner = "3-1/2 x 3-3/4"
first_face = "up"
second_face = "south"
reference_end = "foot"
incline = { corner = { east = "0", north = "0", up = "9'" }, legs = { down = "3'", east = "3'" } }
"""
)


def test_places_and_rules_are_read() -> None:
    """Lines, inner sections, the rule, the arris of a timber and where it starts and stops."""
    parts, document = parts_of(PLACED)
    assert not document.problems
    project = parts.project()
    assert project is not None
    assert project.rule == "square"
    assert list(project.lines) == ["line 1", "line 2"]
    assert project.inner["post"].second == Length.inches(7, 1, 4)
    post, brace = project.timbers
    assert (post.placed, post.rule, post.upright) == (True, "mill", True)
    assert {key: total.text() for key, total in post.sums().items()} == {
        "reference_end_at": "sill top",
        "far_end_at": 'sill top + 84"',
        "at.east": "line 2",
        "at.north": '0"',
    }
    assert brace.incline is not None
    assert brace.incline.heading is Direction.EAST
    assert brace.inner == Section(Length.inches(3, 1, 2), Length.inches(3, 3, 4))


def test_names_come_to_what_the_tables_say() -> None:
    """Sums and sections as `Levels` takes them: a line by way of an inner width."""
    parts, _ = parts_of(PLACED)
    levels = Levels(*parts.names())
    assert levels.of("line 2") == Length.feet(8, 7, 1, 4)
    assert levels.of("post width") == Length.inches(8)


@pytest.mark.parametrize(
    ("good", "bad", "key"),
    [
        ('rule = "square"', 'rule = "scribe"', "rule"),
        ('"line 1" = "0"', '"line 1" = 0', 'lines."line 1"'),
        ('post = "7-1/2 x 7-1/4"', 'post = "7-1/2"', "inner.post"),
        ('east = "line 2"', 'east = "Line 2"', "timber[1].at.east"),
        ('north = "0" }\nref', 'south = "0" }\nref', "timber[1].at.south"),
        ('far_end_at = "sill top + 7\'"', "far_end_at = 7", "timber[1].far_end_at"),
        ('inner = "3-1/2 x 3-3/4"', 'inner = "small"', "timber[2].inner"),
        ('up = "9\'"', 'upp = "9\'"', "timber[2].incline.corner.upp"),
        ('{ down = "3\'"', '{ dawn = "3\'"', "timber[2].incline.legs.dawn"),
        ('down = "3\'"', 'down = "3\'-"', "timber[2].incline.legs.down"),
    ],
)
def test_what_is_wrong_with_a_place_is_told_at_its_own_key(good: str, bad: str, key: str) -> None:
    """However deep it lies in the entry."""
    assert PLACED.count(good) == 1
    assert key in keys(parts_of(PLACED.replace(good, bad))[1])


@pytest.mark.parametrize("table", [*SUM_TABLES, *SECTION_TABLES])
def test_a_table_of_names_is_a_table(table: str) -> None:
    """A single word there is told, and the rest is read."""
    parts, document = parts_of(f'{table} = "8"\n{STORE}')
    assert keys(document) == [table]
    assert len(parts.timbers) == 2


def test_places_survive_being_written() -> None:
    """Every way to say one reads back equal from the program's own spelling."""
    before, _, _ = PLACED.partition("incline = ")
    foot = '{ east = "0", north = "0", up = "0" }'
    raking = before + f'incline = {{ foot = {foot}, towards = "east", run = "bay", rise = "1" }}\n'
    for text in (PLACED, raking):
        project = parts_of(text)[0].project()
        assert project is not None
        again, document = parts_of(project_text(project))
        assert not document.problems
        assert again.project() == project
