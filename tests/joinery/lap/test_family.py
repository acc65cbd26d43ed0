"""Both timbers of a lap from one record."""

from benchmate.joinery import FAMILIES
from benchmate.joinery.lap.family import FAMILY, features
from benchmate.joinery.lap.record import LapJoint
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.measure.length import ZERO
from benchmate.model.feature import Awaits, Feature
from tests.builders import length, real
from tests.joinery.lap.crossings import COGGED, DOVETAIL, Scene, sizes_of

PLATE_FIRST = Awaits("plate", "lap-notch/section")


def _sides(sizes: object = None, **words: object) -> tuple[Feature, ...]:
    scene = Scene(**words)  # type: ignore[arg-type]
    return features(scene.record(), scene.frame(sizes))  # type: ignore[arg-type]


def test_it_is_in_the_catalogue() -> None:
    """Under the word a project file uses."""
    assert FAMILY in FAMILIES
    assert (FAMILY.name, FAMILY.table, FAMILY.record) == ("lap", "joint", LapJoint)


def test_each_timber_has_its_own_side() -> None:
    """Named for the end that laps or the other timber, and placed along its own timber."""
    for words, titles, at in (
        ({}, ("East end lap", "Notch for Tie"), ("96", "48")),
        ({"from_the_lap": True}, ("East end lap", "Notch for Tie"), ("0", "48")),
        (DOVETAIL, ("East end dovetail lap", "Notch for Tie"), ("96", "48")),
        ({"ends": False}, ("Notch for Plate", "Notch for Tie"), ("96", "48")),
        ({"corner": "north"}, ("East end lap", "North end lap"), ("96", "48")),
        ({"corner": "south"}, ("East end lap", "South end lap"), ("96", "0")),
    ):
        sides = _sides(**words)
        assert tuple(side.title for side in sides) == titles
        assert tuple(side.at for side in sides) == tuple(map(length, at))
        assert [side.timber for side in sides] == ["tie", "plate"]
        assert [side.place for side in sides] == [(side.id,) for side in sides]
        assert [side.mated for side in sides] == [False, True]


def test_the_second_waits_for_the_first_as_it_came_out() -> None:
    """The tie, or its tail, is cut first."""
    for words in ({}, {"ends": False}, DOVETAIL, COGGED, {"corner": "north"}):
        tie, plate = _sides(**words)
        assert Awaits("tie", f"{tie.id}/as-cut") in plate.awaits


def test_the_first_waits_for_what_it_follows_to_be_measured() -> None:
    """The plate's far face, whether it is where the lap starts, ends, or is clasped."""
    known = sizes_of(plate=("8", "8"))
    for words in (
        {},
        {"plate_looks": (True, False)},
        {"from_the_lap": True},
        {"ends": False},
        {"ends": False, "heading": "west"},
    ):
        assert _sides(**words)[0].awaits == (PLATE_FIRST,)
        assert _sides(known, **words)[0].awaits == ()


def test_by_square_rule_only_what_goes_through_to_a_far_face_waits() -> None:
    """All else comes to the inner timber, whatever the stick."""
    square = {"plate": {"rule": "square", "inner": "7-1/2 x 7-1/2"}}
    assert _sides(**square, ends=False)[0].awaits == ()
    assert _sides(**square)[0].awaits == ()
    assert _sides(**square, plate_looks=(True, False))[0].awaits == (PLATE_FIRST,)


def test_a_ledge_on_a_far_face_waits_for_it() -> None:
    """The plate is measured from its underside, and the tail goes in as far as its top."""
    words = DOVETAIL | {"plate_looks": (False, True)}
    wide = {"plate": real({"lap-notch": {"second": "8"}})}
    assert _sides(wide, **words)[0].awaits == (PLATE_FIRST,)
    assert _sides(sizes_of(plate=("8", "8")), **words)[0].awaits == ()
    assert _sides(wide, **DOVETAIL)[0].awaits == ()


def test_a_corner_s_ends_wait_for_one_another_to_be_measured() -> None:
    """But not in a circle: measuring itself waits for nothing."""
    tie, plate = _sides(corner="north")
    assert tie.awaits == (Awaits("plate", "north-end-lap/section"),)
    assert plate.awaits == (
        Awaits("tie", "east-end-lap/section"),
        Awaits("tie", "east-end-lap/as-cut"),
    )
    built = Scene(corner="north").frame()
    for name, step in (("tie", "east-end-lap/section"), ("plate", "north-end-lap/section")):
        layout = lay_out(built, name)
        assert awaited(layout, layout.step(step)) == ()


def test_both_shoulders_of_a_corner_are_datums() -> None:
    """Where a stick is measured from its lap, that shoulder is its zero."""
    built = Scene(corner="south", from_the_lap=True).frame()
    for name, shoulder in (("tie", "east-end-lap"), ("plate", "south-end-lap")):
        layout = lay_out(built, name)
        assert layout.shoulder == f"{shoulder}/shoulder"
        assert built.stick(name).near > ZERO


def test_a_change_of_either_stick_is_noticed_on_both() -> None:
    """`Frame.inputs` differs, so neither is drawn as it was."""
    drawn = Scene().frame()
    for sizes in (sizes_of(tie=("8", "6-1/8")), sizes_of(plate=("8", "8-1/8"))):
        measured = Scene().frame(sizes)
        for name in ("tie", "plate"):
            assert drawn.inputs(name) != measured.inputs(name)
