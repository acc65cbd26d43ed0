"""A scribed joint: everything is listed, and every figure is left to the framer."""

import pytest

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.practice import CHAINSAW, CHISEL, DRILL, SAW
from benchmate.joinery.tenon.family import features
from benchmate.joinery.tenon.scribed import FITTED
from benchmate.layout.step import Step
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Awaits, Feature, Stage
from tests.builders import frame, length, read, sill, tenon, timber
from tests.joinery.tenon.girts import MORTISE, girt_through


def _sides(**words: object) -> tuple[Feature, ...]:
    joint = tenon(scribed=True, **({"into": "sill", "at": "4'"} | words))
    return features(joint, frame(timber("post"), sill(), joint))


def _steps(timber_id: str, **words: object) -> dict[str, Step]:
    joint = tenon(scribed=True, **({"into": "sill", "at": "4'"} | words))
    steps = lay_out(frame(timber("post"), sill(), joint), timber_id).steps
    return {step.id: step for step in steps}


@pytest.mark.parametrize("end", ["foot", "head"])
def test_nothing_of_it_has_a_figure(end: str) -> None:
    """Scribing marks each joint from its real mate (trade.md 1.1, TFHQ-rules and Underhill)."""
    for side in _sides(end=end, housing="1/2", all_round="1", end_allowance="1/2"):
        assert side.tasks
        assert (side.cuts, side.lines, side.sizes) == ((), (), ())
        for task in side.tasks:
            assert (task.readings, task.beside) == ((), ()), task
            assert task.asks is Asks.NOTHING


def test_the_tenon_s_steps_in_order() -> None:
    """Look, scribe, cut, fit; the task that makes the shoulder is named as its line would be."""
    tenoned, _ = _sides()
    assert [(task.id, task.stage) for task in tenoned.tasks] == [
        ("lay-up", Stage.MEASURE),
        ("shoulder", Stage.MARK),
        ("saw", Stage.CUT),
        (FITTED, Stage.PARE),
    ]


def test_the_mortise_s_steps_in_order() -> None:
    """Look, scribe, cut: the fit is tried at the tenon, which is pared."""
    _, mortised = _sides()
    assert [(task.id, task.stage) for task in mortised.tasks] == [
        ("lay-up", Stage.MEASURE),
        ("scribe", Stage.MARK),
        ("bore", Stage.CUT),
    ]


@pytest.mark.parametrize(
    ("end", "grain", "entry"),
    [("foot", Face.REFERENCE_END, Face.FIRST), ("head", Face.FAR_END, Face.FAR_FIRST)],
)
def test_they_are_done_at_the_joint(end: str, grain: Face, entry: Face) -> None:
    """All round the tenon's own end, and on the face the mortise is cut in."""
    tenoned, mortised = _sides(end=end)
    faces = {task.id: task.faces for task in tenoned.tasks}
    both = (Face.FIRST, Face.SECOND)
    around = (*LONG_FACES, grain)
    assert faces == {"lay-up": both, "shoulder": around, "saw": around, FITTED: (grain,)}
    faces = {task.id: task.faces for task in mortised.tasks}
    assert faces == {"lay-up": both, "scribe": (entry,), "bore": (entry,)}


def test_a_scribed_mortise_may_go_right_through() -> None:
    """Scribed and bored from both faces; it has no bottom to be deeper than the tenon."""
    _, mortised = _sides(through=True, length=None, housing="1/2")
    tasks = {task.id: task for task in mortised.tasks}
    for name in ("scribe", "bore"):
        assert tasks[name].faces == (Face.FIRST, Face.FAR_FIRST)
    assert "Right through" in tasks["bore"].why
    assert tasks["bore"].caution == f"{FROM_BOTH} {DRILL} {CHISEL}"
    blind = {task.id: task for task in _sides()[1].tasks}["bore"]
    assert "Deeper than the tenon" in blind.why
    assert blind.caution == f"{DRILL} {CHISEL}"


def test_each_names_its_own_mate() -> None:
    """Pieces are not interchangeable, so no other timber will do."""
    tenoned, mortised = _sides()
    titles = {task.id: task.title for task in (*tenoned.tasks, *mortised.tasks)}
    assert titles["shoulder"].endswith("to Sill")
    assert titles[FITTED].endswith("fits Sill")
    assert titles["scribe"].endswith("from Post")


def test_what_hurts_carries_its_caution() -> None:
    """Saw, chainsaw, drill and chisel; and at the scribing, that no figure is given."""
    tenoned, mortised = _sides()
    found = {
        f"{side.id}/{task.id}": task.caution for side in (tenoned, mortised) for task in side.tasks
    }
    assert found["foot-tenon/saw"] == f"{SAW} {CHAINSAW}"
    assert found["foot-tenon/fit"] == CHISEL
    assert found["post-foot-mortise/bore"] == f"{DRILL} {CHISEL}"
    for scribing in ("foot-tenon/shoulder", "post-foot-mortise/scribe"):
        assert found[scribing].startswith("No figure here")


@pytest.mark.parametrize(("end", "words"), [("foot", "foot"), ("head", "head")])
def test_the_waste_lies_beyond_the_scribed_lines(end: str, words: str) -> None:
    """Towards the tenon's end, and inside the mortise."""
    tenoned, mortised = _sides(end=end)
    waste = {task.id: task.waste for task in (*tenoned.tasks, *mortised.tasks) if task.waste}
    assert waste == {
        "saw": f"Towards the {words}, outside the scribed lines.",
        "bore": "Inside the scribed lines only.",
    }


def test_a_tenon_that_stands_alone_has_some_mate() -> None:
    """Its mate is not in the frame, so it has no name."""
    joint = tenon(scribed=True)
    (tenoned,) = features(joint, frame(timber("post"), joint))
    assert tenoned.tasks[1].title.endswith("to its mate")


def test_the_stick_is_still_long_enough() -> None:
    """The sizes say how much wood it needs, so what is ordered and squared has its figures."""
    steps = _steps("post", end_allowance="1")
    assert read(steps["end/overall"]) == (length("7' 11") + length("6"),)


def _overall_of_placed(**words: object) -> Step:
    post = timber("post", length="8'", at={"east": "4'", "north": "0"})
    receiver = sill(
        length=None, at={"north": "0", "up": "0"}, reference_end_at="0", far_end_at="16'"
    )
    joint = tenon(into="sill", **words)
    return lay_out(frame(post, receiver, joint), "post").step("end/overall")


def test_a_timber_with_a_scribed_end_is_left_long() -> None:
    """Where its shoulder comes is only about right, and the overall line says so."""
    assert "Leave it long" in _overall_of_placed(scribed=True).caution
    assert "Leave it long" not in _overall_of_placed().caution


def test_a_scribed_tenon_that_goes_through_waits_for_the_wood_it_passes() -> None:
    """Its length follows that, so it is measured there, scribed or not."""
    built = girt_through({"scribed": True}, pegs=None)
    girt = lay_out(built, "girt")
    waits = {each for step in girt.steps for each in awaited(girt, step)}
    assert Awaits("post", f"{MORTISE}/section") in waits
    for each in waits:
        assert lay_out(built, each.timber).step(each.step).asks is Asks.SECTION
