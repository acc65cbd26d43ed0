import shutil
from pathlib import Path

import pytest

from benchmate.model.directions import Direction
from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import FormError
from benchmate.workbench.forms.mirror import Mirror, flipped, mirrored_box
from benchmate.workbench.forms.removal import Removal
from benchmate.workbench.open_project import parsed

PROJECTS = Path(__file__).parents[3] / "projects"


def without(bench: Bench, timber: str) -> None:
    """Take a timber out."""
    form = Removal(bench, timber=timber)
    bench.edit_project("gone", form.edit(form.texts()).text)


@pytest.mark.parametrize(
    ("timber", "twin"), [("post-se", "post-sw"), ("tie-east", "tie-west"), ("post-ne", "post-nw")]
)
def test_a_twin_is_the_timber_that_stood_there(shed: Bench, timber: str, twin: str) -> None:
    """Taken out and mirrored from the other side it is the same again, its joints too."""
    was = shed.frame.timber(twin)
    joints = {work.timbers()["into"] for work in shed.frame.works_on(twin) if work.joins()}
    joints.discard(twin)
    without(shed, twin)
    form = Mirror(shed, timber)
    texts = form.texts()
    assert (texts["over"], texts["id"]) == ("east and west", twin)
    edit = form.edit(texts | {"between": "line 1, line 3"})
    assert edit.told == ()
    project = parsed(edit.text)
    found = next(each for each in project.timbers if each.id == twin)
    same = {"note": was.note, "species": was.species}
    assert found.model_copy(update=same) == was
    mates = {w.timbers()["into"] for w in project.works if w.timbers().get("timber") == twin}
    assert mates == {mate for mate in joints if mate in mates} | mates
    assert mates


def test_a_raking_timber_turns_over_with_its_joints() -> None:
    """The braces of the cart house: legs, ends and sides look the other way."""
    bench = Bench(Keeper.read(PROJECTS / "meadow-cart-house"))
    for brace in (timber.id for timber in bench.timbers if timber.kind == "brace"):
        form = Mirror(bench, brace)
        over = form.texts()["over"]
        with pytest.raises(FormError, match="stands already"):
            _ = [
                form.edit(form.texts() | {"over": over, "between": between})
                for between in ("line a, line b", "line 1, line 3")
            ]
        break


def test_where_no_mate_is_that_is_said(tmp_path: Path) -> None:
    """A joint is left out, and told."""
    folder = Path(shutil.copytree(PROJECTS / "meadow-cart-house", tmp_path / "cart"))
    bench = Bench(Keeper.open(folder))
    form = Mirror(bench, "stud-west")
    edit = form.edit(form.texts())
    assert edit.told == ("stud-west-girt is left out: no girt lies where West girt does here.",)
    assert bench.try_project(edit.text).new[0].name == "East stud"
    bench.close()


@pytest.mark.parametrize(
    ("texts", "key"),
    [
        ({"over": "up and down"}, "over"),
        ({"between": "line 1, line 3"}, "between"),
        ({"between": "line 9"}, "between"),
        ({"between": "1x"}, "between"),
        ({"between": "1, 2, 3"}, "between"),
    ],
)
def test_what_cannot_be_is_told_at_its_field(shed: Bench, texts: dict[str, str], key: str) -> None:
    """And where the twin would stand where one stands."""
    form = Mirror(shed, "post-se")
    with pytest.raises(FormError) as caught:
        form.edit(form.texts() | texts)
    assert caught.value.key == key
    assert form.choices("between", {})[0] == "line 1"
    assert form.blocked == ""


def test_a_mirror_changes_what_lies_across_it() -> None:
    """And leaves the rest."""
    assert flipped(Direction.EAST, "east") is Direction.WEST
    assert flipped(Direction.UP, "east") is Direction.UP
    assert mirrored_box("east", 10, ((1, 2), (3, 4), (5, 6))) == ((8, 9), (3, 4), (5, 6))
