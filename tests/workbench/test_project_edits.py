import pytest

from benchmate.joinery import FAMILIES
from benchmate.model.directions import Direction
from benchmate.model.project import Project, Timber
from benchmate.store.editing import Draft
from benchmate.workbench.bench import Bench
from benchmate.workbench.open_project import parsed
from benchmate.workbench.project_edits import (
    changed,
    coordinate_text,
    entries_of,
    figure_text,
    loosened,
    path_of,
    renamed,
    settled_by,
    with_head,
    with_timber,
    with_work,
    without,
    works_of,
)
from benchmate.workbench.record_fields import stored_from, texts_of

TENON = next(each.record for each in FAMILIES if each.name == "tenon")

TIE = {
    "id": "tie-extra",
    "name": "Extra tie",
    "kind": "tie",
    "section": "tie",
    "first_face": "up",
    "second_face": "west",
    "reference_end": "south",
    "at": {"east": "line 2 + 3'", "up": "tie top"},
    "reference_end_at": "line a",
    "far_end_at": "line b",
}


def test_a_timber_comes_behind_the_last_of_its_kind(shed: Bench) -> None:
    """And behind that one's joints where they stand with it."""
    edit = with_timber(Draft(shed.project_text()), TIE)
    project = parsed(edit.text)
    ids = [timber.id for timber in project.timbers]
    assert ids[ids.index("tie-extra") - 1] == "tie-east"
    assert edit.path == ("timber", ids.index("tie-extra"))
    assert Draft(edit.text).drop(edit.path).text == shed.project_text()
    mixed = Draft(
        'format = 1\n[[timber]]\nid = "a"\nkind = "k"\n[[joint]]\ntimber = "a"\n'
        '[[timber]]\nid = "b"\n'
    )
    after = with_timber(mixed, {"id": "c", "kind": "k"})
    assert [path[0] for path in entries_of(Draft(after.text))] == [
        "timber",
        "joint",
        "timber",
        "timber",
    ]
    assert with_timber(Draft("format = 1\n"), {"id": "a"}).text.endswith('[[timber]]\nid = "a"\n')


def test_a_joint_comes_behind_the_others_of_its_timber(shed: Bench) -> None:
    """Or behind its timber where joints stand with theirs, or last."""
    stored = {"id": "x", "family": "tenon", "timber": "girder"}
    draft = Draft(with_work(Draft(shed.project_text()), "joint", stored).text)
    ids = [each["id"] for each in draft.data["joint"]]
    assert ids[ids.index("x") - 1] == "girder-north"
    strange = with_work(Draft(shed.project_text()), "joint", stored | {"timber": "nobody"})
    assert Draft(strange.text).data["joint"][-1]["id"] == "x"
    mixed = Draft(
        'format = 1\n[[timber]]\nid = "a"\n[[joint]]\ntimber = "a"\n[[timber]]\nid = "b"\n'
    )
    after = Draft(with_work(mixed, "joint", {"id": "x", "timber": "b"}).text)
    assert entries_of(after)[-1] == ("joint", 1)
    assert "joint" not in Draft("format = 1\n").data
    assert with_work(Draft("format = 1\n"), "joint", {"id": "x"}).path == ("joint", 0)


def test_what_a_joint_settles_is_not_said_twice(shed: Bench) -> None:
    """The end typed before is taken out, and that is told."""
    edit = with_timber(Draft(shed.project_text()), TIE)
    timber = Timber.model_validate(TIE)
    after = settled_by(edit, timber, [Direction.NORTH])
    stored = Draft(after.text).value(after.path)
    assert "far_end_at" not in stored
    assert "reference_end_at" in stored
    (told,) = after.told
    assert told.startswith("Extra tie says where its north end comes (line b); the joint settles")


def test_a_record_is_changed_key_by_key(shed: Bench) -> None:
    """Only the lines of the keys that differ."""
    path = path_of(shed.project, "se-foot", timber=False)
    draft = Draft(shed.project_text())
    texts = texts_of(TENON, draft.value(path)) | {"relief_reference": "", "housing": "1/4"}
    edit = changed(draft, shed.project, path, TENON, stored_from(TENON, texts))
    was, now = shed.project_text().splitlines(), edit.text.splitlines()
    assert len(was) == len(now)
    assert Draft(edit.text).value(path)["housing"] == "1/4"
    assert edit.moves == ()
    with pytest.raises(KeyError):
        path_of(shed.project, "nobody", timber=True)


def test_the_head_is_changed_in_place(shed: Bench) -> None:
    """Keys that are emptied go, and a new one takes its place."""
    draft = Draft(shed.project_text())
    texts = texts_of(Project, draft.data) | {"note": "", "shop.least_wood": "3/4"}
    edit = with_head(draft, Project, stored_from(Project, texts))
    assert "note = " not in edit.text.partition("[shop]")[0]
    assert 'bottom_clearance = "1/8"\nleast_wood = "3/4"\n' in edit.text
    assert parsed(edit.text).timbers == shed.project.timbers


def test_a_timber_goes_with_all_that_names_it(shed: Bench) -> None:
    """Its joints, its place in chamfers, and what others say they meet."""
    draft, gone = without(Draft(shed.project_text()), shed.project, (), "post-se")
    assert gone == ("se-foot", "se-head", "tie-east-south")
    assert "post-se" not in draft.text
    assert draft.value(("chamfer", 1, "on")) == ["post-sw"]
    (loose,) = loosened(shed.frame, gone, "post-se")
    assert (loose.timber.id, loose.key, loose.text) == ("tie-east", "reference_end_at", "6-1/2 in")
    met = Draft(shed.project_text()).put(("joint", 0, "meets"), ["sw-foot"])
    rest, _ = without(met, parsed(met.text), ("sw-foot",))
    assert rest.value(("joint", 0, "meets")) is None


def test_parts_of_joints_are_moved_by_their_new_names(shed: Bench) -> None:
    """On the timber that receives it; the tenon itself is called after its end."""
    _, moves = renamed(Draft(shed.project_text()), shed.project, {"post-sw": "x"}, {"sw-foot": "y"})
    found = {move.old: move for move in moves}
    assert found["post-sw"].new == "x"
    assert found["sill-south"].features == {"sw-foot-mortise": "y-mortise"}


def test_coordinates_are_told_by_what_lies_there(shed: Bench) -> None:
    """A line or a level, or else the exact figure."""
    assert coordinate_text(shed.frame, 0, "north") == "line a"
    assert coordinate_text(shed.frame, 0, "up") == "sill top"
    assert figure_text(-25_400_000) == "-1 in"
    assert [work.id for work in works_of(shed.project, "tie-west")] == [
        "tie-west-south",
        "tie-west-north",
    ]
