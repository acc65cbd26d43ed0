"""Driving dimensions that cannot be."""

import pytest

from tests.outset.frames import JOISTED, LAPPED, SQUARE, told

RIDGED = {"roof": "on a ridge"}


@pytest.mark.parametrize(
    ("question", "typed", "words"),
    [
        ("name", {"name": "x" * 61}, "the name has 61 characters"),
        ("species", {"species": "x" * 61}, "the species has 61 characters"),
        ("width", {"width": "100-1/64"}, "half of this width is no length of a tape"),
        ("bays", {"bays": "13"}, "write 1 to 12"),
        ("post height", {"post height": "6"}, "under 2' high"),
        ("longest", {"longest": "10'"}, "longer than your longest stick"),
        ("post", {"post": "2 x 8"}, "a side under 3"),
        ("post", {"bays": "12"}, "12 bays in 20' leave posts 11-5/16 apart"),
        ("post", {"width": "24"}, "walls would be under 1' apart"),
        ("sill", {"sill": "8 x 6"}, "the post is 8 across, the sill only 6"),
        ("plate", {"plate": "8 x 6"}, "the post is 8 across, the plate only 6"),
        ("tie", {"tie": "8 x 10"}, "the tie is 10 across, the post only 8"),
        ("brace", {"brace": "6 x 9"}, "the brace is 9 across"),
        ("brace", {"brace": "6 x 1"}, "a side under 2"),
        ("joist", JOISTED | {"joist": "6 x 1"}, "a side under 2"),
        ("rafter", {"rafter": "3 x 3"}, "has not 2 of wood over its seat"),
        ("inner", SQUARE | {"inner": "6"}, "nothing to frame with in a sill of 8 x 8"),
        ("tie drop", {"tie drop": "7'"}, "lie 4 above the sills"),
        ("tie drop", {"tie drop": "8'"}, "lie 8 below the sills"),
        ("let in", LAPPED | {"let in": "4"}, "no more than 2-5/8"),
        ("leg", {"leg": "9'"}, "longer than half of the clear bay"),
        ("leg", {"leg": "8"}, "too short for a brace 6 deep"),
        ("leg", {"leg": "7'", "length": "60'", "width": "40'"}, "longer than the post lets it be"),
        ("leg", LAPPED | {"leg": "13"}, "runs into the plate"),
        ("joist spacing", JOISTED | {"joist spacing": "6"}, "leaves no room between"),
        ("joist let-in", JOISTED | {"joist let-in": "8"}, "do not lie in sills"),
        ("bearing", JOISTED | {"bearing": "8"}, "write no more than 7"),
        ("pitch", {"pitch": "1/2"}, "a rise from 1 to 36"),
        ("eaves", {"eaves": "1"}, "at least 2"),
        ("rafter spacing", {"rafter spacing": "6"}, "leaves no room between"),
        ("rafter height", {"rafter height": "9"}, "has no seat at that height"),
        ("ridge", RIDGED | {"ridge": "8 x 4"}, "come 10-1/4 down it"),
        ("ridge", RIDGED | {"longest": "20'"}, "the ridge is 22' long"),
        ("ridge", RIDGED | {"ridge": "11 x 1"}, "a side under 2"),
    ],
)
def test_each_is_told_at_its_question(question: str, typed: dict[str, str], words: str) -> None:
    """What is wrong there, and what to do about it."""
    found = told(question, typed)
    assert words in found
    assert "; " in found


def test_nothing_is_told_of_what_just_fits() -> None:
    """A leg an inch shorter, a rafter a hair lower, bays a foot wide."""
    assert told("leg", leg="4'", braces="post to plate") == ""
    assert told("rafter height", {"rafter height": "8-1/2"}) == ""
    assert told("post", bays="10", braces="none", roof="none") == ""
