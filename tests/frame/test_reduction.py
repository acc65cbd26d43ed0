"""An end brought down to its inner timber: actual less inner, and never clamped."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.reduction import (
    STOP_LINE,
    Reduction,
    lies_in_words,
    measured_words,
    really_words,
    reduction,
    reduction_cuts,
    reduction_lines,
    reduction_tasks,
    under_inner,
    unmeasured,
    unmeasured_recess,
)
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Stage
from benchmate.model.findings import Severity
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick
from tests.builders import frame, length, line, real, timber
from tests.corner import sixtyfourths
from tests.space import bounds

TAPE = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
PLACES = ("foot-tenon", "foot")
HOUSED = length("1/2")
ACROSS = (Axis.FIRST, Axis.SECOND)


def stick(**measured: dict[str, str]) -> Stick:
    """An 8 x 8 post of 7' 11" by square rule, its inner timber 7-1/2" both ways."""
    post = timber("post", section="8 x 8", rule="square", inner="7-1/2 x 7-1/2")
    places = {place.replace("_", "-"): size for place, size in measured.items()}
    return frame(post, real={"post": real(places)}).stick("post")


def reduced(
    wood: Stick, end: Face = Face.REFERENCE_END, *, deep: Length = HOUSED, **struck: str
) -> Reduction:
    """The end brought down to the inner timber on both far faces."""
    to = {axis: wood.held(axis) for axis in ACROSS}
    lines = {Axis[name.upper()]: found for name, found in struck.items()}
    return reduction(wood, end, deep, to, places=PLACES, struck=lines)


@pytest.mark.parametrize(("actual", "off"), [("7-7/8", "3/8"), ("8-1/4", "3/4")])
def test_the_published_reductions(actual: str, off: str) -> None:
    """Trade notes 7.5 no. 34 and 35, TFDIY-notation: inner 7-1/2", and what comes off.

    The page prints the subtraction the wrong way round (7.6 no. 1), which would be below nothing.
    """
    found = reduced(stick(foot_tenon={"first": actual, "second": actual}))
    for axis in ACROSS:
        assert found.deep(axis) == length(off)
        assert found.to[axis] == length("7-1/2")


def test_each_side_is_reduced_by_its_own_excess() -> None:
    """One way the published stick measures 7-7/8", the other way 8-1/4"."""
    found = reduced(stick(foot_tenon={"first": "7-7/8", "second": "8-1/4"}))
    tasks = {task.id: task for task in reduction_tasks(found)}
    assert tasks["reduce-first"].readings[0].value == length("3/8")
    assert tasks["reduce-second"].readings[0].value == length("3/4")


@pytest.mark.parametrize(
    ("measured", "deep"),
    [
        ({"foot_tenon": {"first": "7-7/8"}, "foot": {"first": "8"}, "all": {"first": "9"}}, "3/8"),
        ({"foot": {"first": "7-3/4"}, "all": {"first": "9"}}, "1/4"),
        ({"all": {"first": "8-1/8"}}, "5/8"),
        ({"head": {"first": "9"}}, "1/2"),
        ({}, "1/2"),
    ],
)
def test_the_section_is_that_at_the_joint(measured: dict[str, dict[str, str]], deep: str) -> None:
    """Trade notes 1.3: measured at the joint, else at that end, else for all of it, else drawn."""
    assert reduced(stick(**measured)).deep(Axis.FIRST) == length(deep)


def test_a_side_at_its_line_or_inside_it_loses_nothing() -> None:
    """Exactly 7-1/2" needs no cut; a 64th more needs one of a 64th."""
    found = reduced(stick(foot_tenon={"first": "7-1/2", "second": "7-33/64"}))
    assert tuple(found.to) == (Axis.SECOND,)
    assert found.deep(Axis.SECOND) == length("1/64")
    assert not reduced(stick(foot_tenon={"first": "7", "second": "7"})).to


def test_nothing_is_reduced_without_a_recess() -> None:
    """An end that bears on a face keeps its full size."""
    bare = reduced(stick(), deep=ZERO)
    assert not bare.to
    assert (reduction_cuts(bare), reduction_lines(bare), reduction_tasks(bare)) == ((), (), ())


