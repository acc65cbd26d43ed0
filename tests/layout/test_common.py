"""The steps of the whole stick: choose, crown, back-check, label."""

import pytest

from benchmate.layout.common import mated_back_check, stick_tasks
from benchmate.layout.walk import features_on
from benchmate.model.directions import Face
from benchmate.model.feature import Stage, Task
from tests.builders import corners, frame, length, sill, tenon, timber
from tests.joinery.brace.bays import bay


def _tasks(timber_id: str) -> dict[str, Task]:
    built = corners()
    found = stick_tasks(built.stick(timber_id), features_on(built, timber_id))
    return {task.id: task for task in found}


def test_every_stick_is_chosen_checked_back_and_labelled() -> None:
    """Four tasks frame the walk, whatever the joints."""
    assert {name: task.stage for name, task in _tasks("sill").items()} == {
        "faces": Stage.CHOOSE,
        "crown": Stage.CHOOSE,
        "back-check": Stage.BACK_CHECK,
        "label": Stage.LABEL,
    }


@pytest.mark.parametrize(("post", "second"), [("post-sw", "West face"), ("post-se", "East face")])
def test_the_reference_faces_follow_the_hand(post: str, second: str) -> None:
    """The words name both faces and the end, mirrored on the other corner."""
    faces = _tasks(post)["faces"]
    assert faces.faces == (Face.FIRST, Face.SECOND)
    for word in ("South face", second, "foot"):
        assert word in faces.why
    assert faces.caution


def test_crowns_look_outwards_on_posts_and_up_on_level_timbers() -> None:
    """Common practice: what sags or bows is turned against the load."""
    assert "outwards" in _tasks("post-sw")["crown"].why
    assert "Crown up" in _tasks("sill")["crown"].why


def test_the_crown_of_a_raking_timber_goes_to_its_reference_edge() -> None:
    """A brace bows out of its triangle: trade notes 1.4, common practice."""
    built = bay()
    found = stick_tasks(built.stick("brace"), features_on(built, "brace"))
    crown = next(task for task in found if task.id == "crown")
    assert crown.why.startswith("Crown towards the underside, its reference edge.")


def test_the_back_check_reads_every_mark_from_the_far_end() -> None:
    """Each struck mark along the stick, and the overall length, add up to the same stick."""
    back = _tasks("post-sw")["back-check"]
    assert back.readings[0].value == length("8' 8")
    assert [(reading.key, reading.value) for reading in back.readings[1:]] == [
        ("foot-tenon/shoulder", length("8' 3")),
        ("inside-chamfer/foot-stop", length("8' 3 ") - length("15-1/2")),
        ("inside-chamfer/head-stop", length("10")),
        ("head-tenon/shoulder", length("4")),
    ]
    assert back.readings[1].hook == "overall line to the foot tenon, shoulder line"


def test_marks_that_wait_are_read_back_with_their_own_joint() -> None:
    """The sill's own back-check has only its ends; each mortise has both its ends."""
    built = corners()
    stick, features = built.stick("sill"), features_on(built, "sill")
    assert len(_tasks("sill")["back-check"].readings) == 1
    found = {feature.id: mated_back_check(stick, feature) for feature in features}
    assert found["end"] is None
    read = found["sw-foot-mortise"], found["se-foot-mortise"]
    assert [reading.value for task in read if task for reading in task.readings] == [
        length("16'") - length(at) for at in ("1-1/4", "6", "15' 6", "15' 10-3/4")
    ]


def test_ends_and_guide_blocks_are_not_read_back() -> None:
    """Only lines to cut to are, so a stick without joints has none."""
    built = frame(timber("post"), sill(), tenon(end_allowance="1"))
    tasks = stick_tasks(built.stick("sill"), features_on(built, "sill"))
    (back,) = (task for task in tasks if task.id == "back-check")
    assert len(back.readings) == 1
