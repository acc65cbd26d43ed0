import pytest

from benchmate.measure.length import Length
from benchmate.store.document import Document
from benchmate.store.project_parts import Parts, read_parts
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
    assert parts.lengths["deck"].terms[0].length == Length.mm(40)
    assert parts.sections["j"].first == Length.mm(2)


def test_a_unit_that_is_not_known_does_not_spoil_the_rest() -> None:
    """The wrong word is noted and the lengths are read as inches."""
    parts, document = parts_of(HEAD + 'units = 7\n[lengths]\ndeck = "2"')
    assert keys(document) == ["units"]
    assert parts.lengths["deck"].terms[0].length == Length.inches(2)


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
    text = STORE + JOINT.replace('"tenon"', '"scarf"') + JOINT.replace('"4"', "4")
    parts, document = parts_of(text + CHAMFER.replace('family = "tenon"\n', ""))
    assert keys(document) == ["joint[2].family", "joint[3].length"]
    assert [path for path, _ in parts.works] == [("joint", 0), ("chamfer", 0), ("chamfer", 1)]
