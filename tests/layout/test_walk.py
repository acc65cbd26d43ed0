"""The walk: every mark once, in order, named and numbered the same however the frame is turned."""

import re
from collections.abc import Mapping

import pytest
from hypothesis import given, settings

from benchmate.frame.frame import Real
from benchmate.layout.outlines import face_view, outlines
from benchmate.layout.step import Layout, Step
from benchmate.layout.walk import (
    _readings,
    _shoulder_step,
    _waste_side,
    faces_in_words,
    features_on,
    lay_out,
)
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Feature, Line, Stage, Task
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from benchmate.model.stick import reference_for
from tests.builders import (
    Part,
    chamfer,
    corners,
    frame,
    length,
    lengths,
    line,
    read,
    sill,
    tenon,
    timber,
)
from tests.corner import Corner, corner, measured
from tests.floor import Floor
from tests.joinery.joist_tenon.joints import soffit_tenon

TIMBERS = ("post-sw", "post-se", "sill", "plate")


def _steps(layout: Layout) -> dict[str, Step]:
    return {step.id: step for step in layout.steps}


def test_the_marks_of_the_check_post_in_order() -> None:
    """Stage by stage, and within a stage joint by joint from the reference end."""
    layout = lay_out(corners(), "post-sw")
    assert tuple(step.id for step in layout.steps) == (
        "stick/crown",
        "stick/faces",
        "foot-tenon/section",
        "head-tenon/section",
        "end/square",
        "end/overall",
        "foot-tenon/shoulder",
        "foot-tenon/near-cheek",
        "foot-tenon/far-cheek",
        "foot-tenon/reference-edge",
        "head-tenon/shoulder",
        "head-tenon/near-cheek",
        "head-tenon/far-cheek",
        "head-tenon/reference-edge",
        "head-tenon/far-edge",
        "inside-chamfer/foot-stop",
        "inside-chamfer/foot-block",
        "inside-chamfer/head-stop",
        "inside-chamfer/head-block",
        "inside-chamfer/line",
        "stick/back-check",
        "foot-tenon/knife",
        "head-tenon/knife",
        "end/saw",
        "foot-tenon/saw-first",
        "foot-tenon/saw-second",
        "foot-tenon/saw-far-first",
        "foot-tenon/saw-cheeks",
        "foot-tenon/saw-edges",
        "head-tenon/saw-first",
        "head-tenon/saw-second",
        "head-tenon/saw-far-first",
        "head-tenon/saw-far-second",
        "head-tenon/saw-cheeks",
        "head-tenon/saw-edges",
        "foot-tenon/pare",
        "head-tenon/pare",
        "foot-tenon/as-cut",
        "head-tenon/as-cut",
        "inside-chamfer/cut",
        "stick/label",
    )
    assert layout.shoulder == "foot-tenon/shoulder"


@pytest.mark.parametrize(
    ("step", "figures", "waste"),
    [
        ("end/overall", ("104",), "rough head"),
        ("foot-tenon/shoulder", ("5",), "foot"),
        ("foot-tenon/near-cheek", ("2",), "South face"),
        ("foot-tenon/far-cheek", ("4",), "North face"),
        ("foot-tenon/reference-edge", ("1-1/4",), "{outside} face"),
        ("head-tenon/shoulder", ("95", "100"), "head"),
        ("head-tenon/reference-edge", ("1/2",), "{outside} face"),
        ("head-tenon/far-edge", ("5-1/2",), "{inside} face"),
        ("inside-chamfer/line", ("3/4",), "arris"),
        ("inside-chamfer/foot-stop", ("15-1/2", "20-1/2"), "head"),
        ("inside-chamfer/foot-block", ("13-1/2", "18-1/2"), "None"),
        ("inside-chamfer/head-stop", ("89", "94"), "foot"),
        ("inside-chamfer/head-block", ("91", "96"), "None"),
    ],
)
def test_the_figures_and_waste_of_both_hands(
    step: str, figures: tuple[str, ...], waste: str
) -> None:
    """Common practice, no source: the same figures on either corner, on mirrored faces."""
    for post, outside, inside in (("post-sw", "West", "East"), ("post-se", "East", "West")):
        found = lay_out(corners(), post).step(step)
        assert read(found) == lengths(*figures)
        assert waste.format(outside=outside, inside=inside) in found.waste


