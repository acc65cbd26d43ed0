"""Where a rafter's two sides come on the timber it crosses or bears on."""

from benchmate.frame.marking import Says, square_mark
from benchmate.frame.reduction import lies_in_words
from benchmate.joinery.rafter.lying import FINISH, START, Lying
from benchmate.joinery.rafter.raking import Rafter
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Beside, Line

_TITLES = {START: "First side line", FINISH: "Second side line"}


def side_lines(lying: Lying, rafter: Rafter, faces: tuple[Face, ...]) -> tuple[Line, ...]:
    """Both lines; `faces` are those they are struck on where they bound no cut."""
    start, finish = lying.along
    width = lies_in_words(rafter.stick, rafter.sides, rafter.places)
    return tuple(
        square_mark(
            plane,
            Says(
                title=_TITLES[name],
                beside=(Beside(finish - start, f"wide, as {lying.rafter} is"),),
                why=f"{lying.rafter} stands between the two. {width}",
                faces=faces,
            ),
        )
        for name, plane in lying.sides.items()
    )


def width_awaited(rafter: Rafter, feature: str) -> tuple[Awaits, ...]:
    """By mill rule a place is as wide as the rafter really is, so that is measured first."""
    known = rafter.stick.measured_depth(rafter.sides, *rafter.places) is not None
    if known or rafter.stick.inner is not None:
        return ()
    return (Awaits(rafter.stick.id, f"{feature}/section"),)
