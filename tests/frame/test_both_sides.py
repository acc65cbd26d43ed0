"""The two sides of a joint that is made at an end and then cut to it in another stick."""

from dataclasses import replace

from benchmate.frame.both_sides import both_under_inner, end_side, mated_side, sides_for
from benchmate.frame.stick_end import StickEnd
from benchmate.joinery.diminished.shape import meeting
from benchmate.joinery.tenon.mortise_shape import mortise_of
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import TenonShape, shape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits
from benchmate.model.findings import look, stop
from benchmate.model.progress import AsCut
from tests.builders import frame, length, real, sill, tenon, timber
from tests.joinery.diminished.ledges import end_of, joint_in, ledge
from tests.joinery.tenon.girts import girt_through

TOLD = (
    look("thin", "post", "foot-tenon", "It is thin", "make it thicker"),
    look("shallow", "sill", "post-foot-mortise", "It is shallow", "make it deeper"),
    stop("through", "sill", "post-foot-mortise", "It goes through", "make it shorter"),
)
"""A word on either side, and what stops both."""


def through(reference_end: str) -> StickEnd:
    """The west end of a girt that goes through a post nobody has measured yet."""
    east = "reference_end_at" if reference_end == "east" else "far_end_at"
    ends: dict[str, str | None] = {"reference_end_at": None, "far_end_at": None, east: "10'"}
    built = girt_through(girt=ends | {"reference_end": reference_end})
    (joint,) = (each for each in built.project.works if isinstance(each, TenonJoint))
    return shape(joint, built)


def foot() -> TenonShape:
    """The foot of a post, 4' along a sill."""
    joint = tenon(into="sill", at="4'")
    return shape(joint, frame(timber("post"), sill(), joint))


def test_the_made_side_is_named_after_its_end_and_measured_there() -> None:
    """It tells its own findings, and what stops the other side."""
    made = end_side(foot(), "tenon", TOLD)
    assert (made.id, made.timber, made.title) == ("foot-tenon", "post", "Foot tenon")
    assert (made.at, made.place) == (length("0"), ("foot-tenon", "foot"))
    assert [(each.code, each.timber) for each in made.findings] == [
        ("thin", "post"),
        ("through", "post"),
    ]
    assert not made.mated


def test_the_other_side_comes_after_the_end_as_it_was_cut() -> None:
    """It is marked for the finished part, so it waits for that part's sizes."""
    joint = tenon(into="sill", at="4'")
    built = frame(timber("post"), sill(), joint)
    received = mortise_of(joint, foot(), built)
    assert received is not None
    cut = mated_side(received, foot(), TOLD, noun="Notch", at=length("4'"), after="measured")
    assert (cut.id, cut.timber, cut.title) == ("post-foot-mortise", "sill", "Notch for Post")
    assert (cut.at, cut.place, cut.mated) == (length("4'"), ("post-foot-mortise",), True)
    assert cut.awaits == (Awaits("post", "foot-tenon/measured"),)
    assert [each.code for each in cut.findings] == ["shallow", "through"]


def test_an_end_at_the_datum_waits_only_for_what_it_passes() -> None:
    """The length of a stick is set off at its far end, that of a tenon that passes at its own."""
    near, far = through("west"), through("east")
    assert (near.end, far.end) == (Face.REFERENCE_END, Face.FAR_END)
    assert end_side(near, "tenon", ()).awaits == ()
    assert {each.timber for each in end_side(near, "tenon", (), passes=True).awaits} == {"post"}
    assert {each.timber for each in end_side(far, "tenon", ()).awaits} == {"post"}
    assert end_side(far, "tenon", ()) == end_side(far, "tenon", (), passes=True)


def test_sticks_under_their_inner_timber_are_told_the_end_first() -> None:
    """Each on its own timber, where it was measured."""
    joint = tenon(into="sill", at="4'")
    ruled = {"rule": "square", "inner": "5-1/2 x 5-1/2"}
    small = {"first": "5", "second": "5"}
    sizes = {
        "post": real({"foot-tenon": small}),
        "sill": real({"post-foot-mortise": small}),
    }
    built = frame(timber("post", **ruled), sill(**ruled), joint, real=sizes)
    made = shape(joint, built)
    received = mortise_of(joint, made, built)
    assert received is not None
    told = both_under_inner(made, received, Tape())
    assert [each.timber for each in told] == ["post", "post", "sill", "sill"]


def test_a_mortise_is_as_wide_as_its_tenon_was_cut() -> None:
    """Held by the set-back, and it says what its width goes by."""
    built = ledge()
    joint = joint_in(built)
    made, met, post = end_of(built), meeting(joint, built), built.stick(joint.into)
    sides = sides_for(made, met, post, "hole", Tape())
    assert (sides.stick, sides.feature) == (post, "hole")
    assert (sides.mate, sides.set_back) == (made.stick.name, made.near)
    assert sides.width == made.cheeks.thickness
    thin = replace(made, as_cut=AsCut(thickness=length("1-7/16")))
    cut = sides_for(thin, met, post, "hole", Tape())
    assert cut.width == length("1-7/16")
    assert cut.follows != sides.follows