def test_the_two_hands_name_the_right_faces() -> None:
    """Hook-from faces: cheeks from the south on both, reliefs from the outside of each."""
    for post, outside, inside in (("post-sw", "West", "East"), ("post-se", "East", "West")):
        steps = _steps(lay_out(corners(), post))
        relief = steps["foot-tenon/reference-edge"]
        assert relief.readings[0].hook == f"{outside} face"
        assert f"{inside} face" in relief.readings[0].way
        assert relief.faces == (Face.FIRST, Face.FAR_FIRST, Face.REFERENCE_END)
        cheek = steps["head-tenon/far-cheek"]
        assert cheek.readings[0].hook == "South face"
        assert cheek.faces == (Face.SECOND, Face.FAR_SECOND, Face.FAR_END)


def test_the_figures_of_the_receiving_sill() -> None:
    """Common practice, no source: 1-1/4" in from either end, 4-3/4" long, 2" wide, 2" in."""
    steps = _steps(lay_out(corners(), "sill"))
    figures = {name: read(steps[name]) for name in steps if steps[name].stage is Stage.MARK}
    assert figures == {
        "sw-foot-mortise/start": lengths("1-1/4"),
        "sw-foot-mortise/finish": lengths("6"),
        "sw-foot-mortise/near-side": lengths("2"),
        "sw-foot-mortise/far-side": lengths("4"),
        "sw-foot-mortise/depth": lengths("5-1/8"),
        "se-foot-mortise/start": lengths("186"),
        "se-foot-mortise/finish": lengths("190-3/4"),
        "se-foot-mortise/near-side": lengths("2"),
        "se-foot-mortise/far-side": lengths("4"),
        "se-foot-mortise/depth": lengths("5-1/8"),
    }
    waste = {name: steps[f"se-foot-mortise/{name}"].waste for name in ("start", "finish")}
    assert "east end" in waste["start"]
    assert "west end" in waste["finish"]
    assert lay_out(corners(), "sill").shoulder is None


def test_a_mortise_s_near_side_wastes_away_from_its_hook() -> None:
    """Law 4: between the sides lies the waste, so the near line's is on the far side of it."""
    steps = _steps(lay_out(corners(), "plate"))
    near, far = steps["sw-head-mortise/near-side"], steps["sw-head-mortise/far-side"]
    assert (near.readings[0].hook, near.on) == ("South face", "underside")
    assert "North face" in near.waste
    assert "South face" in far.waste


@given(measured(6, 7))
def test_an_odd_stick_leaves_every_struck_line_where_it_was(size: Measured) -> None:
    """Law 2: whatever a stick measures, no line's reading on it changes."""
    places = ("foot-tenon", "head-tenon", "inside-chamfer", "sw-foot-mortise", "se-foot-mortise")
    typed = Real(dict.fromkeys(places, size))
    for timber_id in TIMBERS:
        drawn = lay_out(corners(), timber_id)
        found = lay_out(corners({timber_id: typed}), timber_id)
        assert [step.id for step in found.steps] == [step.id for step in drawn.steps]
        for was, now in zip(drawn.steps, found.steps, strict=True):
            if now.line:
                assert (now.readings, now.waste, now.on) == (was.readings, was.waste, was.on)


@given(measured(6, 7))
def test_the_off_side_is_as_deep_as_the_stick_is_over_the_line(size: Measured) -> None:
    """Law 2: the far-side depth is the measured section less the line, exactly."""
    built = corners({"post-se": Real({"head-tenon": size})})
    layout = lay_out(built, "post-se")
    saws = [
        layout.step(f"head-tenon/saw-{face}")
        for face in ("first", "second", "far-first", "far-second")
    ]
    depths = {reading.hook: reading.value for step in saws for reading in step.readings}
    real_section = built.stick("post-se").section("head-tenon")
    assert depths["South face"] == length("2")
    assert depths["North face"] == real_section.first - length("4")
    assert depths["East face"] == length("1/2")
    assert depths["West face"] == real_section.second - length("5-1/2")


