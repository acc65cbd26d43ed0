import tomllib
from pathlib import Path

import pytest

from benchmate.joinery import FAMILIES
from benchmate.model.project import Project, Timber
from benchmate.store.reading import parse_project
from benchmate.store.renaming import paths_of
from benchmate.workbench.record_fields import (
    Field,
    Kind,
    fields_of,
    order_of,
    stored_from,
    texts_of,
)

PROJECTS = Path(__file__).parents[2] / "projects"
FILES = sorted(PROJECTS.glob("*/project.toml"))


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.parent.name)
def test_every_field_of_every_demo_makes_the_round_trip(file: Path) -> None:
    """What the file says is what the form shows, and what the form gives back."""
    data = tomllib.loads(file.read_text())
    for path, record in paths_of(parse_project(file.read_bytes())):
        stored = data[str(path[0])][path[1]]
        given = stored_from(type(record), texts_of(type(record), stored))
        assert given == {key: each for key, each in stored.items() if key != "family"}
    head = {key: each for key, each in data.items() if key in Project.model_fields}
    asked = {"name", "demo", "note", "units", "graduation", "rule", "shop"}
    given = stored_from(Project, texts_of(Project, data))
    assert given == {key: each for key, each in head.items() if key in asked}


@pytest.mark.parametrize("family", FAMILIES, ids=lambda family: family.name)
def test_every_key_that_a_file_may_have_has_a_field(family: object) -> None:
    """All that the file can say, the form can."""
    record = getattr(family, "record", Timber)
    asked = {field.key.partition(".")[0] for field in fields_of(record)}
    assert asked | {"family"} == set(record.model_fields) | {"family"}


def test_what_a_field_holds_is_read_off_its_record() -> None:
    """Words to choose from, which are needed, and the part of the record it is in."""
    found = {field.key: field for field in fields_of(Timber)}
    assert found["id"] == Field("id", Kind.ID, (), required=True)
    assert found["first_face"].kind is Kind.FACE
    assert found["reference_end"].kind is Kind.END
    assert found["length_is"].words == ("shoulder to shoulder", "overall")
    assert found["incline.foot.up"].group == "incline.foot"
    assert found["inner"].kind is Kind.SECTION
    kinds = {field.key: field.kind for each in FAMILIES for field in fields_of(each.record)}
    assert (kinds["meets"], kinds["on"], kinds["arrises"]) == (
        Kind.JOINTS,
        Kind.TIMBERS,
        Kind.CHOICES,
    )
    assert (kinds["pegs.count"], kinds["through"]) == (Kind.COUNT, Kind.FLAG)
    assert order_of(Timber)[:3] == ("id", "family", "name")


def test_texts_become_what_the_file_says() -> None:
    """Lists by commas, flags, counts, and lines of a note; what cannot be stays as it is typed."""
    tenon = next(each.record for each in FAMILIES if each.name == "tenon")
    texts = {
        "meets": "a, b ,",
        "through": "Yes",
        "scribed": "perhaps",
        "pegs.count": "2",
        "pegs.size": " 1 ",
        "length": "",
    }
    assert stored_from(tenon, texts) == {
        "meets": ["a", "b"],
        "through": True,
        "scribed": "perhaps",
        "pegs": {"count": 2, "size": "1"},
    }
    assert stored_from(Timber, {"note": r"one\ntwo"}) == {"note": "one\ntwo"}
    assert texts_of(Timber, {"note": "one\ntwo"})["note"] == r"one\ntwo"
    assert stored_from(tenon, {"pegs.count": "two"}) == {"pegs": {"count": "two"}}
