"""What the record of a tenon accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension
from tests.builders import length, pocket, sill, tenon, timber
from tests.joinery.tenon.girts import PEGS


def test_a_post_alone_needs_only_the_tenon() -> None:
    """Reliefs, inset and allowance start at nothing, and the shop gives the clearance."""
    joint = tenon()
    assert (joint.into, joint.at, joint.bottom_clearance) == (None, None, None)
    assert {joint.relief_reference, joint.relief_far, joint.all_round} == {ZERO}


THROUGH: dict[str, object] = {"into": "sill", "at": "4'", "through": True, "length": None}

BEYOND: dict[str, object] = {
    "into": "sill",
    "through": True,
    "length": None,
    "past": "3",
    "beyond": "tie",
}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"at": "4'"}, 'has "at" but no "into"'),
        ({"inset": "1"}, 'has "inset", "housing" or "bottom_clearance" but no "into"'),
        ({"housing": "1/2"}, 'but no "into"'),
        ({"bottom_clearance": "0"}, 'but no "into"'),
        ({"into": "sill", "housing": "-1/2"}, "not below zero"),
        ({"into": "sill", "scribed": "yes"}, "boolean"),
        ({"into": "sill", "at": "4'", "cheeks_from": "first"}, "cheeks_from"),
        ({"into": "post", "at": "4'"}, "its own timber"),
        ({"length": "0"}, "more than nothing"),
        ({"thickness": "0"}, "more than nothing"),
        ({"set_back": "-1"}, "not below zero"),
        ({"relief_far": "5'"}, "more than 4' 0\""),
        ({"end": "up"}, "end of a timber"),
        ({"end": 1}, "end of a timber"),
        ({"cheeks_from": "far"}, "first"),
        ({"family": "brace tenon"}, "tenon"),
        ({"haunch": "1"}, "Extra inputs"),
        ({"length": 5}, "not text"),
        ({"length": None}, "is missing; write length = ... here, or through = true"),
        ({"into": "sill", "at": "4'", "through": True, "length": "0"}, "more than nothing"),
        ({"through": True}, 'has "through" but no "into"'),
        (THROUGH | {"bottom_clearance": "1/8"}, 'has no bottom; remove "bottom_clearance"'),
        (THROUGH | {"bottom_clearance": "0"}, "has no bottom"),
        ({"held_short": "1/4"}, 'has "held_short" but does not go through'),
        (THROUGH | {"held_short": "-1/4"}, "not below zero"),
        (THROUGH | {"through": "yes"}, "boolean"),
        ({"past": "3"}, 'has "past" but does not go through'),
        (THROUGH | {"past": "3", "length": "8"}, 'has "past" and "length"'),
        (THROUGH | {"past": "3", "held_short": "1/4"}, "is held short and stands past"),
        (THROUGH | {"beyond_through": True}, 'has "beyond_through" but no "beyond"'),
        ({"into": "sill", "beyond": "tie"}, 'has "beyond" but does not go through'),
        (BEYOND | {"beyond": "post"}, "into a timber it has already"),
        (BEYOND | {"beyond": "sill"}, "into a timber it has already"),
        (BEYOND | {"past": "0"}, "nothing of it stands past the timber it goes through"),
        (BEYOND | {"past": "0", "length": "9", "held_short": "1/4"}, "held short of none"),
        (
            BEYOND | {"beyond_through": True, "bottom_clearance": "0"},
            "has no bottom",
        ),
        (BEYOND | {"beyond": "Tie"}, "not a usable id"),
        ({"pegs": {**PEGS, "blind_depth": "5"}}, 'pegs with "blind_depth" but no "into"'),
        ({"pegs": {**PEGS, "count": 9}}, "no number of pegs"),
        ({"pegs": "2"}, "dictionary"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        tenon(**words)


def test_the_timbers_it_joins_are_told_by_key() -> None:
    """A dangling name can be reported at the key that holds it."""
    assert tenon().timbers() == {"timber": "post"}
    assert tenon(into="sill", at="4'").timbers() == {"timber": "post", "into": "sill"}


def test_the_sums_it_holds_are_told_by_key() -> None:
    """Names of levels in `at` and `inset` can be looked up."""
    assert tuple(tenon().sums()) == ("inset",)
    sums = tenon(into="sill", at="line 1 + 6", inset="reveal").sums()
    assert {key: total.names() for key, total in sums.items()} == {
        "inset": ("reveal",),
        "at": ("line 1",),
    }


def test_the_tenon_and_its_allowance_lengthen_the_post() -> None:
    """The stick is longer by what lies beyond the shoulder."""
    joint = tenon(end="head", length="4", end_allowance="1/2")
    assert joint.extensions() == (Extension("post", Direction.UP, length("4-1/2")),)


def test_a_tenon_that_goes_through_is_as_long_as_what_it_passes() -> None:
    """The frame measures that; the record knows what is left on it and what it is held short."""
    joint = tenon(**THROUGH, end_allowance="1/2", held_short="3/4", housing="1/2")
    (bearing,) = joint.bearings()
    assert joint.extensions() == (
        Extension("post", Direction.DOWN, length("-1/4"), through=bearing),
    )
    assert joint.passes() == bearing
    typed = tenon(**(THROUGH | {"length": "9"}))
    assert typed.extensions() == (Extension("post", Direction.DOWN, length("9")),)
    assert typed.passes() is None
    assert tenon().passes() is None


@pytest.mark.parametrize(
    ("words", "reference", "far"),
    [
        ({}, "0", "0"),
        ({"all_round": "1/2"}, "1/2", "1/2"),
        ({"all_round": "1/2", "relief_reference": "1"}, "1", "1/2"),
        ({"all_round": "1/2", "relief_far": "1/4"}, "1/2", "1/4"),
    ],
)
def test_what_comes_off_each_narrow_edge(words: dict[str, str], reference: str, far: str) -> None:
    """A relief counts on its own edge, all round on the others."""
    joint = tenon(**words)
    assert joint.reference_cut_back() == length(reference)
    assert joint.far_cut_back() == length(far)


def test_its_faults_beside_the_timbers_it_names() -> None:
    """An end the post lacks, or a receiver that runs the post's way, is a fault with its key."""
    post, level, other = timber("post"), sill(), timber("other")
    assert tenon().faults({"post": post}) == ()
    assert tenon(into="sill", at="4'").faults({"post": post, "sill": level}) == ()
    (fault,) = tenon(end="west").faults({"post": post})
    assert fault.key == "end"
    (fault,) = tenon(into="other", at="4'").faults({"post": post, "other": other})
    assert fault.key == "into"


