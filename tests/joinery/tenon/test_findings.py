"""Every finding of a tenon: just triggered, and just not (law 7: never clamp)."""

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.findings import MORTISE_CHECKS, TENON_CHECKS
from benchmate.measure.length import ZERO
from benchmate.model.feature import Feature
from benchmate.model.findings import Severity
from tests.builders import codes, frame, length, line, real, sill, tenon, timber


def _sides(
    *, post: Real | None = None, receiver: Real | None = None, **words: object
) -> tuple[Feature, Feature]:
    joint = tenon(**({"into": "sill", "at": "4'"} | words))
    sizes = {"post": post or real(), "sill": receiver or real()}
    tenoned, mortised = features(joint, frame(timber("post"), sill(), joint, real=sizes))
    return tenoned, mortised


def test_a_sound_joint_has_no_finding() -> None:
    """The check joint is fine on both its sides."""
    assert [side.findings for side in _sides()] == [(), ()]


@pytest.mark.parametrize(("stick", "found"), [("4", ()), ("3-63/64", ("tenon-cheek-outside",))])
def test_the_far_cheek_in_the_air(stick: str, found: tuple[str, ...]) -> None:
    """A far cheek at 4" needs a stick of 4" there; 1/64" less is a finding."""
    tenoned, _ = _sides(post=real({"foot-tenon": {"first": stick}}))
    assert codes(tenoned.findings) == found


@pytest.mark.parametrize(("far", "found"), [("2-63/64", ()), ("3", ("tenon-relief-too-wide",))])
def test_reliefs_that_take_the_whole_tenon(far: str, found: tuple[str, ...]) -> None:
    """3" off either edge of 6" leaves nothing; 1/64" left is still a tenon."""
    tenoned, _ = _sides(relief_reference="3", relief_far=far)
    assert codes(tenoned.findings) == found


@pytest.mark.parametrize(("stick", "found"), [("5", ()), ("4-63/64", ("tenon-edge-outside",))])
def test_the_far_relief_line_in_the_air(stick: str, found: tuple[str, ...]) -> None:
    """A far relief line at 5" needs a stick of 5" there."""
    tenoned, _ = _sides(post=real({"foot-tenon": {"second": stick}}), relief_far="1")
    assert codes(tenoned.findings) == found


@pytest.mark.parametrize(("long", "found"), [("7-55/64", ()), ("7-7/8", ("mortise-through",))])
def test_a_mortise_through_the_far_face(long: str, found: tuple[str, ...]) -> None:
    """With 1/8" of clearance in an 8" sill, a tenon of 7-7/8" comes out."""
    _, mortised = _sides(length=long)
    assert codes(mortised.findings) == found


def test_a_mortise_that_is_meant_to_go_through_is_not_one_too_many() -> None:
    """The same length said to go through stands proud by what the sill is short of it."""
    assert [side.findings for side in _sides(through=True, length="9")] == [(), ()]
    (found,) = _sides(length="9")[1].findings
    assert "through = true" in found.remedy


@pytest.mark.parametrize(
    ("words", "first", "code"),
    [
        ({}, "8", None),
        ({"held_short": "7-63/64"}, "8", None),
        ({"held_short": "8"}, "8", "tenon-no-length"),
        ({"held_short": "9"}, "8", "tenon-no-length"),
        ({"housing": "8"}, "8", "tenon-no-length"),
        ({"housing": "7-1/2"}, "7-1/2", "tenon-no-length"),
        ({"housing": "7-1/2"}, "7-33/64", None),
    ],
)
def test_a_tenon_that_would_have_no_length(
    words: dict[str, str], first: str, code: str | None
) -> None:
    """Law 7: what the sill, as it really is, leaves of it is shown, below nothing too."""
    receiver = real({"post-foot-mortise": {"first": first}})
    housing, held_short = words.get("housing", "0"), words.get("held_short", "0")
    sides = _sides(
        receiver=receiver, through=True, length=None, housing=housing, held_short=held_short
    )
    for side in sides:
        assert codes(side.findings) == (() if code is None else (code,))
        for finding in side.findings:
            assert finding.severity is Severity.STOP


