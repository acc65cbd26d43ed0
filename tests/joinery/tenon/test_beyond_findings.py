"""What can be wrong with a tenon that goes on into a third timber."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.beyond_findings import (
    BEYOND_CHECKS,
    does_not_reach,
    ends_elsewhere,
    nothing_past,
)
from benchmate.joinery.tenon.findings import bearing_face_off, end_past_the_side
from benchmate.layout.walk import features_on
from benchmate.measure.printing import Tape
from benchmate.model.findings import Severity
from tests.builders import codes, real
from tests.joinery.tenon.head_ties import MORTISE, Lie, Words, head_tie, made

TAPE = Tape()


def told(frame: Frame, timber: str) -> tuple[str, ...]:
    """The codes told on one side of the joint."""
    ids = ("head-tenon", MORTISE)
    found = (each for each in features_on(frame, timber) if each.id in ids)
    return codes(tuple(finding for each in found for finding in each.findings))


@pytest.mark.parametrize(("length", "nothing"), [("7", True), ("7-1/64", False), ("6-1/2", True)])
def test_nothing_of_it_may_be_left_for_the_tie(length: str, nothing: bool) -> None:
    """The plate is 7" deep, so a tenon no longer than that ends inside it."""
    frame = head_tie(joint={"past": "0", "length": length})
    found = nothing_past(made(frame), TAPE)
    assert (found is not None) is nothing
    if found is not None:
        assert (found.code, found.severity) == ("tenon-nothing-past", Severity.STOP)
        assert f'The tenon is {length}" long' in found.message
        assert "to Plate's top face is 7\": nothing is left for Tie" in found.message


def test_a_tenon_cut_short_has_nothing_left_either() -> None:
    """As cut counts: sawn off at the plate, it is told on all three timbers."""
    frame = head_tie(real={"post": real(as_cut={"head-tenon": {"length": "7"}})})
    for timber in ("post", "plate", "tie"):
        assert told(frame, timber) == ("tenon-nothing-past",)


@pytest.mark.parametrize(("down", "reaches"), [("-2-63/64", True), ("-3", False), ("-4", False)])
def test_it_may_not_reach_the_tie(down: str, reaches: bool) -> None:
    """It stands 3" past the plate, and the tie lies that far above it or further."""
    frame = head_tie(lie=Lie(down=down))
    found = does_not_reach(made(frame), TAPE)
    assert (found is None) is reaches
    if found is not None:
        assert (found.code, found.severity) == ("tenon-does-not-reach", Severity.STOP)
        assert (found.timber, found.feature) == ("post", "head-tenon")
        assert "short of Tie's underside" in found.message


@pytest.mark.parametrize(
    ("words", "elsewhere"),
    [
        ({"past": "8"}, None),
        ({"past": "9"}, None),
        ({"past": "7-1/2", "held_short": "1/2"}, None),
        ({"past": "7-1/2"}, "The tenon ends 1/2\" short of Tie's top face"),
        ({"past": "9", "held_short": "1/2"}, "The tenon ends 1\" proud of Tie's top face"),
    ],
)
def test_it_ends_where_it_is_said_to(words: Words, elsewhere: str | None) -> None:
    """The tie's top is 8" above the plate's: flush, proud, or as much short as is said."""
    frame = head_tie(joint={"beyond_through": True, **words})
    found = ends_elsewhere(made(frame), TAPE)
    assert (found is not None) is (elsewhere is not None)
    if found is not None and elsewhere is not None:
        assert (found.code, found.severity) == ("tenon-not-held-short", Severity.LOOK)
        assert found.message.startswith(elsewhere)
    assert ends_elsewhere(made(head_tie()), TAPE) is None


def test_of_the_plate_it_is_not_asked() -> None:
    """There it is meant to stand out, whatever it is held short of the tie."""
    words = {"beyond_through": True, "past": "7-1/2", "held_short": "1/2"}
    assert told(head_tie(joint=words), "post") == ()


@pytest.mark.parametrize(
    ("joint", "lie", "code"),
    [
        ({"past": "7-7/8"}, Lie(), "mortise-through"),
        ({"past": "7-55/64"}, Lie(), None),
        ({"all_round": "0"}, Lie(), "mortise-open-at-side"),
    ],
)
def test_the_mortise_has_to_lie_in_the_tie(joint: Words, lie: Lie, code: str | None) -> None:
    """Not out of its top, unless that is said; and with wood on either side of it."""
    frame = head_tie(lie=lie, joint=joint)
    assert told(frame, "tie") == ((code,) if code else ())


def test_through_the_tie_is_said_by_its_own_key() -> None:
    """The remedy names the key that is meant."""
    frame = head_tie(joint={"past": "8"})
    (found,) = (
        finding
        for feature in features_on(frame, "tie")
        for finding in feature.findings
        if finding.code == "mortise-through"
    )
    assert found.remedy.endswith("or write beyond_through = true")


def test_a_tie_beside_the_post_is_stopped() -> None:
    """Its places say that it lies elsewhere: the mortise would be in the air."""
    aside = {"tie": {"at": {"east": "7", "up": "8' 8"}}}
    assert "mortise-outside" in told(head_tie(own=aside), "tie")
    short = {"tie": {"reference_end_at": "3"}}
    assert "mortise-off-the-end" in told(head_tie(own=short), "tie")


def test_no_shoulder_bears_on_the_tie() -> None:
    """So nothing is asked of it that is asked for a shoulder's sake."""
    assert not {bearing_face_off, end_past_the_side} & set(BEYOND_CHECKS)
    over = {"tie": real({MORTISE: {"first": "9-1/2"}})}
    assert told(head_tie(real=over), "tie") == ()
