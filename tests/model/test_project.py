"""The stored project and its timbers."""

import pytest
from pydantic import ValidationError

from benchmate.measure.printing import Graduation, Style
from benchmate.measure.reading import Unit
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction, Pose
from benchmate.model.project import (
    FORMAT,
    GRADUATIONS,
    STYLES,
    Project,
    Shop,
    Timber,
    bare_unit,
    fitting_marks,
    tape_of,
)
from tests.builders import corners, length, lengths, sill, tenon, timber


def test_the_shop_s_practice_unless_it_says_otherwise() -> None:
    """1/8" clear (TFHQ-stub); 1" of trim, a 2" guide block and 1/2" between joints by practice.

    The latter three are common practice, no source.
    """
    usual = Project(name="Shed").practice
    assert usual == lengths("1", "2", "1/8", "1/2")
    own = Project(name="Shed", shop=Shop(guide_block=length("1-3/4"))).practice
    assert own == lengths("1", "1-3/4", "1/8", "1/2")
    sparing = Project(name="Shed", shop=Shop(least_wood=length("1-1/2"))).practice
    assert sparing == lengths("1", "2", "1/8", "1-1/2")
    none = Project(name="Shed", shop=Shop(trim=length("0"))).practice
    assert none.trim == length("0")


def test_a_metric_shop_s_practice_is_round_on_a_metric_tape() -> None:
    """The same house rules, rounded: no figure with a + or - behind it from the start."""
    usual = Project(name="Shed", units="mm").practice
    assert usual == lengths("25 mm", "50 mm", "3 mm", "12 mm")


def test_a_timber_stands_by_its_three_directions() -> None:
    """Its hand follows from them: nothing else is typed."""
    assert timber("post").pose == Pose(Direction.SOUTH, Direction.WEST, Direction.DOWN)
    assert [one.upright for one in (timber("post"), sill())] == [True, False]
    assert timber("post", reference_end="head").upright


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"second_face": "north"}, "square to one another"),
        ({"reference_end": "south"}, "square to one another"),
        ({"first_face": "outside"}, "where a face looks"),
        ({"reference_end": "down"}, "end of a timber"),
        ({"section": "6"}, "two sides"),
        ({"section": "6 x 50"}, "more than 4' 0\""),
        ({"length": "1/3"}, "tape fraction"),
        ({"length": 95}, "not text"),
        ({"length_is": "between shoulders"}, "shoulder to shoulder"),
        ({"name": ""}, "empty"),
        ({"kind": "po\x1bst"}, "U\\+001B"),
        ({"id": "../post"}, "usable id"),
        ({"hand": "left"}, "Extra inputs"),
    ],
)
def test_timbers_that_are_refused(words: dict[str, str], says: str) -> None:
    """A timber that could not stand, or a word nobody knows."""
    with pytest.raises(ValidationError, match=says):
        timber("post", **words)


def test_all_that_is_wrong_with_a_timber_is_said_at_once() -> None:
    """The framer mends the file in one go."""
    with pytest.raises(ValidationError) as caught:
        timber("Post", section="6", first_face="outside", length="1/3", hand="left")
    places = {error["loc"][0] for error in caught.value.errors()}
    assert places == {"id", "section", "first_face", "length", "hand"}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"format": 2}, "Input should be 1"),
        ({"name": "x" * 61}, "at most 60"),
        ({"units": "feet"}, "feet and inches"),
        ({"graduation": "1/10"}, "1/8"),
        ({"demo": "yes"}, "boolean"),
        ({"shop": {"trim": "-1"}}, "not below zero"),
        ({"shop": {"glue": "1"}}, "Extra inputs"),
        ({"levels": {"floor top": 8}}, "not text"),
        ({"sections": {"joist": "6"}}, "two sides"),
        ({"roof": "12/12"}, "Extra inputs"),
    ],
)
def test_projects_that_are_refused(words: dict[str, object], says: str) -> None:
    """Bad values and unknown keys, each with what was expected."""
    with pytest.raises(ValidationError, match=says):
        Project.model_validate({"name": "Shed"} | words)


@pytest.mark.parametrize("units", STYLES)
def test_every_style_has_a_tape_and_a_unit(units: str) -> None:
    """A bare number is read in what the project is shown in."""
    metric = units == "mm"
    graduation = "1 mm" if metric else "1/16"
    project = Project.model_validate({"name": "Shed", "units": units, "graduation": graduation})
    assert project.tape.style is STYLES[units]
    assert project.tape.graduation is GRADUATIONS[graduation]
    assert project.bare is bare_unit(units) is (Unit.MM if metric else Unit.INCH)


@pytest.mark.parametrize("units", STYLES)
@pytest.mark.parametrize("graduation", GRADUATIONS)
def test_a_tape_carries_marks_of_its_own_system_only(units: str, graduation: str) -> None:
    """A sixteenth is no mark on a millimetre tape; the message names those that are."""
    words = {"name": "Shed", "units": units, "graduation": graduation}
    if GRADUATIONS[graduation].metric is (units == "mm"):
        assert Project.model_validate(words).tape.graduation is GRADUATIONS[graduation]
        return
    with pytest.raises(ValidationError, match="1 mm, 0.5 mm" if units == "mm" else "1/8, 1/16"):
        Project.model_validate(words)


@pytest.mark.parametrize(("units", "usual"), [("feet and inches", "1/16"), ("mm", "1 mm")])
def test_a_tape_without_a_graduation_has_the_usual_one(units: str, usual: str) -> None:
    """Sixteenths of an inch, or millimetres."""
    project = Project.model_validate({"name": "Shed", "units": units})
    assert project.tape.graduation is GRADUATIONS[usual]


