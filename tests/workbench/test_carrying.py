from benchmate.store.editing import Draft
from benchmate.workbench.bench import Bench
from benchmate.workbench.carrying import Carried, carried, mate_at, stands_at
from benchmate.workbench.open_project import parsed
from benchmate.workbench.touching import Box

FOOT = 304_800_000


def east(feet: int, box: Box) -> Box:
    """A box so far east."""
    (low, high), *rest = box
    return (low + feet * FOOT, high + feet * FOOT), rest[0], rest[1]


def test_a_mate_is_the_timber_there_or_its_like(shed: Bench) -> None:
    """A post moved along the sill stays on it; a tie moved off its posts has none."""
    assert mate_at(shed.frame, "post-sw", "sill-south", lambda box: east(2, box)) == "sill-south"
    assert mate_at(shed.frame, "tie-west", "post-sw", lambda box: east(2, box)) is None
    bay = 80 * 25_400_000

    def next_bent(box: Box) -> Box:
        (low, high), *rest = box
        return (low + bay, high + bay), rest[0], rest[1]

    assert mate_at(shed.frame, "tie-west", "post-sw", next_bent) == "post-sm"


def test_a_place_that_is_taken_is_known(shed: Bench) -> None:
    """By the box a timber fills."""
    found = stands_at(shed.frame, "post-sw", lambda box: box)
    assert found is not None
    assert found.id == "post-sw"
    assert stands_at(shed.frame, "post-sw", lambda box: east(1, box)) is None


def test_joints_and_chamfers_go_along(shed: Bench) -> None:
    """Behind those of the timber it is like; a joint without a mate is told."""
    draft = Draft(shed.project_text())
    stored = draft.value(("timber", 5)) | {
        "id": "post-x",
        "name": "X post",
        "at": {"east": "line 1 + 2'", "north": "line a"},
    }
    goes = Carried(
        stored=stored, moved=lambda box: east(2, box), turned=dict, joint=lambda id_: f"{id_}-x"
    )
    after, told = carried(draft, shed.frame, "post-sw", goes, "post-sw")
    assert told == ()
    project = parsed(after.text)
    works = [work.id for work in project.works if "post-x" in work.timbers().values()]
    assert works == ["sw-foot-x", "sw-head-x", "inside-chamfer", "door-chamfer"]
    ids = [each["id"] for each in after.data["joint"]]
    assert ids.index("sw-foot-x") == ids.index("sw-head") + 1
    far = Carried(
        stored=stored, moved=lambda box: east(99, box), turned=dict, joint=lambda id_: f"{id_}-x"
    )
    _, told = carried(draft, shed.frame, "post-sw", far, "post-sw")
    assert told[0] == "sw-foot is left out: no sill lies where South sill does here."
