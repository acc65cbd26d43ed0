import pytest

from benchmate.store.document import Document
from benchmate.store.project_checks import (
    check_ids,
    check_places,
    check_rakes,
    check_timbers,
    check_works,
    key_path,
)
from benchmate.store.project_parts import read_parts
from benchmate.store.syntax import read_document
from benchmate.store.toml_lines import Path
from tests.store.samples import CHAMFER, HEAD, JOINT, PLATES, POST, SCARF, SILL, STORE


def checked(text: str) -> Document:
    """A project file with this text, its references checked."""
    document = read_document("project.toml", text.encode())
    parts = read_parts(document)
    check_ids(document)
    check_timbers(document, parts)
    check_works(document, parts)
    check_places(document, parts)
    check_rakes(document, parts)
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


def test_a_joint_of_two_timbers_with_one_id_has_no_fault_of_its_own() -> None:
    """Nobody can tell which of them it is for until one has another id."""
    lying = POST.replace('"foot"', '"east"').replace('"west"', '"up"').replace("South-w", "North-w")
    assert told(checked(STORE + lying)) == [
        ("timber[3].id", "is the id of the timber on line 15 already")
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
        ("timber[1].length", 'there is no line, length, level or section size called "plate"'),
        (
            "timber[1].shoulder_level",
            'there is no line, length, level or section size called "floor"',
        ),
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


PLACED = {
    "sill": SILL.replace('length = "12\'"', 'at = { north = "0", up = "0" }\nlength = "12\'"')
    + 'reference_end_at = "0"\n',
    "post": POST.replace('length = "7\' 11"', 'at = { east = "0", north = "0" }')
    + 'far_end_at = "8\'"\n',
    "joint": JOINT.replace('at = "0"\n', ""),
}
"""A post on a sill, both by their places."""

BRACE = """
[[timber]]
id = "brace"
name = "Brace"
kind = "brace"
section = "4 x 4"
first_face = "up"
second_face = "south"
reference_end = "foot"

[timber.incline]
foot = { east = "0", north = "0", up = "0" }
head = { east = "3'", north = "0", up = "3'" }
towards = "east"
"""


def placed(good: str = "", bad: str = "") -> Document:
    """The placed post and sill checked, a piece of their text changed."""
    text = HEAD + "".join(PLACED.values())
    assert text.count(good) == 1 or not good
    return checked(text.replace(good, bad) if good else text)


def test_a_post_in_its_place_has_no_problem() -> None:
    """Its foot is settled by the sill, its head by a coordinate; the sill by one and a length."""
    assert not placed().problems


@pytest.mark.parametrize(
    ("good", "bad", "key"),
    [
        ('far_end_at = "8\'"', "", "timber[2].far_end_at"),
        ('far_end_at = "8\'"', 'length = "8\'"\nfar_end_at = "8\'"', "timber[2].length"),
        ('far_end_at = "8\'"', 'reference_end_at = "8\'"', "timber[2].reference_end_at"),
        ('reference_end_at = "0"', "", "timber[1].reference_end_at"),
        ('at = { east = "0", north = "0" }', 'at = { east = "0" }', "timber[2].at.north"),
        ('{ north = "0", up = "0" }', '{ north = "0", up = "0", east = "0" }', "timber[1].at.east"),
        ('into = "south-sill"', 'into = "south-sill"\nat = "0"', "joint[1].at"),
        ('into = "south-sill"', 'into = "south-sill"\ninset = "1"', "joint[1].inset"),
        ('at = { north = "0", up = "0" }\n', "", "joint[1].into"),
        ('name = "Apple store"', 'name = "Apple store"\nrule = "square"', "timber[1].inner"),
        ('section = "7 x 7"', 'section = "7 x 7"\ninner = "6 x 6"', "timber[2].inner"),
    ],
)
def test_what_settles_a_timber_twice_or_not_at_all_is_told(good: str, bad: str, key: str) -> None:
    """At the key to mend."""
    assert key in [found for found, _ in told(placed(good, bad))]


def test_a_class_has_its_inner_section_in_the_table() -> None:
    """Then its timbers need none of their own."""
    square = (
        HEAD
        + 'rule = "square"\n[sections]\npost = "7 x 7"\nsill = "8 x 8"\n[inner]\npost = "6 x 6"\n'
    )
    text = square + SILL.replace('"8 x 8"', '"sill"') + POST.replace('"7 x 7"', '"post"')
    assert [key for key, _ in told(checked(text))] == ["timber[1].inner"]


def test_names_in_places_are_looked_up() -> None:
    """Each at the coordinate or the leg that holds it, with the nearest name."""
    text = HEAD + '[lines]\n"line a" = "0"\n' + "".join(PLACED.values())
    text = text.replace('at = { east = "0", north', 'at = { east = "lin a", north')
    document = checked(text.replace('far_end_at = "8\'"', 'far_end_at = "plate + 1"'))
    assert told(document) == [
        ("timber[2].far_end_at", 'there is no line, length, level or section size called "plate"'),
        ("timber[2].at.east", 'there is no line, length, level or section size called "lin a"'),
    ]
    assert document.problems[1].remedy == 'did you mean "line a"?'
    assert "lin a" in document.problems[1].excerpt


@pytest.mark.parametrize(
    ("good", "bad", "problems"),
    [
        ("", "", []),
        ('north = "0", up = "3\'"', 'north = "1/16", up = "3\'"', ["timber[1].incline"]),
        ('towards = "east"', 'towards = "west"', ["timber[1].incline"]),
        ('head = { east = "3\'"', 'head = { east = "0"', ["timber[1].incline"]),
        ('head = { east = "3\'"', 'head = { east = "3"', []),
    ],
)
def test_a_head_lies_where_it_is_said_to(good: str, bad: str, problems: list[str]) -> None:
    """In one upright plane with its foot, and on the side it is said to lie towards."""
    text = HEAD + BRACE
    assert text.count(good) == 1 or not good
    assert [key for key, _ in told(checked(text.replace(good, bad) if good else text))] == problems


def test_a_plan_line_says_nothing_of_height_nor_a_level_of_the_plan() -> None:
    """Swapped, the timber would stand somewhere else without a word."""
    names = '[lines]\n"line a" = "4\'"\n[levels]\n"tie top" = "9\'"\n'
    place = 'at = { east = "tie top", north = "line a" }\nreference_end_at = "line a"\n'
    alone = 'length = "7\' 11"\n'
    assert alone in POST
    document = checked(HEAD + names + POST.replace(alone, f"{alone}{place}"))
    assert sorted(told(document)) == [
        ("timber[1].at.east", '"tie top" is a level, which says nothing of where on the plan'),
        ("timber[1].reference_end_at", '"line a" is a plan line, which says nothing of height'),
    ]


RAFTER = (
    BRACE.replace('"brace"', '"rafter"')
    .replace('"Brace"', '"Rafter"')
    .replace('up = "0"', 'up = "1\'"')
    .replace('up = "3\'"', 'up = "4\'"')
)
STRUT_JOINT = """
[[joint]]
id = "strut-head"
family = "joggle"
timber = "brace"
end = "head"
into = "rafter"
notch = "1"
length = "2"
thickness = "1-1/2"
set_back = "1"
"""


@pytest.mark.parametrize(
    ("good", "bad", "keys"),
    [
        ("", "", ["joint[1].into"]),
        ('up = "4\'"', 'up = "4\' 1"', []),
        ('north = "0", up = "4\'"', 'north = "1", up = "4\'"', ["timber[2].incline"]),
    ],
)
def test_a_rake_enters_only_one_that_rakes_otherwise(good: str, bad: str, keys: list[str]) -> None:
    """Alike they run side by side; what is not sound by itself is told alone."""
    text = HEAD + BRACE + RAFTER + STRUT_JOINT
    assert text.count(good) == 1 or not good
    assert [key for key, _ in told(checked(text.replace(good, bad) if good else text))] == keys


@pytest.mark.parametrize(
    ("good", "bad", "problems"),
    [
        ("", "", []),
        (
            'reference_end_at = "0"',
            'far_end_at = "14\'"',
            [
                ("timber[1].far_end_at", "the joint there settles"),
                ("timber[1].reference_end_at", "nothing says where the west end"),
            ],
        ),
        ('far_end_at = "26\'"', "", [("timber[2].far_end_at", "where the east end")]),
        ('far_end_at = "26\'"', 'length = "12\'"', []),
        (
            'far_end_at = "26\'"',
            'reference_end_at = "12\'"',
            [
                ("timber[2].reference_end_at", "the joint there settles"),
                ("timber[2].far_end_at", "nothing says where the east end"),
            ],
        ),
    ],
)
def test_a_joint_may_settle_an_end_of_either_timber(
    good: str, bad: str, problems: list[tuple[str, str]]
) -> None:
    """A scarf says where both its sticks stop, and nothing else may say it again."""
    text = HEAD + PLATES + SCARF
    found = told(checked(text.replace(good, bad) if good else text))
    assert sorted(key for key, _ in found) == sorted(key for key, _ in problems)
    said = dict(found)
    assert all(words in said[key] for key, words in problems)


def test_two_joints_at_one_end_are_told_where_each_names_it() -> None:
    """At `end` for the timber whose end is named, at the other's key for one that follows."""
    second = SCARF.replace("plate-scarf", "second")
    assert told(checked(HEAD + PLATES + SCARF + second)) == [
        ("joint[2].end", "is the end that the joint on line 26 has already"),
        ("joint[2].into", "is east-plate, whose west end the joint on line 26 has already"),
    ]


@pytest.mark.parametrize("good", ['"3 ft"', '"scarf"'])
def test_an_end_that_an_unread_joint_would_settle_is_not_open(good: str) -> None:
    """Neither of a scarf's, whether its length or its family cannot be read."""
    document = checked(HEAD + PLATES + SCARF.replace(good, '"splice"'))
    assert [key.partition(".")[0] for key, _ in told(document)] == ["joint[1]"]


def test_an_unread_joint_hides_only_the_ends_it_would_settle() -> None:
    """A tenon settles none of the timber it enters."""
    sill = PLACED["sill"].replace('reference_end_at = "0"\n', "")
    text = HEAD + sill + PLACED["post"] + PLACED["joint"].replace('"4"', '"four"')
    assert [key for key, _ in told(checked(text))] == [
        "joint[1].length",
        "timber[1].reference_end_at",
    ]


def test_the_coordinate_of_a_joint_says_where_along_its_line() -> None:
    """A level says nothing of where on the plan; it is told once for both sticks."""
    names = '[lines]\n"line 2" = "14\'"\n[levels]\n"tie top" = "9\'"\n'
    plan = HEAD + names + PLATES + SCARF
    assert not told(checked(plan.replace('at = "14\'"', 'at = "line 2"')))
    assert told(checked(plan.replace('at = "14\'"', 'at = "tie top"'))) == [
        ("joint[1].at", '"tie top" is a level, which says nothing of where on the plan')
    ]
