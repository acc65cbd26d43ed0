import pytest

from benchmate.model.stick import STICK
from benchmate.store.document import Document
from benchmate.store.project_features import RESERVED, check_features
from benchmate.store.project_parts import read_parts
from benchmate.store.syntax import read_document
from tests.store.samples import CHAMFER, HEAD, JOINT, PLATES, POST, SCARF, STORE


def checked(text: str) -> Document:
    """A project file with this text, its features checked."""
    document = read_document("project.toml", text.encode())
    check_features(document, read_parts(document))
    return document


def told(document: Document) -> list[tuple[str, str]]:
    """The keys and messages of the problems noted."""
    return [(problem.key, problem.message) for problem in document.problems]


def test_two_tenons_on_one_end_are_told() -> None:
    """The second joint at the foot of a post, with the line of the first."""
    assert told(checked(STORE + JOINT.replace("sw-foot", "second"))) == [
        ("joint[2]", 'makes "foot-tenon", which the joint on line 24 already makes on post-sw')
    ]


def test_a_tenon_on_each_end_is_no_trouble() -> None:
    """Nor are two mortises in one sill."""
    head = JOINT.replace("sw-foot", "sw-head").replace('end = "foot"', 'end = "head"')
    assert not checked(STORE + head).problems


@pytest.mark.parametrize("taken", ["foot-tenon", "end"])
def test_a_chamfer_may_not_have_the_id_of_a_feature(taken: str) -> None:
    """A tenon of the post, or its ends."""
    document = checked(STORE + CHAMFER.replace("inside-chamfer", taken))
    ((key, message),) = told(document)
    assert key == "chamfer[2]"
    assert message.startswith(f'makes "{taken}", which the ')


def test_a_chamfer_may_not_have_the_id_of_a_mortise() -> None:
    """On the timber that has the mortise; elsewhere it may."""
    mortise = CHAMFER.replace("inside-chamfer", "sw-foot-mortise")
    assert not checked(STORE + mortise).problems
    sill = mortise.replace("post-sw", "south-sill").replace('"foot"', '"west"')
    assert [key for key, _ in told(checked(STORE + sill.replace('"head"', '"east"')))] == [
        "chamfer[2]"
    ]


@pytest.mark.parametrize("word", sorted(RESERVED))
def test_words_for_places_are_no_ids(word: str) -> None:
    """What is measured or ticked there would be taken for the chamfer's."""
    document = checked(STORE.replace("inside-chamfer", word))
    assert told(document) == [("chamfer[1].id", f'"{word}" means the whole stick or a place on it')]


def test_the_word_for_the_whole_stick_is_the_layout_s() -> None:
    """The steps of the stick itself keep their name to themselves."""
    assert STICK in RESERVED


def test_only_what_is_sound_is_looked_at() -> None:
    """An entry that cannot be read makes no features, and without a head nothing does."""
    twice = STORE + JOINT.replace("sw-foot", "second")
    assert [key for key, _ in told(checked(twice.replace('set_back = "2"', "", 1)))] == [
        "joint[1].set_back"
    ]
    headless = twice.removeprefix(HEAD)
    assert [key for key, _ in told(checked(headless))] == ["name"]


def test_a_joint_that_may_mean_either_of_two_timbers_is_not_looked_at() -> None:
    """Two timbers with one id, of which the joint suits only the first."""
    lying = POST.replace('"foot"', '"east"').replace('"west"', '"up"')
    assert not checked(STORE + lying).problems


def test_ends_that_a_scarf_settles_are_settled() -> None:
    """Its sticks are looked at with it, and without it they are not."""
    twice = CHAMFER.replace("post-sw", "west-plate").replace('"foot"', '"west"')
    twice = twice.replace('"head"', '"east"').replace("inside-chamfer", "east-end-scarf")
    assert [key for key, _ in told(checked(HEAD + PLATES + SCARF + twice))] == ["chamfer[1]"]
    unread = checked(HEAD + PLATES + SCARF.replace('"3 ft"', '"three"') + twice)
    assert [key for key, _ in told(unread)] == ["joint[1].length"]
