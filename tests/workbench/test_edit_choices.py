from pathlib import Path

from benchmate.store.keeper import Keeper
from benchmate.store.tables import WORK_FAMILIES
from benchmate.workbench.bench import Bench
from benchmate.workbench.edit_choices import choices, families, work_of
from benchmate.workbench.forms.form import OpenEnd


def test_the_list_goes_by_the_timber_and_the_step_in_hand(shed: Bench) -> None:
    """The joint of the step can be changed at once; every form opens."""
    found = choices(shed, "post-se", "foot-tenon")
    texts = [each.text for each in found.choices]
    assert texts[:2] == ["Change SE post", "Change se-foot"]
    assert "Remove se-foot" in texts
    plain = [each.text for each in choices(shed, "post-se", "stick").choices]
    assert not any("se-foot" in text for text in plain)
    for choice in found.choices:
        if choice.form is not None:
            assert choice.form().title
        assert (choice.form is None) is (choice.more is not None)


def test_lists_lead_on(shed: Bench) -> None:
    """To the timber's joints, the families, and the project."""
    more = {each.text: each.more for each in choices(shed, "post-se", "").choices if each.more}
    joints = more["A joint of SE post"]()
    assert [each.text.partition(":")[0] for each in joints.choices][:2] == ["se-foot", "se-head"]
    assert len(more["A new joint or chamfer"]().choices) == len(WORK_FAMILIES)
    project = more["The project"]()
    titles = [each.form().title for each in project.choices if each.form]
    assert titles[:1] == ["The project and the shop's practice"]
    assert all(each.form() for each in joints.choices if each.form)


def test_an_open_end_is_offered_what_can_settle_it(shed: Bench) -> None:
    """No chamfer, no rafter seat; each says what it joins."""
    found = families(shed, OpenEnd("post-se", "foot"))
    names = [each.text for each in found.choices]
    assert found.title == "Which joint at the foot of post-se?"
    assert "tenon" in names
    assert not {"chamfer", "rafter seat"} & set(names)
    assert all(each.beside for each in found.choices)


def test_a_chamfer_is_found_by_what_it_makes(shed: Bench) -> None:
    """As a joint is."""
    feature = next(f.id for f in shed.walk("post-se").layout.features if "chamfer" in f.id)
    found = work_of(shed.frame, "post-se", feature)
    assert found is not None
    assert found.id in ("inside-chamfer", "door-chamfer")
    assert work_of(shed.frame, "post-se", "stick") is None


def test_an_empty_project_can_be_begun(tmp_path: Path) -> None:
    """With a timber, or its names."""
    (tmp_path / "project.toml").write_text('format = 1\nname = "Bare"\n')
    bench = Bench(Keeper.open(tmp_path))
    assert [each.text for each in choices(bench, "", "").choices] == [
        "A new timber",
        "A new joint or chamfer",
        "The project",
    ]