@pytest.mark.parametrize(
    ("end", "stop", "span"),
    [
        (Face.REFERENCE_END, "1/2", ("-5", "1/2")),
        (Face.FAR_END, "7' 10-1/2", ("7' 10-1/2", "8' 3")),
    ],
)
def test_it_runs_from_its_stop_to_the_end(end: Face, stop: str, span: tuple[str, str]) -> None:
    """As far back from the shoulder as the end goes in, and out past the shoulder to the end."""
    wood = stick()
    found = reduced(wood, end)
    assert found.stop == length(stop)
    whole = ((length("-5").nm, length("8' 3").nm), (0, length("8").nm), (0, length("8").nm))
    first, second = (bounds(cut, whole) for cut in reduction_cuts(found))
    along = tuple(length(each).nm for each in span)
    far = (length("7-1/2").nm, length("8").nm)
    assert first == (along, far, (0, length("8").nm))
    assert second == (along, (0, length("8").nm), far)


def test_its_lines_are_struck_from_the_reference_side() -> None:
    """Two lines at the inner size and one across, on far faces only; none struck twice."""
    found = reduction_lines(reduced(stick()))
    assert [each.id for each in found] == [STOP_LINE, "reduced-first", "reduced-second"]
    stop = line(found, STOP_LINE)
    assert (stop.axis, stop.at) == (Axis.ALONG, HOUSED)
    assert stop.faces == (Face.FAR_FIRST, Face.FAR_SECOND)
    for name, axis, face in (("first", Axis.FIRST, "North"), ("second", Axis.SECOND, "East")):
        each = line(found, f"reduced-{name}")
        assert (each.axis, each.at) == (axis, length("7-1/2"))
        assert each.beside[0].value == length("1/2")
        assert each.title == f"Reduction line, {face} side"
        assert f"Never measure this from the {face} face" in each.caution
    struck = reduced(stick(), first="far-edge")
    assert [each.id for each in reduction_lines(struck)] == [STOP_LINE, "reduced-second"]
    assert struck.line(Axis.FIRST) == "far-edge"
    assert reduction_cuts(struck)[0].planes[1].line == "far-edge"


def test_each_far_face_is_a_task_of_its_own() -> None:
    """One figure to one task, cut and not pared, with the line it works to."""
    tasks = reduction_tasks(reduced(stick()))
    assert [task.draws for task in tasks] == ["reduced-first", "reduced-second"]
    assert [task.faces for task in tasks] == [(Face.FAR_FIRST,), (Face.FAR_SECOND,)]
    for task in tasks:
        assert (task.stage, len(task.readings)) == (Stage.CUT, 1)
        assert task.caution


def test_it_says_whether_the_stick_was_measured() -> None:
    """A depth reckoned from the drawing is not to be cut to."""
    assert "Not measured here yet" in measured_words(stick(), Axis.FIRST, PLACES)
    measured = stick(foot_tenon={"first": "8"})
    assert "measured here" in measured_words(measured, Axis.FIRST, PLACES)
    assert "Not measured" in measured_words(measured, Axis.SECOND, PLACES)


@given(sixtyfourths(5, 10), sixtyfourths(5, 10))
def test_a_reduction_brings_every_stick_to_its_inner_timber(first: Length, second: Length) -> None:
    """Law 7: what comes off and what is left make the stick, or it is told as too small."""
    wood = stick(foot_tenon={"first": first.exact_text(), "second": second.exact_text()})
    found = reduced(wood)
    short = under_inner(wood, "foot-tenon", PLACES, TAPE)
    for axis, real_depth in zip(ACROSS, (first, second), strict=True):
        if axis in found.to:
            assert found.deep(axis) > ZERO
            assert found.to[axis] + found.deep(axis) == real_depth
        else:
            assert real_depth <= wood.held(axis)
    assert len(short) == sum(depth < length("7-1/2") for depth in (first, second))


@pytest.mark.parametrize(("actual", "told"), [("7-1/2", 0), ("7-31/64", 1), ("7", 1)])
def test_a_stick_under_its_inner_timber_stops_the_work(actual: str, told: int) -> None:
    """A 64th too small is too small: another stick, a smaller inner timber, or scribe it."""
    wood = stick(foot_tenon={"first": actual}, head={"first": "7-3/8"})
    found = under_inner(wood, "foot-tenon", PLACES, TAPE)
    assert len(found) == told
    for finding in found:
        assert (finding.code, finding.severity) == ("stick-under-inner", Severity.STOP)
        assert (finding.timber, finding.feature) == ("post", "foot-tenon")
        for remedy in ("another stick", "inner section"):
            assert remedy in finding.remedy
        assert "scribe" not in finding.remedy
    for finding in under_inner(wood, "foot-tenon", PLACES, TAPE, scribable=True):
        assert "scribe this joint" in finding.remedy


