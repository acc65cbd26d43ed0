"""The receiving side: the pocket, open above and at the face the joist comes from."""

from benchmate.joinery.joist.notch import back_line, floor_and_back, floor_line, notch_tasks
from benchmate.joinery.joist.shape import PocketShape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Task
from benchmate.model.solids import Axis, Cut, above, below


def pocket_cuts(shape: PocketShape) -> tuple[Cut, ...]:
    """One box without a lid."""
    start, finish = shape.along
    ends = (above(Axis.ALONG, start, "start"), below(Axis.ALONG, finish, "finish"))
    return (Cut((*ends, *floor_and_back(shape))),)


def pocket_lines(shape: PocketShape, tape: Tape) -> tuple[Line, ...]:
    """Its two sides, its floor and its back."""
    start, finish = shape.along
    wide = Beside(finish - start, "pocket width")
    follows = _follows(shape, tape)
    bearing = (shape.joist.recess, shape.joist.real("width"))
    return (
        Line(
            id="start",
            title="Pocket start line",
            axis=Axis.ALONG,
            at=start,
            beside=(wide,),
            why=follows,
        ),
        Line(
            id="finish",
            title="Pocket finish line",
            axis=Axis.ALONG,
            at=finish,
            beside=(wide,),
            why=follows,
        ),
        floor_line(shape, shape.joist, bearing, tape),
        back_line(shape),
    )


def _follows(shape: PocketShape, tape: Tape) -> str:
    name = shape.joist.stick.name
    as_cut = shape.joist.as_cut.get("width")
    if as_cut is None:
        return f"Follows {name}'s end as drawn; it has not been measured as cut."
    return f"Follows {name}'s end as cut: {tape.text(as_cut)} wide."


def pocket_tasks(shape: PocketShape) -> tuple[Task, ...]:
    """What to do at the pocket besides striking lines: one figure to one task."""
    wide = Reading(value=shape.along[1] - shape.along[0], hook="start", way="to the finish")
    return notch_tasks(shape, wide, fits="The joist drops in by hand, without pounding.")
