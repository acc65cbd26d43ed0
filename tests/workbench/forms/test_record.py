from benchmate.joinery import FAMILIES
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import OpenEnd
from benchmate.workbench.forms.record import (
    HeadForm,
    NewTimber,
    NewWork,
    change_timber,
    change_work,
    ends_of,
)
from benchmate.workbench.open_project import parsed

TENON = next(each for each in FAMILIES if each.name == "tenon")
CHAMFER = next(each for each in FAMILIES if each.name == "chamfer")


def test_a_form_that_is_not_touched_changes_nothing(shed: Bench) -> None:
    """For every timber, joint and chamfer, and the head."""
    forms = [change_timber(shed, timber.id) for timber in shed.timbers]
    forms += [change_work(shed, work.id) for work in shed.project.works]
    for form in (*forms, HeadForm(shed)):
        assert form.edit(form.texts()).text == shed.project_text()


def test_words_are_offered_by_what_a_field_holds(shed: Bench) -> None:
    """The timber's own ends, the mates it touches first, lines for a place, levels for a height."""
    form = change_work(shed, "tie-west-south")
    texts = form.texts()
    assert form.choices("end", texts) == ("south", "north")
    assert form.choices("into", texts)[:2] == ("post-sw", "post-nw")
    assert form.choices("into", texts | {"end": "north"})[0] == "post-nw"
    assert form.choices("timber", texts)[0] == "sill-south"
    assert form.choices("end", texts | {"timber": ""})[:2] == ("foot", "head")
    assert form.choices("through", texts) == ("yes", "no")
    assert form.choices("length", texts) == ()
    assert "tie-west-north" in form.choices("meets", texts)
    timber = change_timber(shed, "tie-west")
    assert timber.choices("at.east", {})[0] == "line 1"
    assert timber.choices("at.up", {})[0] == "sill top"
    assert timber.choices("section", {})[0] == "sill"
    assert timber.choices("first_face", {}) == ("east", "west", "north", "south", "up", "down")
    assert "post" in timber.choices("kind", {})
    assert timber.choices("name", {}) == ()
    chamfer = change_work(shed, "door-chamfer")
    assert "meets" not in chamfer.texts()
    assert chamfer.choices("on", {})[0] == "sill-south"


def test_a_new_timber_begins_as_the_one_in_hand(shed: Bench) -> None:
    """Its kind and section; its name and id are offered."""
    form = NewTimber(shed, "joist-e3")
    texts = form.texts()
    assert (texts["kind"], texts["section"], texts["name"]) == ("joist", "joist", "")
    assert form.choices("name", texts) == ("East joist 4",)
    assert form.choices("id", texts | {"name": "East joist 4"}) == ("east-joist-4",)
    assert form.choices("name", texts | {"kind": "boat"}) == ()
    assert form.choices("id", texts) == ()
    assert NewTimber(shed).texts()["kind"] == ""


def test_a_new_joint_is_called_after_its_timber_and_end(shed: Bench) -> None:
    """And takes out what the timber said of that end before."""
    form = NewWork(shed, TENON, OpenEnd("plate-south", "west"))
    texts = form.texts()
    assert (texts["id"], texts["timber"], texts["end"]) == (
        "plate-south-west",
        "plate-south",
        "west",
    )
    assert form.choices("id", texts | {"end": "east"}) == ("plate-south-east",)
    assert form.choices("id", texts | {"end": ""}) == ()
    sizes = {"into": "tie-west", "length": "3", "thickness": "2", "set_back": "2"}
    edit = form.edit(texts | sizes)
    assert "says where its west end comes" in edit.told[0]
    assert form.edit(texts | sizes | {"length": "x"}).told == ()
    chamfer = NewWork(shed, CHAMFER, OpenEnd("post-sm", ""))
    assert chamfer.texts()["on"] == "post-sm"
    stops = {
        "id": "c",
        "arrises": "far-far",
        "leg": "1/2",
        "near_stop.level": "floor top",
        "far_stop.level": "tie top - 1'",
    }
    edit = chamfer.edit(chamfer.texts() | stops)
    assert parsed(edit.text).works[-1].id == "c"


def test_what_is_usual_is_told_of_the_timber_typed(shed: Bench) -> None:
    """A quarter of a post."""
    form = NewWork(shed, TENON, OpenEnd("post-se", "foot"))
    found = form.usual("thickness", form.texts())
    assert found is not None
    assert found.text == "1-3/4"
    assert tuple(ends_of(shed.frame.timber("post-se"))) == ("foot", "head")