def test_every_graduation_has_a_word() -> None:
    """The file can name each division a tape may have, and each style."""
    assert set(GRADUATIONS.values()) == set(Graduation)
    assert set(STYLES) == {"feet and inches", "inches", "mm"}
    assert set(STYLES.values()) == set(Style)


AT = {"east": "line 1 + 6", "north": "0"}
RAKE = {
    "foot": {"east": "0", "north": "line a", "up": "0"},
    "towards": "east",
    "run": "leg",
    "rise": "leg",
}


@pytest.mark.parametrize(
    ("words", "keys"),
    [
        ({}, ("length",)),
        ({"shoulder_level": "0"}, ("length", "shoulder_level")),
        ({"length": None, "at": AT}, ("at.east", "at.north")),
        (
            {"at": AT, "reference_end_at": "0", "far_end_at": "8'"},
            ("reference_end_at", "far_end_at", "length", "at.east", "at.north"),
        ),
    ],
)
def test_the_figures_of_a_timber_are_told_by_key(
    words: dict[str, object], keys: tuple[str, ...]
) -> None:
    """A dangling name can be reported at the key that holds it."""
    assert tuple(timber("post", **words).sums()) == keys


def raking(**words: object) -> Timber:
    """A brace that rises to the east, described as if it lay level."""
    faces = {"first_face": "up", "second_face": "south"}
    return timber("brace", **({"length": None, "incline": RAKE} | faces | words))


def test_the_figures_of_a_raking_timber_are_told_by_key() -> None:
    """Those of its points as well."""
    sums = raking().sums()
    assert tuple(sums) == (
        *(f"incline.foot.{key}" for key in ("east", "north", "up")),
        "incline.run",
        "incline.rise",
    )
    assert sums["incline.foot.north"].names() == ("line a",)


@pytest.mark.parametrize(("end", "low"), [("foot", Direction.WEST), ("head", Direction.EAST)])
def test_a_raking_timber_stands_as_if_its_head_were_raised(end: str, low: Direction) -> None:
    """It is upright for no end of its own, and its head is the end that rises."""
    brace = raking(reference_end=end)
    assert brace.pose == Pose(Direction.UP, Direction.SOUTH, low, head=Direction.EAST)
    assert not brace.upright
    assert brace.placed


@pytest.mark.parametrize("end", ["north", "east", "south", "west"])
def test_a_raking_timber_has_no_compass_ends(end: str) -> None:
    """Its ends are its foot and its head, and the message says so."""
    with pytest.raises(ValidationError, match='; write "foot" or "head"'):
        raking(reference_end=end)


@pytest.mark.parametrize("word", ["east", "west"])
@pytest.mark.parametrize("key", ["first_face", "second_face"])
def test_a_raking_timber_has_no_face_along_it(key: str, word: str) -> None:
    """Its faces are told as if it lay level, and the message says so."""
    with pytest.raises(ValidationError, match="if the timber lay level"):
        raking(**{key: word})


def test_a_timber_is_placed_by_its_arris() -> None:
    """Whichever way that is said."""
    told = (timber("post"), timber("post", at=AT), raking())
    assert [each.placed for each in told] == [False, True, True]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"at": "4'"}, "write two coordinates"),
        ({"incline": "45"}, 'give "foot", "head" and "towards"'),
        ({"at": {"along": "0"}}, "Extra inputs"),
        ({"incline": {}}, "none of the three ways"),
        ({"rule": "scribe"}, "'mill' or 'square'"),
        ({"inner": "5-3/4"}, "two sides"),
        ({"reference_end_at": 0}, "not text"),
    ],
)
def test_places_and_rules_that_are_refused(words: dict[str, object], says: str) -> None:
    """Each with what was expected."""
    with pytest.raises(ValidationError, match=says):
        timber("post", **words)


def test_the_names_of_a_project_are_those_of_its_lines_lengths_and_levels() -> None:
    """Sections are none of them: they are two lengths each."""
    words = {
        "lines": {"line 1": "0"},
        "lengths": {"bay": "8'"},
        "levels": {"floor top": "1'"},
        "sections": {"post": "6 x 6"},
        "inner": {"post": "5-3/4 x 5-3/4"},
    }
    project = Project.model_validate({"name": "Shed"} | words)
    assert list(project.names) == ["line 1", "bay", "floor top"]
    assert project.names["bay"] == read_sum("8'")
    assert (project.rule, Project(name="Shed", rule="square").rule) == ("mill", "square")


def test_a_project_says_itself_again() -> None:
    """Every record in it, its families' own fields included."""
    project = corners().project
    dumped = project.model_dump(exclude_none=True)
    assert dumped["format"] == FORMAT
    assert dumped["works"][0] == project.works[0].model_dump(exclude_none=True)
    again = [Timber.model_validate(one) for one in dumped["timbers"]]
    assert tuple(again) == project.timbers
    assert type(project.works[0]).model_validate(dumped["works"][0]) == project.works[0]
    bare = Project.model_validate({"name": "Shed", "works": [tenon()]})
    assert bare.works == (tenon(),)


@pytest.mark.parametrize("units", STYLES)
def test_a_tape_may_be_said_in_words_alone(units: str) -> None:
    """Without a project: each units' own marks, the usual one where none is given."""
    for mark in fitting_marks(units):
        assert tape_of(units, mark) == Project(name="Shed", units=units, graduation=mark).tape  # type: ignore[arg-type]
    assert tape_of(units, None) == Project(name="Shed", units=units).tape  # type: ignore[arg-type]
    other = "1/16" if units == "mm" else "1 mm"
    assert other not in fitting_marks(units)
    with pytest.raises(ValueError, match="has no graduation"):
        tape_of(units, other)