AT = {"east": "4'", "north": "0"}


def test_where_it_crosses_is_typed_or_settled_by_places() -> None:
    """`at` is missed where nothing else says it, and `inset` goes with it; places say both."""
    typed = {"post": timber("post"), "sill": sill()}
    placed = {"post": timber("post", at=AT), "sill": sill(at={"north": "0", "up": "0"})}
    (fault,) = tenon(into="sill").faults(typed)
    assert fault.key == "at"
    assert "Post crosses Sill" in fault.problem
    assert tenon(into="sill", at="4'", inset="1").faults(typed) == ()
    assert tenon(into="sill", housing="1/2").faults(placed) == ()
    said_twice = tenon(into="sill", at="4'", inset="1").faults(placed)
    assert [fault.key for fault in said_twice] == ["at", "inset"]


def test_a_raking_timber_has_no_square_joint() -> None:
    """Neither into it nor from it."""
    level = {"corner": AT | {"up": "7'"}, "legs": {"down": "3'", "east": "3'"}}
    words = {"first_face": "up", "second_face": "south", "length": None, "incline": level}
    timbers = {"brace": timber("brace", **words), "sill": sill(at={"north": "0", "up": "0"})}
    (fault,) = tenon(timber="brace", into="sill").faults(timbers)
    assert fault.key == "into"
    assert "Brace, which rakes" in fault.problem
    (fault,) = tenon(timber="sill", end="west", into="brace").faults(timbers)
    assert (fault.key, "Brace, which rakes" in fault.problem) == ("into", True)


def test_where_its_end_bears() -> None:
    """In the housing of the receiving timber, measured at the mortise; alone it bears nowhere."""
    found = tenon(into="sill", housing="1/2", scribed=True).bearings()
    assert found == (
        Bearing("post", Direction.DOWN, "sill", length("1/2"), "post-foot-mortise", scribed=True),
    )
    assert not tenon(into="sill").bearings()[0].scribed
    assert tenon(into="sill").bearings()[0].depth == ZERO
    assert tenon().bearings() == ()


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    words = {"into": "sill", "at": "line 1 - 1/2"}
    for joint in (
        tenon(**words, relief_reference="1-1/4", bottom_clearance="0"),
        tenon(**THROUGH, held_short="1/4", pegs={**PEGS, "blind_depth": "5"}),
        tenon(**(THROUGH | {"length": "9"})),
    ):
        assert TenonJoint.model_validate(joint.model_dump(exclude_defaults=True)) == joint


