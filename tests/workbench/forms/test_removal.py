from dataclasses import replace

import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.removal import Removal
from benchmate.workbench.keeping import BadProjectError
from benchmate.workbench.open_project import parsed


def test_a_post_goes_and_the_tie_stays_where_it_is(shed: Bench) -> None:
    """Its joints by name, its ticks kept, and the end that was in it at the place it had."""
    form = Removal(shed, timber="post-se")
    joints, ticks = form.says({})
    assert joints == (
        "With it go se-foot (South sill), se-head (South plate), tie-east-south (East tie)."
    )
    assert ticks.startswith("Its 9 ticks and its sizes and notes stay in progress/post-se.toml: ")
    was = shed.frame.place("tie-east")
    project = parsed(form.edit(form.texts()).text)
    shed.edit_project("gone", form.edit(form.texts()).text)
    assert shed.frame.place("tie-east") == was
    assert "post-se" not in {timber.id for timber in project.timbers}
    assert form.edit(form.texts()).timber == "sill-south"


def test_an_end_that_is_left_open_is_told_at_its_field(shed: Bench) -> None:
    """Nothing is settled in silence."""
    form = Removal(shed, timber="post-se")
    edit = form.edit({})
    with pytest.raises(BadProjectError) as caught:
        shed.try_project(edit.text)
    (problem,) = caught.value.problems
    assert form.field_of(problem, edit.path) == "tie-east.reference_end_at"
    assert form.field_of(replace(problem, key="timber[1].id"), edit.path) == ""


def test_a_joint_alone(shed: Bench) -> None:
    """No ticks go, and none is spoken of; a timber without any says so."""
    form = Removal(shed, ("tie-west-south",))
    assert form.says({}) == ()
    assert [blank.key for blank in form.blanks] == ["tie-west.reference_end_at"]
    assert form.title == "Remove tie-west-south"
    bare = Removal(shed, timber="joist-e1")
    assert bare.says({})[1] == "Nothing is ticked, measured or noted on it."
