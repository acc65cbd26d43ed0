"""Which joint's cut takes away the face that another's mortise opens on."""

from dataclasses import replace

import pytest

from benchmate.layout.floors import floors_on, last_making
from benchmate.layout.walk import features_on
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Made, Stage, Task
from benchmate.model.floors import Floor
from benchmate.model.solids import Axis, Cut, Plane, above, below
from benchmate.model.stick import Stick
from tests.builders import frame, length, timber
from tests.joinery.tenon.head_ties import MORTISE, Lie, head_tie

SAWN = Task(id="saw", stage=Stage.CUT, title="Saw it", why="")


def _stick() -> Stick:
    """A post 7 x 8 that looks south and west."""
    return frame(timber("post")).stick("post")


def _box(along: tuple[str, str], across: tuple[str, str], *deep: Plane) -> Cut:
    return Cut(
        (
            above(Axis.ALONG, length(along[0])),
            below(Axis.ALONG, length(along[1])),
            above(Axis.SECOND, length(across[0])),
            below(Axis.SECOND, length(across[1])),
            *deep,
        )
    )


def _joint(name: str, *cuts: Cut, stage: Stage = Stage.CUT) -> Feature:
    return Feature(
        id=name,
        timber="post",
        title=f"Work of {name}",
        at=length("0"),
        cuts=cuts,
        tasks=(replace(SAWN, stage=stage),),
        joint=name,
    )


def _notch(at: str = "1", *, wide: tuple[str, str] = ("20", "30")) -> Feature:
    return _joint("tie", _box(wide, ("0", "8"), below(Axis.FIRST, length(at))))


def _mortise(deep: str = "4", *, stage: Stage = Stage.CUT) -> Feature:
    cut = _box(("22", "28"), ("3", "5"), below(Axis.FIRST, length(deep)))
    return _joint("girt", cut, stage=stage)


def _over(*features: Feature) -> set[tuple[str, str, Face, Length]]:
    floors = floors_on(_stick(), features)
    return {(each.under, each.over, each.face, each.at) for each in floors}


def test_a_mortise_in_a_notch_opens_on_its_floor() -> None:
    """Whichever of the two is named first; and the notch opens on nothing of the mortise's."""
    found = {("girt", "tie", Face.FIRST, length("1"))}
    assert _over(_mortise(), _notch()) == _over(_notch(), _mortise()) == found


def test_the_floor_is_called_by_the_work_that_leaves_it() -> None:
    """As the framer reads it in the list."""
    (found,) = floors_on(_stick(), (_notch(), _mortise()))
    assert found == Floor(
        timber="post",
        under="girt",
        over="tie",
        face=Face.FIRST,
        at=length("1"),
        name="work of tie",
    )


@pytest.mark.parametrize("wide", [("23", "30"), ("20", "27"), ("22-1/64", "30"), ("40", "50")])
def test_a_notch_over_part_of_a_mortise_leaves_it_no_floor(wide: tuple[str, str]) -> None:
    """Then some of its lines are left, and it has no one depth."""
    assert _over(_notch(wide=wide), _mortise()) == set()


def test_a_notch_that_ends_with_the_mortise_takes_all_its_mouth() -> None:
    """Edge on edge nothing of the face is left inside."""
    assert _over(_notch(wide=("22", "28")), _mortise())


@pytest.mark.parametrize("deep", ["1/2", "1"])
def test_a_mortise_no_deeper_than_the_notch_has_no_floor(deep: str) -> None:
    """Nothing of it is left to make: that the two meet is told as a finding."""
    assert _over(_notch("1"), _mortise(deep)) == set()


def test_one_that_goes_right_through_opens_on_a_floor_at_either_face() -> None:
    """Its bottom bounds it nowhere, so it always goes deeper."""
    through = _joint("girt", _box(("22", "28"), ("3", "5")))
    back = _joint("plate", _box(("20", "30"), ("0", "8"), above(Axis.FIRST, length("6"))))
    assert _over(through, _notch(), back) == {
        ("girt", "tie", Face.FIRST, length("1")),
        ("girt", "plate", Face.FAR_FIRST, length("6")),
    }


def test_a_slope_is_no_floor() -> None:
    """There the depth differs from end to end."""
    sloping = _joint("tie", _box(("20", "30"), ("0", "8"), Plane((1, 9, 0), length("40").nm)))
    assert _over(sloping, _mortise()) == set()