@pytest.mark.parametrize(
    ("long", "held_short", "first", "said"),
    [
        ("8", "0", "8", None),
        ("9", "0", "8", None),
        ("7-3/4", "1/4", "8", None),
        ("7-3/4", "0", "8", '1/4" short of Sill\'s underside, but held_short says 0"'),
        ("7-3/4", "1/2", "8", '1/4" short of Sill\'s underside, but held_short says 1/2"'),
        ("7-3/4", "1/4", "8-1/8", '3/8" short of Sill\'s underside, but held_short says 1/4"'),
        ("9", "1/4", "8", '1" proud of Sill\'s underside, but held_short says 1/4"'),
        (None, "1/4", "8-1/8", None),
    ],
)
def test_a_length_that_does_not_end_where_it_is_said_to(
    long: str | None, held_short: str, first: str, said: str | None
) -> None:
    """Held short so that it fouls no siding (trade.md 2.1, Rogers-tenon): by as much as is said.

    A tenon may stand proud on purpose, but not where it is said to be held short.
    """
    tenoned, mortised = _sides(
        receiver=real({"post-foot-mortise": {"first": first}}),
        through=True,
        length=long,
        held_short=held_short,
    )
    assert mortised.findings == ()
    assert codes(tenoned.findings) == (() if said is None else ("tenon-not-held-short",))
    for finding in tenoned.findings:
        assert finding.severity is Severity.LOOK
        assert said is not None
        assert said in finding.message


def test_a_mortise_through_a_thin_stick_keeps_its_true_bottom() -> None:
    """The reading of the bottom is not held at the far face: it lies outside the stick."""
    _, mortised = _sides(receiver=real({"all": {"first": "5"}}))
    assert codes(mortised.findings) == ("mortise-through",)
    assert line(mortised.lines, "depth").at > line(mortised.lines, "far-side").at
    assert line(mortised.lines, "depth").beside[1].value < ZERO


@pytest.mark.parametrize(
    ("at", "found"),
    [
        ("1/64", ()),
        ("0", ("mortise-open-at-end",)),
        ("-1/64", ("mortise-off-the-end",)),
        ("15' 6 - 1/64", ()),
        ("15' 6", ("mortise-open-at-end",)),
        ("15' 6 + 1/64", ("mortise-off-the-end",)),
    ],
)
def test_a_mortise_off_either_end(at: str, found: tuple[str, ...]) -> None:
    """A 6" mortise fits from 0 to 15' 6" of a 16' sill, is open right at an end, and no further."""
    _, mortised = _sides(at=at)
    assert codes(mortised.findings) == found


@pytest.mark.parametrize(
    ("inset", "found"),
    [
        ("-1 - 63/64", ("end-past-side",)),
        ("-2", ("mortise-open-at-side", "end-past-side")),
        ("-2 - 1/64", ("mortise-outside", "end-past-side")),
        ("3 + 63/64", ("end-past-side",)),
        ("4", ("mortise-open-at-side", "end-past-side")),
        ("4 + 1/64", ("mortise-outside", "end-past-side")),
        ("2 + 1/64", ("end-past-side",)),
        ("2", ()),
        ("0", ()),
    ],
)
def test_a_side_of_the_mortise_in_the_air(inset: str, found: tuple[str, ...]) -> None:
    """Cheeks at 2" and 4" of an 8" sill may stand up to 2" out and 4" in."""
    _, mortised = _sides(inset=inset)
    assert codes(mortised.findings) == found


def test_a_wide_tenon_as_cut_can_put_its_mortise_outside() -> None:
    """The as-cut size is believed, and what it does to the receiver is said."""
    post = real(as_cut={"foot-tenon": {"thickness": "6-1/64"}})
    _, mortised = _sides(post=post)
    assert codes(mortised.findings) == ("mortise-outside",)


@pytest.mark.parametrize(
    ("at", "found"),
    [
        ("0", ()),
        ("-1/64", ("mortise-into-tenon",)),
        ("15' 2", ()),
        ("15' 2 + 1/64", ("mortise-into-tenon",)),
    ],
)
def test_a_mortise_into_its_timber_s_own_tenon(at: str, found: tuple[str, ...]) -> None:
    """A receiver tenoned at both ends takes a 6" mortise between its shoulders only."""
    corner = timber("corner", first_face="west", second_face="south", section="8 x 8")
    tenons = [
        tenon(id=f"sill-{end}", timber="sill", end=end, length="4", cheeks_from="first")
        for end in ("west", "east")
    ]
    joint = tenon(into="sill", at=at)
    built = frame(timber("post"), corner, sill(length="15' 8"), *tenons, joint)
    _, mortised = features(joint, built)
    assert codes(mortised.findings) == found


def test_a_mortise_open_at_the_end_is_only_to_be_looked_at() -> None:
    """Open joints are made on purpose; the framer is told and goes on."""
    _, mortised = _sides(at="0")
    (finding,) = mortised.findings
    assert finding.severity is Severity.LOOK
    assert finding.remedy