@pytest.mark.parametrize("timber_id", TIMBERS)
def test_ids_and_hooks_are_unique(timber_id: str) -> None:
    """No two steps share an id, and no two figures of a step what they hook on (law 6)."""
    layout = lay_out(corners(), timber_id)
    assert len(_steps(layout)) == len(layout.steps)
    for step in layout.steps:
        hooks = [reading.hook for reading in step.readings]
        assert len(set(hooks)) == len(hooks)
        assert step.id.startswith(f"{step.feature}/")


@settings(max_examples=50)
@given(corner())
def test_every_line_is_struck_on_a_face_with_its_waste_on_the_side_named(case: Corner) -> None:
    """Law 4: in a sound joint each line lies on some face, and the waste said is the waste cut."""
    for timber_id in ("post", "receiver"):
        layout = lay_out(case.frame, timber_id)
        if any(feature.findings for feature in layout.features):
            continue
        for step in layout.steps:
            assert len({reading.hook for reading in step.readings}) == len(step.readings)
            if step.line:
                assert step.faces
                assert step.on
                _check_waste(layout, step)


def _check_waste(layout: Layout, step: Step) -> None:
    """The outlines that bear the step's line lie on the side its words name."""
    feature = layout.feature(step.feature)
    assert feature
    struck = line(feature.lines, str(step.line))
    if struck.waste or struck.axis is None:
        return
    along = struck.axis is Axis.ALONG
    reference = Face.REFERENCE_END if along else reference_for(struck.axis)
    checked = 0
    for face in step.faces:
        shown = face_view(layout.stick, face, layout.stick.section(*feature.place)).shown
        place = shown.index(struck.axis.value.index(1))
        for shape in outlines(feature, layout.stick, face):
            if step.line in shape.lines:
                middle = sum(point[place] for point in shape.points)
                before = middle < struck.at.nm * len(shape.points)
                side = reference if before else reference.opposite
                assert layout.stick.pose.words(side) in step.waste
                checked += 1
    assert checked


COMPASS = ("north", "east", "south", "west")
TURNS = [
    {word: COMPASS[(turn + sense * place) % 4] for place, word in enumerate(COMPASS)}
    for turn in range(4)
    for sense in (1, -1)
]


def _turned_text(text: str, turn: Mapping[str, str]) -> str:
    def swap(found: re.Match[str]) -> str:
        word = turn[found[0].lower()]
        return word.capitalize() if found[0][0].isupper() else word

    return re.sub(rf"\b({'|'.join(COMPASS)})\b", swap, text, flags=re.IGNORECASE)


def _turned(value: object, turn: Mapping[str, str]) -> object:
    if isinstance(value, str):
        return _turned_text(value, turn)
    if isinstance(value, dict):
        return {key: _turned(part, turn) for key, part in value.items()}
    if isinstance(value, tuple):
        return tuple(_turned(part, turn) for part in value)
    return value


@pytest.mark.parametrize("turn", TURNS, ids=lambda turn: "-".join(turn.values()))
def test_turning_or_mirroring_the_frame_changes_only_the_words(turn: dict[str, str]) -> None:
    """Every figure stays; every face, end and waste side follows, on either hand."""
    stops = {
        "near_stop": {"shoulder": "west", "distance": "20"},
        "far_stop": {"shoulder": "east", "distance": "30"},
    }
    project = corners().project
    works = (*project.works, chamfer(id="sill-chamfer", on=["sill"], arrises=["far-far"], **stops))
    records: list[Part] = [*project.timbers, *works]
    turned: list[Part] = [
        type(record).model_validate(_turned(record.model_dump(exclude_none=True), turn))
        for record in records
    ]
    before, after = (
        frame(*parts, lengths=project.lengths, sections=project.sections)
        for parts in (records, turned)
    )
    for timber_id in TIMBERS:
        was, now = lay_out(before, timber_id), lay_out(after, timber_id)
        assert [_turned_text(repr(step), turn) for step in was.steps] == list(map(repr, now.steps))


def test_ids_outlive_names_and_sizes() -> None:
    """Ticks find their steps again after a timber is renamed or drawn bigger."""
    joints = (
        tenon(into="sill", at="0", relief_reference="1-1/4"),
        tenon(id="post-head", end="head", all_round="1/2", end_allowance="1"),
        chamfer(),
    )
    plain = frame(timber("post"), sill(), *joints)
    other = timber("post", name="Old oak", section="7-1/2 x 8", length="9'", species="Oak")
    renamed = frame(other, sill(name="Ground sill", section="10 x 9", length="20'"), *joints)
    for timber_id in ("post", "sill"):
        ids = [[step.id for step in lay_out(one, timber_id).steps] for one in (plain, renamed)]
        assert ids[0] == ids[1]


