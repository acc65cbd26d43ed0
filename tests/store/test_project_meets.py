import pytest

from benchmate.store.document import Document
from benchmate.store.progress_file import project_text
from benchmate.store.project_meets import check_meets
from benchmate.store.project_parts import read_parts
from benchmate.store.reading import parse_project
from benchmate.store.syntax import read_document
from tests.store.samples import CHAMFER, HEAD, JOINT, POST, SILL, STORE

SECOND = POST.replace("post-sw", "post-se").replace("South-west", "South-east")
OTHER = JOINT.replace("sw-foot", "se-foot").replace("post-sw", "post-se")
ALONE = (
    POST.replace("post-sw", "post-nw").replace("South-west", "North-west")
    + '[[joint]]\nid = "nw-foot"\nfamily = "tenon"\ntimber = "post-nw"\nend = "foot"\n'
    'length = "4"\nthickness = "2"\nset_back = "2"\n'
)


def store(meets: str, *, on: str = "") -> str:
    """Two posts on a sill, one that stands alone, and `meets` of the first's joint, or of `on`."""
    joint, other, chamfer = (
        text + (f"meets = {meets}\n" if f'"{on or "sw-foot"}"' in text else "")
        for text in (JOINT, OTHER, CHAMFER)
    )
    return HEAD + SILL + POST + SECOND + ALONE + joint + other + chamfer


def checked(text: str) -> Document:
    """A project file with this text, what its joints meet checked."""
    document = read_document("project.toml", text.encode())
    check_meets(document, read_parts(document))
    return document


def told(document: Document) -> list[tuple[str, str, str]]:
    """The keys, messages and remedies of the problems noted."""
    return [(problem.key, problem.message, problem.remedy) for problem in document.problems]


def test_joints_on_one_timber_may_be_meant_to_meet() -> None:
    """Either may say so, or both."""
    assert not checked(STORE).problems
    assert not checked(store('["se-foot"]')).problems
    assert not checked(store('["sw-foot"]', on="se-foot")).problems


@pytest.mark.parametrize(
    ("meets", "key", "message", "remedy"),
    [
        ('["se-fot"]', 1, 'there is no joint called "se-fot"', 'did you mean "se-foot"?'),
        (
            '["se-foot", "inside-chamfer"]',
            2,
            'there is no joint called "inside-chamfer"',
            'write one of "nw-foot", "se-foot"',
        ),
        ('["sw-foot"]', 1, "is this joint itself", "name the other one, or take it out"),
        (
            '["nw-foot"]',
            1,
            '"nw-foot" is on none of the timbers of this joint, so the two cannot meet',
            "name a joint that is, or take it out",
        ),
    ],
)
def test_what_a_joint_cannot_meet_is_told(meets: str, key: int, message: str, remedy: str) -> None:
    """No joint, itself, or one elsewhere: each once, at its own place in the list."""
    assert told(checked(store(meets))) == [(f"joint[2].meets[{key}]", message, remedy)]


def test_a_chamfer_is_not_said_to_meet_anything() -> None:
    """It is no joint, so nothing would come of it; told once, however many it names."""
    assert told(checked(store('["sw-foot", "se-foot"]', on="inside-chamfer"))) == [
        ("chamfer[1].meets", "is said of joints alone", "take it out")
    ]


def test_a_joint_that_cannot_be_read_may_be_named() -> None:
    """What is wrong with it is told for itself, and it is not told as missing too."""
    text = store('["se-foot"]')
    broken = text.replace('timber = "post-se"\nend', 'timber = "post-se"\nnd')
    assert broken != text
    assert sorted(key for key, _, _ in told(checked(broken))) == ["joint[3].end", "joint[3].nd"]


def test_what_joints_meet_makes_the_round_trip() -> None:
    """Read, written in the program's own spelling and read again, it is the same."""
    project = parse_project(store('["se-foot"]').encode())
    assert [work.meets for work in project.works] == [(), ("se-foot",), (), ()]
    written = project_text(project)
    assert parse_project(written.encode()) == project
    assert written.count("meets") == 1