def test_every_stop_names_its_timber_and_remedy() -> None:
    """A finding says on which timber and feature, and what to do about it."""
    small = real({"foot-tenon": {"first": "3", "second": "3"}})
    sides = _sides(
        post=small, at="-1'", inset="-3", relief_reference="5", relief_far="2", length="9"
    )
    for side in sides:
        for finding in side.findings:
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.message
            assert finding.remedy
    # A mortise off the end is neither open there nor in a tenon that is not there, a shoulder on
    # the reference face bears where it was drawn, and two checks are for tenons that go through.
    stops = len(TENON_CHECKS) + len(MORTISE_CHECKS) - 7
    told = [[each.severity for each in side.findings] for side in sides]
    assert [severities.count(Severity.STOP) for severities in told] == [stops, stops]


def test_what_stops_one_side_stops_the_other() -> None:
    """Neither side may be cut to figures that cannot be; what is only to be looked at stays."""
    tenon_stopped = _sides(relief_reference="4", relief_far="3")
    mortise_stopped = _sides(length="9")
    looked_at = _sides(at="0")
    for tenoned, mortised in (tenon_stopped, mortise_stopped):
        assert codes(tenoned.findings) == codes(mortised.findings) != ()
    assert (codes(looked_at[0].findings), codes(looked_at[1].findings)) == (
        (),
        ("mortise-open-at-end",),
    )


BEARING = ("mortise-bearing-off",)


@pytest.mark.parametrize(
    ("end", "first", "found"),
    [
        ("head", "8", ()),
        ("head", "8-1/64", BEARING),
        ("head", "7-63/64", BEARING),
        ("foot", "8-1/4", ()),
        ("foot", "7-3/4", ()),
    ],
)
def test_a_shoulder_that_bears_off_the_drawn_face(
    end: str, first: str, found: tuple[str, ...]
) -> None:
    """Any odd depth moves a far face, 1/64" even; a reference face is where it is drawn."""
    receiver = real({"post-foot-mortise": {"first": first}})
    _, mortised = _sides(receiver=receiver, end=end)
    assert codes(mortised.findings) == found


def test_a_bearing_is_off_only_along_the_way_the_tenon_goes_in() -> None:
    """What the stick is over across the joint, or at another joint, moves no shoulder."""
    for place, size in (
        ("post-foot-mortise", {"first": "8", "second": "8-1/4"}),
        ("east-end", {"first": "8-1/4"}),
    ):
        _, mortised = _sides(receiver=real({place: size}), end="head")
        assert mortised.findings == ()


@pytest.mark.parametrize(
    ("first", "said", "remedy"),
    [
        (
            "8-1/4",
            'lies 8-1/4" from the top face, drawn 8": the top face would stand 1/4" proud here',
            'reduce the stick to 8" at the bearing, or make Post 1/4" shorter',
        ),
        (
            "7-3/4",
            'lies 7-3/4" from the top face, drawn 8": the top face would stand 1/4" low here',
            'make Post 1/4" longer, or choose another stick',
        ),
    ],
    ids=["over", "under"],
)
def test_a_bearing_that_is_off_says_how_far_and_which_way(
    first: str, said: str, remedy: str
) -> None:
    """The framer is told, and goes on: the way out is a shorter post, or a longer one."""
    _, mortised = _sides(receiver=real({"all": {"first": first}}), end="head")
    (finding,) = mortised.findings
    assert finding.severity is Severity.LOOK
    assert (finding.timber, finding.feature) == ("sill", "post-foot-mortise")
    assert finding.message.startswith("The underside, where the shoulder bears, ")
    assert said in finding.message
    assert finding.remedy == remedy


def test_findings_speak_the_project_s_tape() -> None:
    """In a millimetre project a finding's figures are millimetres."""
    joint = tenon(length="127 mm", thickness="51 mm", set_back="51 mm")
    post = timber("post", section="100 x 100 mm")
    built = frame(post, joint, units="mm", graduation="1 mm")
    (tenoned,) = features(joint, built)
    (finding,) = tenoned.findings
    assert "102 mm" in finding.message
    assert "100 mm" in finding.message


def _square_sides(
    *, post: Real | None = None, receiver: Real | None = None, **words: object
) -> tuple[Feature, Feature]:
    """A post of inner 5-1/2" in the underside of a sill of inner 7-1/2", both by square rule."""
    joint = tenon(**({"end": "head", "into": "sill", "at": "4'", "length": "3"} | words))
    sizes = {"post": post or real(), "sill": receiver or real()}
    built = frame(
        timber("post", inner="5-1/2 x 5-1/2"),
        sill(inner="7-1/2 x 7-1/2"),
        joint,
        real=sizes,
        rule="square",
    )
    tenoned, mortised = features(joint, built)
    return tenoned, mortised


UNDER = ("stick-under-inner",)


