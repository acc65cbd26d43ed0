"""The tasks of either half: their order, their one figure, what is measured as cut."""

import pytest

from benchmate.frame.practice import AS_CUT
from benchmate.joinery.scarf.cutting import half_sizes, half_tasks
from benchmate.joinery.scarf.shape import Half
from benchmate.layout.step import Layout
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import lengths, read, real, set_in_words
from tests.joinery.scarf.plates import KINDS, both, plate

SQUARE = {"rule": "square", "inner": "7-1/2 x 7-1/2"}
END = {"one": "east-end-scarf", "other": "west-end-scarf"}


def tasks(kind: str, **words: object) -> tuple[dict[str, Task], dict[str, Task]]:
    """The tasks of both halves by id, that of `one` first."""
    made = plate(kind, **words)  # type: ignore[arg-type]
    one, other = (half_tasks(half, made.project.tape) for half in both(made))
    return {task.id: task for task in one}, {task.id: task for task in other}


def halves(kind: str, **words: object) -> tuple[Half, Half]:
    """Both halves of a check plate."""
    return both(plate(kind, **words))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("kind", "joint", "ids"),
    [
        ("half lap", {}, ["knife", "saw-shoulder", "cut-lap", "pare"]),
        ("stop-splayed", {}, ["knife", "saw-shoulder", "cut-lap", "pare"]),
        (
            "under-squinted",
            {"key": "1-1/2"},
            ["knife", "saw-shoulder", "saw-tip", "cut-lap", "pare", "cut-key-slot"],
        ),
        (
            "bridled",
            {},
            [
                *["knife", "saw-shoulder", "cut-lap", "pare", "cut-tongue-near", "cut-tongue-far"],
                *["saw-slot", "chop-slot", "pare-slot", "pare-tongue"],
            ],
        ),
    ],
)
def test_tasks_come_in_the_order_of_the_work(
    kind: str, joint: dict[str, object], ids: list[str]
) -> None:
    """The leading stick is measured as cut; the other is tried together with it."""
    one, other = tasks(kind, joint=joint)
    assert list(one) == ["section", *ids, AS_CUT]
    assert list(other) == ["section", *ids, "try"]


@pytest.mark.parametrize("kind", KINDS)
def test_one_figure_to_one_task(kind: str) -> None:
    """Only measuring lists several."""
    for found in tasks(kind):
        for task in found.values():
            assert len(task.readings) <= 1 or task.asks is not Asks.NOTHING


def test_the_shoulder_is_sawn_to_the_lap_from_the_face_that_goes() -> None:
    """2" of butt; 2-1/4" on a stick that is 1/4" over, which is said to follow the stick."""
    one, other = tasks("stop-splayed", real={"one": real({"all": {"first": "8-1/4"}})})
    (reading,) = one["saw-shoulder"].readings
    assert (reading.value, reading.hook) == (lengths("2-1/4")[0], "underside")
    assert "Not measured here yet" not in one["saw-shoulder"].caution
    (reading,) = other["saw-shoulder"].readings
    assert (reading.value, reading.hook) == (lengths("2")[0], "top face")
    drawn, top = tasks("stop-splayed")
    assert "Not measured here yet" in drawn["saw-shoulder"].caution
    assert "Not measured here yet" not in top["saw-shoulder"].caution
    assert "pinch" in one["saw-shoulder"].caution


def test_a_leaning_abutment_and_its_tip_are_sawn_to_their_setting() -> None:
    """14 degrees off square; a square one needs no setting."""
    one, _ = tasks("under-squinted")
    assert one["saw-shoulder"].draws == "abutment"
    assert one["saw-tip"].draws == "tip"
    assert "saw 14° off" in set_in_words(one["saw-shoulder"].setting)
    assert one["saw-shoulder"].setting == one["saw-tip"].setting
    plain, _ = tasks("stop-splayed")
    assert (plain["saw-shoulder"].setting, plain["saw-shoulder"].draws) == (None, "shoulder")


def test_the_lap_is_left_as_thick_as_its_line_says() -> None:
    """2" at the tip from the top; from the underside a stick 1/8" under leaves 1-7/8"."""
    one, other = tasks("stop-splayed", real={"other": real({"all": {"first": "7-7/8"}})})
    for name in ("cut-lap", "pare"):
        (reading,) = one[name].readings
        assert (reading.value, reading.hook) == (lengths("2")[0], "top face")
        (reading,) = other[name].readings
        assert (reading.value, reading.hook) == (lengths("1-7/8")[0], "underside")
    drawn, after = tasks("stop-splayed")
    assert "Not measured here yet" not in drawn["cut-lap"].caution
    assert "Not measured here yet" in after["cut-lap"].caution


def test_by_square_rule_faces_are_reduced_before_the_lap_is_measured_from_them() -> None:
    """From a face still 1/2" over, the lap would come out 1/2" thin."""
    _, other = tasks("half lap", one=SQUARE, other=SQUARE)
    order = list(other)
    assert order.index("reduce-first") < order.index("cut-lap")
    assert other["reduce-first"].readings[0].value == lengths("1/2")[0]
    (reading,) = other["cut-lap"].readings
    assert (reading.value, reading.hook) == (lengths("3-3/4")[0], "reduced underside")
    assert "Not measured here yet" in other["reduce-first"].caution
    assert "Not measured here yet" not in other["cut-lap"].caution


@pytest.mark.parametrize(
    ("kind", "sizes"),
    [
        ("half lap", {"thickness": "4"}),
        ("stop-splayed", {"thickness": "2", "width": "6"}),
        ("under-squinted", {"thickness": "2", "width": "6"}),
        ("bridled", {"thickness": "1-1/2", "width": "4", "length": "3"}),
    ],
)
def test_only_the_leading_lap_is_measured_as_cut(kind: str, sizes: dict[str, str]) -> None:
    """Its sizes stand in the step in the order they are kept in."""
    one, other = halves(kind)
    found = half_sizes(one)
    assert {size.name: size.laid_out for size in found} == dict(
        zip(sizes, lengths(*sizes.values()), strict=True)
    )
    assert half_sizes(other) == ()
    layout = lay_out(plate(kind), "one")
    step = layout.step(f"{END['one']}/{AS_CUT}")
    assert read(step) == tuple(size.laid_out for size in found)
    made = real(as_cut={END["one"]: dict.fromkeys(sizes, "1-1/4")})
    step = lay_out(plate(kind, real={"one": made}), "one").step(f"{END['one']}/{AS_CUT}")
    assert set(read(step)) == set(lengths("1-1/4"))
    assert "which both sticks share" in step.caution


def laid(timber: str) -> Layout:
    """One stick of the half-lapped check plate."""
    return lay_out(plate(), timber)


def test_both_are_tried_together_at_the_last() -> None:
    """28' from end to end: the lap counts once (trade notes 5.3)."""
    step = laid("other").step("west-end-scarf/try")
    assert (read(step), step.stage) == (lengths("28'"), Stage.FINISH)
    assert "top face and the South face" in step.why


def test_before_the_first_cut_he_is_to_look_which_half_goes() -> None:
    """The two faces are named on both sticks, the other way round."""
    kept = {name: laid(name).step(f"{END[name]}/knife").caution for name in END}
    assert "keeps its top face and Other its underside" in kept["one"]
    assert "keeps its underside and One its top face" in kept["other"]
