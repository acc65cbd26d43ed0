"""What cannot be of a tenon's pegs: each check fires, and just does not."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.layout.walk import features_on
from benchmate.model.findings import Finding, Severity
from tests.builders import codes, real
from tests.joinery.tenon.girts import BLIND, MORTISE, PEGS, girt_through


def _found(built: Frame) -> tuple[Finding, ...]:
    """What is told of the pegs on either timber: what stops them is told on both."""
    own, others = (_told(built, *each) for each in (("girt", "west-end-tenon"), ("post", MORTISE)))
    assert codes(_stops(own)) == codes(_stops(others))
    return others


def _stops(found: tuple[Finding, ...]) -> tuple[Finding, ...]:
    return tuple(each for each in found if each.severity is Severity.STOP)


def _told(built: Frame, timber: str, feature: str) -> tuple[Finding, ...]:
    (pegs,) = (each for each in features_on(built, timber) if each.id == f"{feature}-pegs")
    for each in pegs.findings:
        assert (each.timber, each.feature) == (timber, pegs.id)
        assert each.message
        assert each.remedy
    return pegs.findings


def _pegs(**words: object) -> dict[str, object]:
    """One peg, undrawn, with other words where they are given."""
    one = {"count": 1, "size": "1", "from_shoulder": "2", "from_edge": "2"}
    return {**one, **words}


def test_pegs_that_can_be_have_nothing_told() -> None:
    """Two through pegs of a girt through a post, and one in a blind tenon."""
    assert _found(girt_through()) == ()
    assert _found(girt_through(BLIND, pegs=_pegs())) == ()


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ({"from_shoulder": "3-1/2"}, "peg-past-end"),
        ({"from_shoulder": "5"}, "peg-past-end"),
        ({"from_shoulder": "3-31/64"}, None),
        ({"from_shoulder": "3-39/64", "draw": "1/8"}, None),
        ({"from_edge": "1/2"}, "peg-outside-tenon"),
        ({"from_edge": "33/64"}, None),
        ({"from_edge": "6-1/2"}, "peg-outside-tenon"),
        ({"from_edge": "6-31/64"}, None),
        ({"count": 2, "spacing": "4-1/2"}, "peg-outside-tenon"),
        ({"count": 2, "spacing": "4-31/64"}, None),
        ({"from_shoulder": "31/64"}, "peg-past-shoulder"),
        ({"from_shoulder": "1/2"}, None),
        ({"from_shoulder": "5/8", "draw": "9/64"}, "peg-past-shoulder"),
        ({"from_shoulder": "5/8", "draw": "1/8"}, None),
        ({"draw": "1"}, "peg-draw-too-large"),
        ({"count": 2, "spacing": "1"}, "peg-holes-meet"),
        ({"blind_depth": "4-63/64"}, "peg-blind-short"),
        ({"blind_depth": "5"}, None),
        ({"blind_depth": "4-63/64", "bored_from": "far"}, "peg-blind-short"),
        ({"blind_depth": "5", "bored_from": "far"}, None),
        ({"blind_depth": "8"}, "peg-blind-through"),
        ({"blind_depth": "7-63/64"}, None),
    ],
)
def test_only_what_is_impossible_stops(words: dict[str, object], code: str | None) -> None:
    """Holes outside the tenon, across its shoulder, into one another, or short of its far cheek.

    A 4" tenon, 7" wide, in a mortise from 3" to 5" of an 8" post. What is merely little wood stops
    nothing: no published end distance is a law (trade.md 3). Blind holes that come out are only to
    be looked at.
    """
    found = codes(_found(girt_through(BLIND, pegs=_pegs(**words))))
    assert found == (() if code is None else (code,))


def test_a_hole_in_the_air_beyond_a_through_tenon_s_post() -> None:
    """A tenon that stands proud may be pegged past the post: there is nothing to bore there."""
    words = {"length": "12", "held_short": "0"}
    stays = girt_through(words, pegs=_pegs(from_shoulder="6-63/64"))
    leaves = girt_through(words, pegs=_pegs(from_shoulder="7"))
    assert _found(stays) == ()
    assert codes(_found(leaves)) == ("peg-off-timber",)
    assert "West face of Post" in _found(leaves)[0].message


def test_the_tenon_as_cut_counts() -> None:
    """One that came out short or narrow may have no wood round the holes any more."""
    for size, code in (("length", "peg-past-end"), ("width", "peg-outside-tenon")):
        made = {"girt": real(as_cut={"west-end-tenon": {size: "2"}})}
        assert codes(_found(girt_through(real=made))) == (code,)


def test_the_post_as_measured_counts() -> None:
    """The far cheek of the mortise lies deeper from behind in a thick post."""
    pegs = _pegs(blind_depth="5", bored_from="far")
    thick = {"post": real({MORTISE: {"first": "8-1/4"}})}
    assert _found(girt_through(pegs=pegs)) == ()
    assert codes(_found(girt_through(pegs=pegs, real=thick))) == ("peg-blind-short",)


def test_what_stops_the_joint_stops_its_pegs() -> None:
    """No hole is bored to figures of a joint that cannot be; what is only to be looked at stays."""
    stopped = girt_through({"set_back": "5"})
    assert codes(_told(stopped, "girt", "west-end-tenon")) == ("tenon-cheek-outside",)
    assert codes(_told(stopped, "post", MORTISE)) == ("tenon-cheek-outside",)
    looked_at = girt_through({"length": "7", "held_short": "0"})
    assert _found(looked_at) == ()


def test_pegs_that_cannot_be_stop_only_themselves() -> None:
    """The tenon and its mortise can be cut all the same, and pegged otherwise later."""
    built = girt_through(pegs={**PEGS, "draw": "1"})
    for timber, feature in (("girt", "west-end-tenon"), ("post", MORTISE)):
        (joint,) = (each for each in features_on(built, timber) if each.id == feature)
        assert joint.findings == ()
        assert codes(_told(built, timber, feature)) == ("peg-draw-too-large",)