@pytest.mark.parametrize(
    ("post", "receiver", "found"),
    [
        ({"first": "5-1/2", "second": "5-1/2"}, {"first": "7-1/2", "second": "7-1/2"}, ()),
        ({"first": "5-31/64"}, {}, UNDER),
        ({"second": "5-31/64"}, {}, UNDER),
        ({}, {"first": "7-31/64"}, UNDER),
        ({}, {"second": "7-31/64"}, UNDER),
        ({"first": "5", "second": "5"}, {"first": "7"}, UNDER * 3),
    ],
)
def test_a_stick_smaller_than_its_inner_timber_stops_both_sides(
    post: dict[str, str], receiver: dict[str, str], found: tuple[str, ...]
) -> None:
    """Trade.md 1.3: a negative reduction is never clamped; 1/64" under is a finding."""
    sides = _square_sides(
        post=real({"head-tenon": post}), receiver=real({"post-foot-mortise": receiver})
    )
    for side in sides:
        assert codes(side.findings) == found
        for finding in side.findings:
            assert finding.severity is Severity.STOP
            assert (finding.timber, finding.feature) == (side.timber, side.id)
            assert finding.remedy


def test_by_square_rule_an_oversize_bearing_face_is_no_finding() -> None:
    """What the receiver is over comes off in the housing, so its shoulder bears where drawn."""
    sides = _square_sides(receiver=real({"post-foot-mortise": {"first": "8-1/4"}}))
    assert [side.findings for side in sides] == [(), ()]


@pytest.mark.parametrize(
    ("thickness", "stick", "found"),
    [
        ("3-1/2", "6", ()),
        ("3-1/2", "5-1/2", ()),
        ("3-33/64", "6", ("tenon-cheek-outside",)),
        ("4", "6-1/2", ("tenon-cheek-outside",)),
    ],
)
def test_by_square_rule_the_tenon_lies_inside_the_inner_timber(
    thickness: str, stick: str, found: tuple[str, ...]
) -> None:
    """Else the reduction would cut into it, and its mortise would be too wide for what is left."""
    sides = _square_sides(post=real({"head-tenon": {"first": stick}}), thickness=thickness)
    assert [codes(side.findings) for side in sides] == [found, found]


@pytest.mark.parametrize(
    ("housing", "long", "found"),
    [
        ("1/2", "7-23/64", ()),
        ("1/2", "7-3/8", ("mortise-through",)),
        ("0", "7-55/64", ()),
        ("0", "7-7/8", ("mortise-through",)),
    ],
)
def test_a_housing_counts_in_how_deep_the_mortise_goes(
    housing: str, long: str, found: tuple[str, ...]
) -> None:
    """With 1/8" of clearance, a 1/2" housing and 7-3/8" of tenon come out of an 8" sill."""
    assert [codes(side.findings) for side in _sides(housing=housing, length=long)] == [found] * 2


@pytest.mark.parametrize(
    ("at", "found"),
    [
        ("0", ()),
        ("-1/64", ("mortise-into-tenon",)),
        ("15' 2", ()),
        ("15' 2 + 1/64", ("mortise-into-tenon",)),
    ],
)
def test_a_housing_into_its_timber_s_own_tenon(at: str, found: tuple[str, ...]) -> None:
    """The mortise is relieved and stays clear, but the housing takes the whole 6" end."""
    corner = timber("corner", first_face="west", second_face="south", section="8 x 8")
    tenons = [
        tenon(id=f"sill-{end}", timber="sill", end=end, length="4", cheeks_from="first")
        for end in ("west", "east")
    ]
    joint = tenon(into="sill", at=at, housing="1/2", all_round="1")
    built = frame(timber("post"), corner, sill(length="15' 8"), *tenons, joint)
    sides = features(joint, built)
    assert [codes(side.findings) for side in sides] == [found, found]


def test_a_housing_that_runs_out_at_a_plain_end_cuts_no_tenon() -> None:
    """There is none to cut into: the recess is open there, and the mortise has its relish."""
    _, mortised = _sides(at="-1", housing="1/2", relief_reference="2")
    assert mortised.findings == ()
    assert line(mortised.lines, "start").at == length("1")


def test_a_far_face_that_bears_off_is_none_of_a_placed_timber_s_concern() -> None:
    """There the shoulder follows the stick that was measured, so nothing is off."""
    post = timber("post", length="8'", at={"east": "4'", "north": "0"})
    plate = sill(
        length=None, at={"north": "0", "up": "10'"}, reference_end_at="0", far_end_at="16'"
    )
    joint = tenon(end="head", into="sill")
    sizes = {"sill": real({"post-foot-mortise": {"first": "8-1/4"}})}
    _, mortised = features(joint, frame(post, plate, joint, real=sizes))
    assert mortised.findings == ()