def test_a_tenon_may_stand_past_what_it_goes_through() -> None:
    """By as much more than the wood it passes; held short it is that much less."""
    (proud,) = tenon(**THROUGH | {"past": "3"}).extensions()
    (short,) = tenon(**THROUGH | {"held_short": "1/4"}).extensions()
    assert (proud.length, short.length) == (length("3"), length("-1/4"))


def test_one_that_goes_on_has_a_clearance_or_is_held_short_beyond() -> None:
    """Blind in the third timber it has a bottom; through that it may be held short there."""
    assert tenon(**BEYOND | {"bottom_clearance": "1/4"}).bottom_clearance == length("1/4")
    through = tenon(**BEYOND | {"beyond_through": True, "held_short": "1/4"})
    assert through.past_the_wood == length("3")
    (extension,) = through.extensions()
    assert extension.length == length("3")
    given = tenon(**BEYOND | {"past": "0", "length": "9"})
    assert given.extensions()[0].length == length("9")


def test_the_third_timber_is_one_of_its_timbers() -> None:
    """It is told by its key, and where its end goes on to; no shoulder bears there."""
    joint = tenon(**BEYOND)
    assert joint.timbers() == {"timber": "post", "into": "sill", "beyond": "tie"}
    assert [each.into for each in joint.bearings()] == ["sill"]
    (on,) = joint.goes_on()
    assert on == Bearing("post", Direction.DOWN, "tie", ZERO, "post-foot-mortise")
    assert tenon().goes_on() == ()


def _third(**words: object) -> dict[str, Timber]:
    own: dict[str, object] = {"length": None, "at": {"north": "0", "up": "0"}}
    lies = sill(**own, reference_end_at="0", far_end_at="9'")
    post = timber("post", length=None, at={"east": "1'", "north": "0"}, far_end_at="8'")
    tie = {"reference_end": "south", "second_face": "west", "at": {"east": "1'", "up": "-8"}}
    ends = {"length": None, "reference_end_at": "0", "far_end_at": "9'"}
    third = sill(id="tie", name="Tie", **(ends | tie | words))
    return {"post": post, "sill": lies, "tie": third}


@pytest.mark.parametrize(
    ("words", "problem"),
    [
        ({}, None),
        ({"at": None, "length": "9'", "reference_end_at": None, "far_end_at": None}, "has none"),
        ({"reference_end": "foot", "first_face": "south"}, "run the same way"),
        ({"roll": {"towards": "west", "run": "12", "rise": "8"}}, "lies in another slope"),
    ],
)
def test_what_it_cannot_go_on_into(words: dict[str, object], problem: str | None) -> None:
    """A timber without a place, one that runs its own way, one that lies in a slope."""
    found = tenon(**BEYOND).faults(_third(**words))
    assert [fault.key for fault in found] == (["beyond"] if problem else [])
    assert all(problem in fault.problem for fault in found if problem)


def test_what_cannot_be_of_the_first_comes_first() -> None:
    """An end that the timber has not is told, and nothing more."""
    (fault,) = tenon(**BEYOND | {"end": "west"}).faults(_third())
    assert fault.key == "end"


@pytest.mark.parametrize(
    ("words", "other", "timber_id"),
    [
        ({}, {}, "end"),
        ({"meets": ()}, {}, None),
        ({"meets": ("another",)}, {}, None),
        ({}, {"into": "plate"}, None),
        ({}, {"end": "head"}, None),
        ({}, {"timber": "post"}, None),
        ({"into": None, "at": None}, {"into": None, "at": None}, None),
    ],
)
def test_whose_tenon_it_goes_through(
    words: dict[str, object], other: dict[str, object], timber_id: str | None
) -> None:
    """That of a joint it meets, on another timber, whose end enters the same one square to it."""
    own = tenon(**{"into": "sill", "at": "1'", "meets": ("end-sill",)} | words)
    drawn = {"id": "end-sill", "timber": "end", "end": "south", "into": "sill", "at": "0"}
    assert own.cuts_through(tenon(**drawn | other)) == timber_id


def test_no_other_family_is_gone_through() -> None:
    """A pocket that is met is only met."""
    joist = pocket(id="end-sill")
    assert tenon(into="sill", at="1'", meets=("end-sill",)).cuts_through(joist) is None
