from pydantic import TypeAdapter

from benchmate.joinery.chamfer.record import Chamfer
from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.sums import Sum, Term
from benchmate.model.fields import Position
from benchmate.model.project import Shop
from benchmate.store.document import Document
from benchmate.store.entries import entries, read_record, read_values
from benchmate.store.syntax import read_document

POSITION: TypeAdapter[Sum] = TypeAdapter(Position)


def document(text: str) -> Document:
    """A project file with this text."""
    return read_document("project.toml", text.encode())


def messages(read: Document) -> list[tuple[str, str]]:
    """The keys and messages of the problems noted."""
    return [(problem.key, problem.message) for problem in read.problems]


def test_a_sound_entry_becomes_a_record() -> None:
    """Bare numbers in it take the unit given."""
    read = document("[shop]\ntrim = '20'\n")
    shop = read_record(read, ("shop",), read.data["shop"], Shop, Unit.MM)
    assert shop == Shop(trim=Length.mm(20))
    assert not read.problems


def test_an_unknown_key_hides_nothing_else() -> None:
    """The entry is read without it, so that what it names can be looked up."""
    read = document("[shop]\ntrimm = '3'\ntrim = '2'\n")
    assert read_record(read, ("shop",), read.data["shop"], Shop, Unit.INCH) == Shop(
        trim=Length.inches(2)
    )
    assert messages(read) == [("shop.trimm", "is not a key known here")]


def test_a_bad_value_leaves_no_record() -> None:
    """Everything wrong with the entry is noted, the unknown key as well."""
    read = document("[shop]\ntrimm = '3'\ntrim = 2\n")
    assert read_record(read, ("shop",), read.data["shop"], Shop, Unit.INCH) is None
    assert [key for key, _ in messages(read)] == ["shop.trim", "shop.trimm"]


def test_a_list_of_bad_items_is_not_called_empty() -> None:
    """The items are told, and not that nothing is left without them."""
    read = document("[[chamfer]]\narrises = ['far']\non = []\n")
    assert read_record(read, ("chamfer", 0), read.data["chamfer"][0], Chamfer, Unit.INCH) is None
    assert ("chamfer[1].arrises[1]", "is not one of the words known here") in messages(read)
    assert ("chamfer[1].on", "is an empty list") in messages(read)
    assert "chamfer[1].arrises" not in [key for key, _ in messages(read)]


def test_each_named_value_is_read_alone() -> None:
    """The sound ones are kept and the others noted."""
    read = document("[lengths]\ndeck = '2'\ngirt = 'x x'\nx = 2\n")
    values = read_values(read, "lengths", POSITION, Unit.INCH)
    assert values == {
        "deck": Sum((Term(1, None, Length.inches(2)),)),
        "girt": Sum((Term(1, "x x", None),)),
    }
    assert [key for key, _ in messages(read)] == ["lengths.x"]


def test_a_missing_table_of_names_is_empty() -> None:
    """No table, no values, no problem; something else in its place is one."""
    read = document("levels = 'none'\n")
    assert read_values(read, "lengths", POSITION, Unit.INCH) == {}
    assert read_values(read, "levels", POSITION, Unit.INCH) == {}
    assert messages(read) == [("levels", "is not a table")]


def test_a_list_of_tables_is_given_with_its_paths() -> None:
    """In the order of the file; a table that is not there has no entries."""
    read = document("[[timber]]\nid = 'a'\n[[timber]]\nid = 'b'\n")
    assert entries(read, "timber") == (
        (("timber", 0), {"id": "a"}),
        (("timber", 1), {"id": "b"}),
    )
    assert entries(read, "joint") == ()


def test_what_is_no_list_of_tables_is_noted_once() -> None:
    """However often it is asked for."""
    read = document("timber = ['a']\n")
    assert entries(read, "timber") == ()
    assert entries(read, "timber") == ()
    assert messages(read) == [("timber", "is not a list of tables")]