def test_features_come_from_the_reference_end_whatever_the_file_s_order() -> None:
    """A joint written last but standing nearer the reference end is marked first."""
    parts = [timber("a"), timber("b"), sill()]
    joints = [
        tenon(id="b-foot", timber="b", into="sill", at="10'"),
        tenon(id="a-foot", timber="a", into="sill", at="2'"),
    ]
    ids = [feature.id for feature in features_on(frame(*parts, *joints), "sill")]
    assert ids == ["end", "a-foot-mortise", "b-foot-mortise"]


def test_a_feature_knows_its_joint_and_what_that_is_meant_to_meet() -> None:
    """On both its timbers; the ends and a chamfer are no joints."""
    joint = tenon(into="sill", at="4'", meets=["other"])
    built = frame(timber("post"), sill(), joint, chamfer())
    found = {
        feature.id: (feature.joint, feature.meets)
        for each in ("post", "sill")
        for feature in features_on(built, each)
    }
    met = ("post-foot", ("other",))
    assert found == {
        "end": ("", ()),
        "foot-tenon": met,
        "inside-chamfer": ("", ()),
        "post-foot-mortise": met,
    }


def test_a_layout_knows_how_much_wood_the_shop_keeps() -> None:
    """The project's own house rule, for the checks."""
    assert lay_out(frame(timber("post")), "post").least_wood == length("1/2")
    own = frame(timber("post"), shop={"least_wood": "3/4"})
    assert lay_out(own, "post").least_wood == length("3/4")


def test_an_unknown_timber_is_a_misuse() -> None:
    """Only timbers of the project are laid out."""
    with pytest.raises(KeyError):
        lay_out(corners(), "rafter")


def test_the_reference_shoulder_is_the_tenon_s_even_with_a_mortise_there() -> None:
    """A mortise that starts at the shoulder does not become the line all is measured from."""
    joints = (
        tenon(into="sill", at="0"),
        tenon(id="sill-west", timber="sill", end="west"),
        chamfer(
            on=["sill"],
            near_stop={"shoulder": "west", "distance": "0"},
            far_stop={"shoulder": "east", "distance": "6"},
        ),
    )
    layout = lay_out(frame(timber("post"), sill(), *joints), "sill")
    assert layout.shoulder == "west-end-tenon/shoulder"
    assert read(layout.step("post-foot-mortise/start")) == lengths("5")


def test_a_scribed_shoulder_is_the_datum_too() -> None:
    """A shoulder marked by hand is a task, and still what the marks along the timber run from."""
    stick = corners().stick("post-sw")
    scribe = Task(id="shoulder", stage=Stage.MARK, title="Scribe the shoulder", why="")
    foot = Feature(id="foot-tenon", timber="post-sw", title="", at=length("0"), tasks=(scribe,))
    head = Feature(id="head-tenon", timber="post-sw", title="", at=stick.body, tasks=(scribe,))
    assert _shoulder_step(stick, (foot, head)) == "foot-tenon/shoulder"
    assert _shoulder_step(stick, (head,)) is None
    assert _shoulder_step(corners().stick("sill"), (foot,)) is None


@pytest.mark.parametrize("order", [1, -1])
def test_a_tenon_at_the_far_end_alone_leaves_the_squared_end_as_datum(order: int) -> None:
    """Without a tenon at the reference end every mark reads from the squared end only."""
    parts = (timber("post"), tenon(end="head", length="4"), chamfer())[::order]
    layout = lay_out(frame(*parts), "post")
    assert layout.shoulder is None
    assert {len(step.readings) for step in layout.steps if step.line} == {1}


def test_a_mark_beyond_the_shoulder_reads_back_from_it() -> None:
    """The tenon's end: 5" from the shoulder towards the foot, 1/2" from the squared foot."""
    layout = lay_out(frame(timber("post"), tenon(end_allowance="1/2")), "post")
    end = layout.step("foot-tenon/tenon-end")
    assert read(end) == lengths("5", "1/2")
    assert [reading.hook for reading in end.readings] == ["foot shoulder line", "squared foot"]
    assert [reading.way.split()[-1] for reading in end.readings] == ["foot", "head"]


