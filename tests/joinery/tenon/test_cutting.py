"""What is done at a tenon besides striking lines: each saw has its face, figure and caution."""

import pytest

from benchmate.frame.practice import CHAINSAW, CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.tenon.cutting import counts_from, sizes, tasks
from benchmate.joinery.tenon.family import features
from benchmate.measure.length import ZERO
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Stage, Task
from benchmate.model.solids import Axis
from tests.builders import frame, length, lengths, real, sill, tenon, timber
from tests.joinery.tenon.tenons import SOUND, Case

NARROW = (Face.SECOND, Face.FAR_SECOND)
BROAD = (Face.FIRST, Face.FAR_FIRST)


def _shoulders(case: Case) -> dict[Face, Task]:
    """The shoulder saw tasks by their face."""
    return {
        task.faces[0]: task
        for name, task in case.tasks.items()
        if name in {f"saw-{face.value.replace(' ', '-')}" for face in LONG_FACES}
    }


def test_the_tasks_of_a_tenon_in_order() -> None:
    """Shoulders before cheeks, cheeks before edges, the fit before the allowance comes off."""
    case = Case(tenon(all_round="1/2", end_allowance="1/2"))
    assert {name: task.stage for name, task in case.tasks.items()} == {
        "section": Stage.MEASURE,
        "knife": Stage.KNIFE,
        "saw-first": Stage.CUT,
        "saw-second": Stage.CUT,
        "saw-far-first": Stage.CUT,
        "saw-far-second": Stage.CUT,
        "saw-cheeks": Stage.CUT,
        "saw-edges": Stage.CUT,
        "pare": Stage.PARE,
        "as-cut": Stage.AS_CUT,
        "trim-end": Stage.FINISH,
    }
    assert list(case.tasks)[2:8] == [
        "saw-first",
        "saw-second",
        "saw-far-first",
        "saw-far-second",
        "saw-cheeks",
        "saw-edges",
    ]


def test_every_sawing_task_has_one_figure_and_a_caution() -> None:
    """Of two figures on one step, one is missed."""
    for case in SOUND:
        for task in case.tasks.values():
            if task.stage is Stage.CUT:
                assert len(task.readings) == 1, task
                assert task.readings[0].value > ZERO
                assert task.caution.startswith(SAW)


def test_the_saw_goes_in_only_where_wood_comes_off_all_across() -> None:
    """Law 4: a kerf across a face the tenon runs out to would sever the tenon's root."""
    for case in SOUND:
        found = _shoulders(case)
        taken = {face: case.comes_off(face) for face in LONG_FACES if case.comes_off(face)}
        assert list(found) == list(taken), case
        assert {face: task.readings[0].value for face, task in found.items()} == taken, case


def test_each_shoulder_is_sawn_from_its_own_face() -> None:
    """Id, title, face and hook are of one face, so no depth is read on another (law 6)."""
    for case in SOUND:
        pose = case.frame.stick("post").pose
        for face, task in _shoulders(case).items():
            assert task.id == f"saw-{face.value.replace(' ', '-')}"
            assert task.faces == (face,)
            assert task.title == f"Saw the shoulder, {pose.words(face)}"
            assert (task.readings[0].hook, task.readings[0].way) == (
                pose.words(face),
                "straight in",
            )


def test_the_saw_s_depths_on_an_odd_stick() -> None:
    """The far depths follow the stick, the reference depths the lines (law 2)."""
    case = Case(tenon(all_round="1/2"), first="6-1/16", second="5-7/8")
    assert {
        task.readings[0].hook: task.readings[0].value for task in _shoulders(case).values()
    } == {
        "South face": length("2"),
        "North face": length("2-1/16"),
        "West face": length("1/2"),
        "East face": length("3/8"),
    }


@pytest.mark.parametrize(
    ("case", "deep"),
    [
        (Case(tenon(set_back="0", thickness="4")), {Face.FAR_FIRST: "2"}),
        (Case(tenon(thickness="4")), {Face.FIRST: "2"}),
        (Case(tenon()), {Face.FIRST: "2", Face.FAR_FIRST: "2"}),
        (
            Case(tenon(relief_reference="1")),
            {Face.FIRST: "2", Face.SECOND: "1", Face.FAR_FIRST: "2"},
        ),
        (Case(tenon(), first="3-7/8"), {Face.FIRST: "2", Face.FAR_FIRST: "-1/8"}),
    ],
    ids=["barefaced", "far cheek on the far face", "no relief", "one relief", "in the air"],
)
def test_a_face_that_loses_nothing_has_no_saw(case: Case, deep: dict[Face, str]) -> None:
    """No figure tells the saw to go nothing deep; law 7: what the stick lacks is not clamped."""
    found = {face: task.readings[0].value for face, task in _shoulders(case).items()}
    assert found == {face: length(text) for face, text in deep.items()}


