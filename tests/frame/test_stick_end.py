"""What every worked end of a stick tells alike, by hand-reckoned figures."""

from collections.abc import Mapping

import pytest

from benchmate.frame.stick_end import CheekedEnd, JoistEnd, StickEnd
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick
from tests.builders import frame, length, lengths, real, timber


class Tip(StickEnd):
    """An end of which only the length is measured once it is cut."""

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """Two inches long."""
        return {"length": length("2")}


class Tenon(Tip, CheekedEnd):
    """An end with two cheeks."""


class Joist(Tip, JoistEnd):
    """The end of a joist."""


def post(**words: object) -> Stick:
    """A post 7' 11" long, 6 x 6 as drawn, 6-1/4 x 5-3/4 where its foot was measured."""
    sizes = {"post": real({"foot": {"first": "6-1/4", "second": "5-3/4"}})}
    return frame(timber("post", **words), real=sizes).stick("post")


def tip(end: Face = Face.REFERENCE_END, as_cut: AsCut | None = None) -> Tip:
    """One end of the post."""
    return Tip(stick=post(), end=end, feature="tip", as_cut=as_cut or AsCut())


def test_its_section_is_measured_at_the_joint_or_at_the_end() -> None:
    """The joint's own place counts first."""
    assert tip().places == ("tip", "foot")
    assert tip(Face.FAR_END).places == ("tip", "head")


@pytest.mark.parametrize(
    ("end", "shoulder", "beyond"),
    [(Face.REFERENCE_END, "0", "-2"), (Face.FAR_END, "7' 11", "8' 1")],
)
def test_readings_go_on_past_its_shoulder(end: Face, shoulder: str, beyond: str) -> None:
    """Towards its own tip: below nothing at the reference end."""
    assert tip(end).shoulder == tip(end).along(length("0")) == length(shoulder)
    assert tip(end).along(length("2")) == length(beyond)


def test_a_size_is_as_cut_once_it_is_typed() -> None:
    """Until then as laid out, and one that is neither is not known."""
    assert tip().real("length") == length("2")
    assert tip(as_cut=AsCut(length=length("1-7/8"))).real("length") == length("1-7/8")
    with pytest.raises(KeyError):
        tip().real("width")


def test_a_tenon_has_cheeks_and_edges_across_them() -> None:
    """Its cheeks are those of its own end; depths are real or what the frame counts on."""
    made = Tenon(
        stick=post(rule="square", inner="5-1/2 x 5"),
        end=Face.REFERENCE_END,
        feature="tip",
        as_cut=AsCut(),
        cheek_axis=Axis.FIRST,
        near=length("1-1/2"),
        far=length("3-1/2"),
    )
    assert (made.cheeks.axis, made.cheeks.places) == (Axis.FIRST, made.places)
    assert (made.cheeks.near, made.cheeks.thickness) == lengths("1-1/2", "2")
    assert made.cheeks_at(Axis.FIRST, *lengths("1-1/2", "3-1/2")) == made.cheeks
    assert (made.edges, made.real_edges, made.framed_edges) == (Axis.SECOND, *lengths("5-3/4", "5"))


def test_a_joist_is_measured_from_its_top() -> None:
    """A housing takes what the frame counts on, whatever the stick has over."""
    made = Joist(
        stick=post(rule="square", inner="5-1/2 x 5"),
        end=Face.REFERENCE_END,
        feature="tip",
        as_cut=AsCut(),
        plumb=Axis.FIRST,
        recess=length("1/2"),
    )
    assert (made.sides, made.real_deep, made.real_wide) == (Axis.SECOND, *lengths("6-1/4", "5-3/4"))
    assert (made.framed, made.wide) == lengths("5-1/2", "5")
    guest = made.guest
    assert (guest.along, guest.places) == (Axis.SECOND, made.places)
    assert (guest.cheeks, guest.edges, guest.recess) == lengths("5-1/2", "5", "1/2")