def test_the_remedy_says_how_small_the_inner_timber_would_have_to_be() -> None:
    """By how much it fails, and what would lie inside this stick at all its joints."""
    wood = stick(foot_tenon={"first": "7-1/4"}, head={"first": "7-1/8", "second": "7-3/4"})
    (finding,) = under_inner(wood, "foot-tenon", PLACES, TAPE)
    assert '7-1/4" in from the South face' in finding.message
    assert '1/4" less' in finding.message
    assert "inner timber's 7-1/2\"" in finding.message
    assert finding.remedy.endswith('at most 7-1/8" in from the South face for this stick')


def test_a_section_drawn_too_small_is_told_without_a_measurement() -> None:
    """An inner timber larger than the stick as drawn is a slip in the file."""
    post = timber("post", section="7 x 8", rule="square", inner="7-1/2 x 7-1/2")
    (finding,) = under_inner(frame(post).stick("post"), "foot-tenon", PLACES, TAPE)
    assert finding.remedy.endswith('at most 7" in from the South face for this stick')


@given(st.sampled_from(ACROSS), sixtyfourths(5, 10))
def test_by_mill_rule_nothing_is_too_small(axis: Axis, depth: Length) -> None:
    """The stick is taken as it is."""
    name = "first" if axis is Axis.FIRST else "second"
    measured = {"post": real({"foot-tenon": {name: depth.exact_text()}})}
    wood = frame(timber("post", section="8 x 8"), real=measured).stick("post")
    assert under_inner(wood, "foot-tenon", PLACES, TAPE) == ()
    assert wood.over(axis, "foot-tenon") == ZERO


def test_what_lies_in_another_timber_says_whether_it_is_known() -> None:
    """By square rule it is the inner timber, by mill rule as measured there, if it was."""
    square = stick()
    mill = frame(timber("post", section="8 x 8")).stick("post")
    sizes = {"post": real({"foot-tenon": {"first": "8"}})}
    known = frame(timber("post", section="8 x 8"), real=sizes).stick("post")
    for wood, lies, really in (
        (square, "By square rule it comes to its inner timber", "It has not been measured there"),
        (mill, "It has not been measured there", "It has not been measured there"),
        (known, "It is as it was measured there.", "It is as it was measured there."),
    ):
        assert lies_in_words(wood, Axis.FIRST, PLACES).startswith(lies)
        assert really_words(wood, Axis.FIRST, PLACES).startswith(really)
    assert "not been measured" in lies_in_words(known, Axis.SECOND, PLACES)


def test_one_from_the_shoulder_itself_says_no_distance_back() -> None:
    """Where nothing of the end lies inside the other timber's face, there is none to say."""
    wood = stick()
    to = {axis: wood.held(axis) for axis in ACROSS}
    found = Reduction(
        stick=wood, end=Face.REFERENCE_END, length=ZERO, to=to, struck={}, places=PLACES
    )
    assert line(reduction_lines(found), STOP_LINE).beside == ()
    back = line(reduction_lines(reduced(wood)), STOP_LINE).beside
    assert [beside.value for beside in back] == [HOUSED]


@pytest.mark.parametrize(
    ("entry", "told"), [(Face.FIRST, False), (Face.FAR_FIRST, True), (Face.FAR_SECOND, False)]
)
def test_a_recess_in_a_far_face_waits_for_its_measure(entry: Face, *, told: bool) -> None:
    """By square rule it is as deep as the stick is over there; 8-1/4" the second way is known."""
    rough = stick(hole={"second": "8-1/4"})
    found = unmeasured_recess(rough, entry, "hole")
    assert found == (unmeasured(rough, Axis.FIRST, ("hole",)) if told else "")
    assert bool(found) == told


def test_by_mill_rule_a_recess_is_as_deep_on_every_stick() -> None:
    """Nothing is to be measured first, whatever face it goes in from."""
    mill = frame(timber("post", section="8 x 8")).stick("post")
    assert [unmeasured_recess(mill, face, "hole") for face in (Face.FIRST, Face.FAR_FIRST)] == [
        "",
        "",
    ]
