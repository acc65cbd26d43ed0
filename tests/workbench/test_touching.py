from benchmate.measure.length import Length
from benchmate.model.project import Timber
from benchmate.workbench.bench import Bench
from benchmate.workbench.touching import box_of, lane_of, touch, touching

INCH = Length.inches(1).nm

GIRT = {
    "id": "girt",
    "name": "Girt",
    "kind": "girt",
    "section": "6 x 4",
    "first_face": "south",
    "second_face": "up",
    "reference_end": "west",
    "at": {"north": "line a", "up": "3'"},
}


def test_a_box_goes_from_shoulder_to_shoulder(shed: Bench) -> None:
    """The SW post: 7" square in from its two outside faces, from the sill to the plate."""
    box = box_of(shed.frame, "post-sw")
    assert box == ((0, 7 * INCH), (0, 7 * INCH), (0, 88 * INCH))


def test_a_lane_is_open_along_the_timber(shed: Bench) -> None:
    """Of one whose ends nothing settles yet; a raking or half-said one has none."""
    girt = Timber.model_validate(GIRT)
    lane = lane_of(shed.frame, girt)
    assert lane is not None
    assert lane[1:] == ((0, 6 * INCH), (32 * INCH, 36 * INCH))
    assert lane_of(shed.frame, girt.model_copy(update={"at": None})) is None
    assert lane_of(shed.frame, girt.model_copy(update={"section": "nothing"})) is None
    lost = Timber.model_validate(GIRT | {"at": {"north": "line q", "up": "3'"}})
    assert lane_of(shed.frame, lost) is None
    half = Timber.model_validate(GIRT | {"at": {"north": "line a"}})
    assert lane_of(shed.frame, half) is None


def test_mates_come_in_the_order_they_stand_in(shed: Bench) -> None:
    """From the reference end on; what runs the same way is none."""
    frame = shed.frame
    assert touching(frame, Timber.model_validate(GIRT)) == ("post-sw", "post-sm", "post-se")
    assert touching(frame, frame.timber("tie-west")) == ("post-sw", "post-nw")
    assert touching(frame, frame.timber("post-se")) == ("sill-south", "tie-east", "plate-south")


def test_boxes_a_shaving_apart_touch() -> None:
    """And those that are a joint's width apart do not."""
    one = ((0, INCH), (0, INCH), (0, INCH))
    assert touch(one, ((INCH + INCH // 16, 2 * INCH), (0, INCH), (0, INCH)))
    assert not touch(one, ((2 * INCH, 3 * INCH), (0, INCH), (0, INCH)))