@pytest.mark.parametrize(("end", "words"), [("foot", "foot"), ("head", "head")])
def test_the_kerf_stays_on_the_tenon_s_side_of_the_shoulder(end: str, words: str) -> None:
    """Law 4: the waste of a shoulder lies towards the tenon's own end."""
    case = Case(tenon(end=end, all_round="1/2", end_allowance="1"))
    for task in _shoulders(case).values():
        assert task.waste == f"Keep the kerf on the {words} side of the knifed line."
    assert case.tasks["knife"].waste.startswith(f"Towards the {words},")
    assert case.tasks["trim-end"].waste.startswith(f"Towards the {words},")
    assert case.tasks["trim-end"].readings[0].hook == f"{words} shoulder"


@pytest.mark.parametrize("end", ["foot", "head"])
@pytest.mark.parametrize(
    ("words", "cheek_faces", "edge_faces"),
    [
        ({}, NARROW, BROAD),
        ({"cheeks_from": "second"}, BROAD, NARROW),
    ],
    ids=["cheeks from the first", "cheeks from the second"],
)
def test_cheeks_and_edges_are_sawn_where_their_lines_show(
    end: str,
    words: dict[str, str],
    cheek_faces: tuple[Face, Face],
    edge_faces: tuple[Face, Face],
) -> None:
    """The sizes left are the tenon's, from its own reference side, on the faces across."""
    case = Case(tenon(end=end, relief_reference="1", relief_far="3/4", **words))
    grain = Face.REFERENCE_END if end == "foot" else Face.FAR_END
    cheeks, edges = case.tasks["saw-cheeks"], case.tasks["saw-edges"]
    assert (cheeks.faces, edges.faces) == ((grain, *cheek_faces), (grain, *edge_faces))
    assert [task.readings[0].value for task in (cheeks, edges)] == [length("2"), length("4-1/4")]
    side = case.frame.stick("post").pose.words(cheek_faces[0])
    assert edges.readings[0].hook == f"narrow edge by the {side}"
    assert CHAINSAW in cheeks.caution


@pytest.mark.parametrize(
    ("case", "sawn"),
    [
        (Case(tenon()), {"saw-cheeks"}),
        (Case(tenon(), second="6-1/4"), {"saw-cheeks"}),
        (Case(tenon(relief_reference="1/64")), {"saw-cheeks", "saw-edges"}),
        (Case(tenon(relief_far="1/64")), {"saw-cheeks", "saw-edges"}),
        (Case(tenon(all_round="1/2"), second="5"), {"saw-cheeks", "saw-edges"}),
        (Case(tenon(set_back="0", thickness="6", relief_far="1")), {"saw-edges"}),
        (Case(tenon(set_back="0", thickness="6"), first="6-1/64"), {"saw-cheeks"}),
        (Case(tenon(set_back="0", thickness="6")), set()),
    ],
    ids=[
        "no relief",
        "no relief on a wide stick",
        "reference relief",
        "far relief",
        "as wide as the stick, in the air",
        "flush on both cheeks",
        "flush as drawn, not on the stick",
        "nothing comes off",
    ],
)
def test_only_a_side_that_loses_wood_is_sawn(case: Case, sawn: set[str]) -> None:
    """There is no cheek or edge to cut where the tenon runs out to the stick's own faces."""
    assert {"saw-cheeks", "saw-edges"} & set(case.tasks) == sawn


def test_the_knife_goes_where_there_is_a_shoulder() -> None:
    """The tenon's own end is hatched too; a face without a shoulder is left alone."""
    assert Case(tenon(set_back="0")).tasks["knife"].faces == (*LONG_FACES[1:], Face.REFERENCE_END)
    assert Case(tenon(end="head", thickness="4")).tasks["knife"].faces == (
        Face.FIRST,
        Face.SECOND,
        Face.FAR_SECOND,
        Face.FAR_END,
    )
    assert Case(tenon(set_back="0", relief_far="1")).tasks["knife"].faces == (
        *LONG_FACES,
        Face.REFERENCE_END,
    )