def _lines(layout: Layout, feature: str) -> tuple[str, ...]:
    return tuple(step.line for step in layout.steps if step.line and step.feature == feature)


def test_a_line_on_the_stick_s_own_arris_or_end_is_no_step() -> None:
    """There is nothing to strike where a cheek or a mortise runs out to a face or an end."""
    flush = tenon(into="sill", at="0", set_back="0")
    layout = lay_out(frame(timber("post"), sill(), flush, shop={"trim": "0"}), "sill")
    assert _lines(layout, "post-foot-mortise") == ("finish", "far-side", "depth")
    for thick, lines in (("4", ()), ("3-63/64", ("far-cheek",))):
        post = lay_out(frame(timber("post"), tenon(thickness=thick)), "post")
        assert _lines(post, "foot-tenon") == ("shoulder", "near-cheek", *lines)


def test_a_chamfer_that_runs_out_at_an_end_has_no_stop_there() -> None:
    """A stop at the squared end of a post without a tenon is the end itself."""
    runs_out = chamfer(near_stop={"shoulder": "foot", "distance": "0"})
    layout = lay_out(frame(timber("post"), runs_out), "post")
    stops = [name for name in _lines(layout, "inside-chamfer") if name.endswith("stop")]
    assert stops == ["head-stop"]


def test_a_shoulder_stays_a_step_even_with_no_body_behind_it() -> None:
    """A stick all tenon is a finding, and its shoulder is still there to be named."""
    post = timber("post", length="5", length_is="overall")
    layout = lay_out(frame(post, tenon()), "post")
    assert layout.shoulder == "foot-tenon/shoulder"
    assert read(layout.step("foot-tenon/shoulder")) == lengths("5")


LOOSE = Line(id="loose", title="Loose line", axis=Axis.FIRST, at=length("1"), why="")
GAUGED = Line(id="gauged", title="Gauged line", axis=None, at=length("1"), why="")


def test_a_gauged_line_has_to_say_how_it_is_measured() -> None:
    """It lies on no axis, so there is no face to hook on."""
    stick = corners().stick("post-sw")
    with pytest.raises(ValueError, match="gauged"):
        _readings(stick, GAUGED)


def test_a_line_that_bounds_no_cut_has_no_waste() -> None:
    """Nothing is said about waste that is not there."""
    built = corners()
    feature = features_on(built, "post-sw")[1]
    assert _waste_side(built.stick("post-sw"), feature, LOOSE) == ""
    assert _waste_side(built.stick("post-sw"), feature, GAUGED) == ""


def test_a_line_between_two_cuts_has_waste_on_neither_side_alone() -> None:
    """The mortise lies below the upper side line and the haunch's recess above it."""
    built = Floor().frame(soffit_tenon())
    sides = {step.line: step for step in lay_out(built, "beam").steps}
    assert sides["upper-side"].waste_side == ""
    assert sides["upper-side"].waste.startswith("Both sides")
    assert sides["lower-side"].waste_side == "top face"


@pytest.mark.parametrize(
    ("faces", "words"),
    [
        ((), ""),
        ((Face.FIRST,), "South face"),
        ((Face.FIRST, Face.SECOND), "South face and West face"),
        (
            (Face.FIRST, Face.SECOND, Face.FAR_END),
            "South face, West face and end grain of the head",
        ),
        (LONG_FACES, "all four faces"),
        ((*LONG_FACES, Face.REFERENCE_END), "all four faces and end grain of the foot"),
    ],
)
def test_faces_in_words(faces: tuple[Face, ...], words: str) -> None:
    """Faces are listed as a framer would say them."""
    assert faces_in_words(corners().stick("post-sw"), faces) == words


def test_stages_never_go_back() -> None:
    """All is laid out before any cut, shoulders before cheeks, and the fit before the finish."""
    for timber_id in TIMBERS:
        stages = [step.stage for step in lay_out(corners(), timber_id).steps]
        assert stages == sorted(stages)
        assert (stages[0], stages[-1]) == (Stage.CHOOSE, Stage.LABEL)