def test_a_slot_right_through_is_no_floor() -> None:
    """It leaves nothing to open on."""
    assert _over(_joint("tie", _box(("20", "30"), ("0", "8"))), _mortise()) == set()


def test_two_cuts_of_one_joint_are_its_own_business() -> None:
    """A housing and its mortise know of one another."""
    housed = replace(_notch(), joint="girt")
    assert _over(housed, _mortise()) == set()


@pytest.mark.parametrize("stage", [Stage.KNIFE, Stage.FIT, Stage.FINISH])
def test_what_is_made_in_another_spell_says_itself_what_comes_first(stage: Stage) -> None:
    """As the hole in a corner's tenon does, which is tried before it is cut."""
    assert _over(_notch(), _mortise(stage=stage)) == set()


def test_chamfers_and_ends_are_no_joints() -> None:
    """Everything is cut away from the rough end, and no mortise opens on that."""
    assert _over(replace(_notch(), joint=""), _mortise()) == set()


def test_a_tie_let_into_its_plate_lies_over_the_post_s_mortise_in_both() -> None:
    """By real records: the plate is notched from above, the tie from below."""
    built = head_tie(lap={})
    found = {
        (each.timber, each.face, each.over, each.under)
        for owner in ("plate", "tie", "post")
        for each in floors_on(built.stick(owner), features_on(built, owner))
    }
    assert found == {
        ("plate", Face.FIRST, "tie-lap-notch", MORTISE),
        ("tie", Face.FAR_FIRST, "tie-lap-lap", MORTISE),
    }


def test_a_tie_clear_of_its_plate_lies_over_nothing() -> None:
    """Without a lap there is no floor."""
    built = head_tie(lie=Lie(down="0"))
    for owner in ("plate", "tie"):
        assert floors_on(built.stick(owner), features_on(built, owner)) == ()


def test_a_floor_lies_where_its_work_came_out() -> None:
    """Once that was measured; a line of another name moves nothing."""
    line = replace(_notch().cuts[0].planes[-1], line="floor")
    notch = replace(_notch(), cuts=(Cut((*_notch().cuts[0].planes[:-1], line)),))
    for made, at in (((), "1"), ((Made("floor", length("1-1/8")),), "1-1/8")):
        assert {each[3] for each in _over(replace(notch, made=made), _mortise())} == {length(at)}
    elsewhere = replace(notch, made=(Made("wall", length("9")),))
    assert {each[3] for each in _over(elsewhere, _mortise())} == {length("1")}


@pytest.mark.parametrize(
    "slope", [Plane((1, 9, 0), length("56").nm), Plane((-1, 9, 0), length("6").nm)]
)
def test_a_mortise_with_a_sloping_bottom_is_found_whichever_way_it_leans(slope: Plane) -> None:
    """As a brace's is: it goes deeper than the notch somewhere."""
    leaning = _joint("brace", _box(("22", "28"), ("3", "5"), slope))
    assert {each[0] for each in _over(leaning, _notch())} == {"brace"}


def test_a_feature_is_made_once_it_is_pared_and_measured_as_cut() -> None:
    """In the order of work, whatever that of the list; knifing and fitting make nothing."""
    stages = {"as-cut": Stage.AS_CUT, "pare": Stage.PARE, "fit": Stage.FIT, "saw": Stage.CUT}
    tasks = [replace(SAWN, id=name, stage=stage) for name, stage in stages.items()]
    assert last_making(replace(_notch(), tasks=tuple(tasks))) == "tie/as-cut"
    assert last_making(replace(_notch(), tasks=tuple(tasks[1:]))) == "tie/pare"
    with pytest.raises(ValueError, match="tie has nothing to make"):
        last_making(replace(_notch(), tasks=()))


@pytest.mark.parametrize("across", [("0", "5"), ("3", "8")])
def test_what_runs_out_to_an_arris_opens_on_the_face_beside(across: tuple[str, str]) -> None:
    """A housing flush with its post comes out there too; that the two meet is told as such."""
    housing = _joint("girt", _box(("22", "28"), across, below(Axis.FIRST, length("4"))))
    assert _over(_notch(), housing) == set()