def test_the_knife_s_caution_names_the_flush_face() -> None:
    """Knifed right across, it would cut the tenon itself."""
    assert Case(tenon(relief_reference="1")).tasks["knife"].caution == (
        "Knife the East face only outside the cheek lines: the tenon runs out to it there."
    )
    assert "Knife the South face only outside the relief lines" in (
        Case(tenon(set_back="0", all_round="1")).tasks["knife"].caution
    )
    assert Case(tenon(all_round="1")).tasks["knife"].caution == ""


@pytest.mark.parametrize("end", ["foot", "head"])
def test_what_hurts_carries_its_caution(end: str) -> None:
    """Saw and chisel; the knife where a face is flush; as cut, which side the sizes count from."""
    case = Case(tenon(end=end, all_round="1/2", end_allowance="1/2"))
    shoulders = {"saw-first", "saw-second", "saw-far-first", "saw-far-second"}
    tools = shoulders | {"saw-cheeks", "saw-edges", "pare", "trim-end"}
    cautions = {name: task.caution for name, task in case.tasks.items() if task.caution}
    assert set(cautions) == tools | {"as-cut"}
    assert cautions["pare"] == CHISEL
    assert cautions["trim-end"] == SAW
    assert cautions["as-cut"] == counts_from(case.shape)


@pytest.mark.parametrize(
    ("words", "title", "hook", "way", "waste"),
    [
        ({}, "Cut the cheeks", "near cheek, by the South face", "far cheek", "the cheek lines"),
        ({"set_back": "0"}, "Cut the far cheek", "South face", "far cheek", "the far cheek line"),
        (
            {"thickness": "4"},
            "Cut the near cheek",
            "near cheek, by the South face",
            "North face",
            "the near cheek line",
        ),
    ],
)
def test_a_barefaced_tenon_has_one_cheek_to_cut(
    words: dict[str, str], title: str, hook: str, way: str, waste: str
) -> None:
    """One shoulder only (trade.md 2.1, TFG-bare): the other cheek is the timber's own face."""
    tasks = Case(tenon(**words)).tasks
    assert (tasks["saw-cheeks"].title, tasks["saw-cheeks"].waste) == (title, f"Outside {waste}.")
    for task in (tasks["saw-cheeks"], tasks["pare"], tasks["as-cut"]):
        reading = task.readings[0]
        assert reading.hook == hook
        assert reading.way.removesuffix(", left on") == f"to the {way}"


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ({}, "the near cheek and the West face. If the near cheek was overcut, move its line"),
        ({"set_back": "0"}, "the South face and the West face."),
        (
            {"set_back": "0", "relief_reference": "1"},
            "the South face and the reference edge. If the reference edge was overcut, move",
        ),
        ({"all_round": "1"}, "reference edge. If the near cheek or the reference edge was overcut"),
    ],
)
def test_the_sizes_count_from_what_is_there(words: dict[str, str], said: str) -> None:
    """A face of the timber was not cut, so it cannot have been overcut."""
    caution = counts_from(Case(tenon(**words)).shape)
    assert said in caution
    assert caution.startswith("Sizes count from the ")
    assert ("overcut" in caution) is ("overcut" in said)


def test_the_allowance_comes_off_last() -> None:
    """Trimming to the tenon's end waits until the joint has been fitted."""
    trim = Case(tenon(end_allowance="1/2")).tasks["trim-end"]
    assert trim.stage is Stage.FINISH
    assert trim.draws == "tenon-end"
    assert trim.readings[0].value == length("5"), "its line is sawn away, so from the shoulder"
    assert [beside.value for beside in trim.beside] == [length("1/2")]
    assert "trim-end" not in Case(tenon()).tasks


def test_a_barefaced_side_is_measured_from_its_own_face() -> None:
    """Where nothing comes off there is no near cheek and no narrow edge, only the face."""
    bare, shouldered_all_round = Case(tenon(set_back="0")), Case(tenon(all_round="1/2"))
    assert [reading.hook for reading in bare.tasks["as-cut"].readings[:2]] == [
        "South face",
        "West face",
    ]
    assert [reading.hook for reading in shouldered_all_round.tasks["as-cut"].readings[:2]] == [
        "near cheek, by the South face",
        "narrow edge by the West face",
    ]


def test_the_framer_is_asked_for_the_section_and_the_sizes_as_cut() -> None:
    """Two tasks ask for real sizes, and their ticks never go out of date."""
    found = Case(tenon()).tasks
    assert {name: task.asks for name, task in found.items() if task.asks} == {
        "section": Asks.SECTION,
        "as-cut": Asks.AS_CUT,
    }
    assert {name for name, task in found.items() if not task.lasting} == {"section", "as-cut"}


