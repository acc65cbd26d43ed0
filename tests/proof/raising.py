"""The raising: every timber of a frame, cut by its marks and put where it belongs."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from benchmate.frame.frame import Frame, Real
from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.layout.step import Layout
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Severity
from benchmate.model.project import Project, Timber
from tests.proof.boxes import grown, meet
from tests.proof.carve import BEARING, MORTISE, POCKET, ROOM, TENON, Carving, carve
from tests.proof.kernel import Solid, block, hull
from tests.proof.marks import END_WORDS, Marks, Rule, marks, sides
from tests.proof.place import placed
from tests.proof.stock import stock
from tests.space import Box, Placed

Joint = TenonJoint | JoistPocket
Slip = Callable[[Marks], Marks]
"""What goes wrong between the marks of a timber and the cutting of it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """One timber in its place: how it was cut, and the wood it came to."""

    timber: Timber
    rule: Rule
    carving: Carving
    placed: Placed
    solid: Solid

    def voids(self) -> Iterator[tuple[str, Box]]:
        """The boxes of wood that were cut out in the building, each with the joint it is for."""
        for feature, boxes in self.carving.cuts.items():
            for each in boxes:
                yield feature, self.placed.box(each)

    def part(self, of: Box) -> Solid:
        """The wood inside a box in the building."""
        room = grown(self.placed.box(self.carving.blank), ROOM)
        return self.solid.within(block(meet(room, of)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Raising:
    """A frame raised, and the joints in it that could be cut to figures."""

    frame: Frame
    pieces: Mapping[str, Piece]
    joints: tuple[Joint, ...]


def raised(project: Project, real: Mapping[str, Real]) -> Raising:
    """Every timber that can be cut to figures, in its place.

    A timber with a scribed end is left out: its shoulder lies where its mate puts it. So is a joint
    that the program stops, as a figure is withheld there.
    """
    frame = Frame(project, real)
    scribed = {joint.timber for joint in joints_of(project) if _scribed(joint)}
    layouts = {
        timber.id: lay_out(frame, timber.id)
        for timber in project.timbers
        if timber.id not in scribed
    }
    return Raising(
        frame=frame,
        pieces={
            timber: _cut(frame, timber, ruled(frame, layout, real.get(timber, Real())))
            for timber, layout in layouts.items()
        },
        joints=tuple(
            joint
            for joint in joints_of(project)
            if joint.timber not in scribed and not _stopped(layouts[joint.timber], joint)
        ),
    )


def joints_of(project: Project) -> tuple[Joint, ...]:
    """The joints of a project in file order."""
    return tuple(work for work in project.works if isinstance(work, Joint))


def end_names(joint: Joint) -> tuple[str, str]:
    """What a joint's two sides are called: `foot-tenon` and `sw-foot-mortise`."""
    end = END_WORDS[joint.end.word].replace(" ", "-")
    if isinstance(joint, TenonJoint):
        return f"{end}{TENON}", f"{joint.id}{MORTISE}"
    return f"{end}{BEARING}", f"{joint.id}{POCKET}"


def _scribed(joint: Joint) -> bool:
    return isinstance(joint, TenonJoint) and joint.scribed


def _stopped(layout: Layout, joint: Joint) -> bool:
    """Whether the joint cannot be as it is, which is told on both its sides."""
    made = layout.feature(end_names(joint)[0])
    return made is None or any(found.severity is Severity.STOP for found in made.findings)


def with_slip(raising: Raising, timber: str, slip: Slip) -> Raising:
    """The same frame with one timber cut by marks that were misread."""
    piece = raising.pieces[timber]
    wrong = replace(piece.rule, marks=slip(piece.rule.marks))
    recut = _cut(raising.frame, timber, wrong)
    return replace(raising, pieces={**raising.pieces, timber: recut})


def ruled(frame: Frame, layout: Layout, real: Real) -> Rule:
    """The marks of one timber on its real stick."""
    timber = frame.timber(layout.stick.id)
    return Rule(
        sides=sides(timber),
        stock=stock(frame.project, timber, real),
        marks=marks(layout.steps),
    )


def _cut(frame: Frame, timber: str, rule: Rule) -> Piece:
    record = frame.timber(timber)
    carving, stands = carve(rule), placed(frame, record, rule.shoulder)
    return Piece(
        timber=record,
        rule=rule,
        carving=carving,
        placed=stands,
        solid=_solid(carving, stands),
    )


def _solid(carving: Carving, stands: Placed) -> Solid:
    boxes = [*carving.missing, *(each for cuts in carving.cuts.values() for each in cuts)]
    wedges = (hull([_point(stands, corner) for corner in wedge]) for wedge in carving.wedges)
    wastes = [*(block(stands.box(each)) for each in boxes), *wedges]
    return block(stands.box(carving.blank)).without(wastes)


def _point(stands: Placed, corner: tuple[int, int, int]) -> tuple[int, int, int]:
    x, u, v = corner
    (east, _), (north, _), (up, _) = stands.box(((x, x), (u, u), (v, v)))
    return east, north, up
