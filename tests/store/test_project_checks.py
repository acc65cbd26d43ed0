import pytest

from benchmate.store.document import Document
from benchmate.store.project_checks import check_ids, check_timbers, check_works, key_path
from benchmate.store.project_parts import read_parts
from benchmate.store.syntax import read_document
from benchmate.store.toml_lines import Path
from tests.store.samples import CHAMFER, HEAD, JOINT, POST, SILL, STORE


def checked(text: str) -> Document:
    """A project file with this text, its references checked."""
    document = read_document("project.toml", text.encode())
    parts = read_parts(document)
    check_ids(document)
    check_timbers(document, parts)
    check_works(document, parts)
    return document


def told(document: Document) -> list[tuple[str, str]]:
    """The keys and messages of the problems noted."""
    return [(problem.key, problem.message) for problem in document.problems]


@pytest.mark.parametrize(
    ("key", "path"),
    [
        ("at", ("at",)),
        ("on[2]", ("on", 2)),
        ("near_stop.level", ("near_stop", "level")),
        ("stops[0].at", ("stops", 0, "at")),
    ],
)
def test_the_keys_of_records_are_paths(key: str, path: Path) -> None:
    """A record names its own parameters as the file writes them."""
    assert key_path(key) == path


def test_a_sound_project_has_no_problem() -> None:
    """Joints and chamfers share no id with one another, and may share one with a timber."""
    assert not checked(STORE.replace("sw-foot", "post-sw")).problems


def test_an_id_is_given_once_among_timbers_and_once_among_work() -> None:
    """The second of each is told, with the line of the first."""
    text = HEAD + SILL + SILL + POST + JOINT + CHAMFER.replace("inside-chamfer", "sw-foot")
    assert told(checked(text)) == [
        ("timber[2].id", "is the id of the timber on line 5 already"),
        ("timber[2].name", "is the name of the timber on line 6 already"),
        ("chamfer[1].id", "is the id of the joint on line 35 already"),
    ]


def test_a_name_is_given_once_however_it_is_written() -> None:
    """People tell timbers by their names, and capitals are not heard."""
    other = POST.replace("post-sw", "post-nw").replace("South-west post", "SOUTH-WEST post")
    assert told(checked(HEAD + POST + other)) == [
        ("timber[2].name", "is the name of the timber on line 6 already")
    ]


def test_a_bad_timber_can_still_be_named() -> None:
    """A post with a bad length is told once, and not as missing from its joint."""
    document = checked(STORE.replace("7' 11", "7' 11-3/7"))
    assert [key for key, _ in told(document)] == ["timber[2].length"]


def test_a_timber_without_a_text_for_an_id_is_not_counted() -> None:
    """Its work is told that there is none of that name."""
    document = checked(HEAD + POST.replace('"post-sw"', "7") + CHAMFER)
    assert [key for key, _ in told(document)] == ["timber[1].id", "chamfer[1].on[1]"]


def test_names_in_timbers_are_looked_up() -> None:
    """The section, the length and the level of the shoulder."""
    post = POST.replace('"7 x 7"', '"post"').replace("7' 11", "plate - sill")
    document = checked(HEAD + '[lengths]\nsill = "1"\n' + post + 'shoulder_level = "floor"\n')
    assert told(document) == [
        ("timber[1].section", 'there is no section called "post"'),
        ("timber[1].length", 'there is no length, level or section size called "plate"'),
        ("timber[1].shoulder_level", 'there is no length, level or section size called "floor"'),
    ]


def test_faults_wait_until_all_timbers_are_known() -> None:
    """A joint with an end its post has not is told so only where the post can be read."""
    wrong = STORE.replace('end = "foot"\ninto', 'end = "west"\ninto')
    assert [key for key, _ in told(checked(wrong))] == ["joint[1].end"]
    dangling = wrong.replace('into = "south-sill"', 'into = "north-sill"')
    assert [key for key, _ in told(checked(dangling))] == ["joint[1].into"]


def test_a_fault_may_lie_inside_a_table_of_the_entry() -> None:
    """Its line is that of the stop."""
    document = checked(STORE.replace('shoulder = "head"', 'shoulder = "north"'))
    (problem,) = document.problems
    assert problem.key == "chamfer[1].far_stop.shoulder"
    assert "far_stop" in problem.excerpt