def test_the_sizes_as_cut_are_shown_once_typed() -> None:
    """What was laid out until then, what was cut afterwards; the saw's figures stay as drawn."""
    joint = tenon(relief_reference="1-1/4")
    typed = real(as_cut={"foot-tenon": {"width": "4-11/16"}})
    (feature,) = features(joint, frame(timber("post"), joint, real={"post": typed}))
    found = {task.id: task for task in feature.tasks}
    values = tuple(reading.value for reading in found["as-cut"].readings)
    assert values == lengths("2", "4-11/16", "5")
    assert found["saw-edges"].readings[0].value == length("4-3/4")


def test_sizes_say_what_to_measure() -> None:
    """With wood left on its end, a tenon's length is not what the tape reads to the sawn end."""
    shape = Case(tenon(all_round="1/2")).shape
    for allowance, to in (("0", "to its end"), ("1", "to its end line")):
        assert sizes(shape, length(allowance)) == (
            ("thickness", length("2"), "tenon thickness"),
            ("width", length("5"), "tenon width"),
            ("length", length("5"), f"tenon length {to}"),
        )
        asked = {task.id: task for task in tasks(shape, length(allowance), received=True)}["as-cut"]
        sawn = ", not the sawn end" if allowance == "1" else ""
        assert asked.readings[2].way == f"{to}{sawn}"


def test_measuring_says_what_is_cut_to_it() -> None:
    """A post that stands alone has no mortise of its own to follow it."""
    shape = Case(tenon()).shape
    whys = [
        {task.id: task.why for task in tasks(shape, ZERO, received=received)}["as-cut"]
        for received in (True, False)
    ]
    assert ["mortise" in why for why in whys] == [True, False]


def _housed(measured: dict[str, str] | None = None, **words: object) -> dict[str, Task]:
    """The tasks at a 6-1/4 x 6-1/2 post of inner 6 x 6, its foot 1/2" in the sill's top."""
    post = timber("post", rule="square", section="6-1/4 x 6-1/2", inner="6 x 6")
    joint = tenon(into="sill", at="4'", housing="1/2", **words)
    sizes = {"post": real({"foot-tenon": measured or {}})}
    built = frame(post, sill(), joint, real=sizes)
    return {task.id: task for task in features(joint, built)[0].tasks}


def test_a_housed_end_is_reduced_once_its_tenon_is_sawn() -> None:
    """Trade.md 5.1: shoulder, cheeks, housing; then the tenon is pared and measured."""
    assert list(_housed(relief_reference="1")) == [
        "section",
        "knife",
        "knife-reduction",
        "saw-first",
        "saw-second",
        "saw-far-first",
        "saw-cheeks",
        "saw-edges",
        "reduce-first",
        "reduce-second",
        "pare",
        "as-cut",
    ]


def test_what_is_reduced_is_one_figure_on_one_face() -> None:
    """Each far face has its own step and its own depth, drawn by the line it comes down to."""
    tasks = _housed({"first": "6-1/8", "second": "6-3/8"})
    found = {
        name: (tasks[name].faces, [each.value for each in tasks[name].readings], tasks[name].draws)
        for name in ("reduce-first", "reduce-second")
    }
    assert found == {
        "reduce-first": ((Face.FAR_FIRST,), [length("1/8")], "reduced-first"),
        "reduce-second": ((Face.FAR_SECOND,), [length("3/8")], "far-edge"),
    }
    assert "reduce-second" not in _housed({"second": "6"})


def test_a_depth_from_a_far_face_waits_for_the_stick_to_be_measured() -> None:
    """From the nominal size it would be cut into the tenon (trade.md 5.3: measure at the joint)."""
    warned = unmeasured(frame(timber("post")).stick("post"), Axis.FIRST, ())
    for measured, said in (
        ({}, {"saw-far-first", "reduce-first", "reduce-second"}),
        ({"first": "6-1/4"}, {"reduce-second"}),
        ({"second": "6-1/2"}, {"saw-far-first", "reduce-first"}),
        ({"first": "6-1/4", "second": "6-1/2"}, set()),
    ):
        tasks = _housed(measured)
        assert {name for name, task in tasks.items() if task.caution.startswith(warned)} == said


def test_a_mill_rule_end_is_not_reduced_and_still_asks_for_its_size() -> None:
    """The far depth is the stick's, whichever the rule."""
    joint = tenon(all_round="1")
    (feature,) = features(joint, frame(timber("post"), joint))
    warned = {task.id for task in feature.tasks if task.caution.startswith("Not measured")}
    assert warned == {"saw-far-first", "saw-far-second"}
