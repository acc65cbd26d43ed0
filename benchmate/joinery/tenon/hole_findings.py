"""What can be wrong where one tenon is to go through another, one function and one code each."""

from benchmate.joinery.tenon.crossing import Crossing
from benchmate.joinery.tenon.hole import Hole
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop


def misses(shape: Crossing, least_wood: Length, tape: Tape) -> Finding | None:
    """A tenon that is meant to go through another one does not come to it.

    Example: a post's stub 2" long over a sill tenon that lies 3" down. Where the two mortises only
    leave little wood between them, that is what is meant. Remedy: correct where the two stand or
    how long they are, or do not say that they meet.
    """
    if shape.reaches or 0 < shape.apart < least_wood.nm**2:
        return None
    name, other = shape.stub.tenon.stick.name, _tenon_words(shape)
    return look(
        "crossing-misses",
        shape.stub.tenon.stick.id,
        shape.stub.tenon.feature,
        f"{name} is meant to go through {other}, and misses it by {tape.text(shape.missed_by)}",
        f"check where both stand and how long their tenons are, or take {shape.other.id} out of "
        f"meets in joint {shape.joint.id}",
    )


def both_ways(shape: Crossing) -> Finding | None:
    """Each of two tenons is said to go through the other.

    Only one of them can be whole. Remedy: say it in one joint alone.
    """
    if not (shape.reaches and shape.mutual):
        return None
    return stop(
        "crossing-both-ways",
        shape.stub.tenon.stick.id,
        shape.stub.tenon.feature,
        f"{shape.stub.tenon.stick.name} and {shape.crossed.tenon.stick.name} are each said to go "
        "through the other's tenon",
        f'write "meets" in one alone of the joints {shape.joint.id} and {shape.other.id}: the one '
        "whose tenon stays whole",
    )


def no_places(shape: Crossing) -> Finding | None:
    """Two tenons cross, and where on the other the hole comes stays open.

    The timbers have no places, so only the corner itself can show it. Remedy: give them places, or
    mark the hole from the corner put together.
    """
    if not shape.reaches or shape.placed:
        return None
    return look(
        "crossing-without-places",
        shape.stub.tenon.stick.id,
        shape.stub.tenon.feature,
        f"{shape.stub.tenon.stick.name} goes through {_tenon_words(shape)}, but without places in "
        "the frame its hole there has no figures",
        'give the timbers their places with "at", or mark the hole from the corner put together',
    )


def housing_cuts_in(shape: Crossing, tape: Tape) -> Finding | None:
    """The housing of the timber that goes through cuts into the other's tenon, or its housed end.

    More than the tenon would have to go through. Example: a post housed 3" into a sill, over a
    tenon 2" down. Remedy: a shallower housing, or the tenon set back further.
    """
    if not shape.housing_reaches:
        return None
    return stop(
        "crossing-housing",
        shape.stub.tenon.stick.id,
        shape.stub.tenon.feature,
        f"The housing for {shape.stub.tenon.stick.name}, {tape.text(shape.stub.recess)} deep, cuts "
        f"into {_tenon_words(shape)} or its housed end",
        "make the housings shallower, or set that tenon back further",
    )


def takes_all(shape: Hole, tape: Tape) -> Finding | None:
    """The hole takes the whole width of the tenon, and cuts it off.

    Example: a stub 6" wide through a tenon 5" wide. Remedy: relieve the stub, or make the tenon
    wider.
    """
    if any(left > ZERO for left in shape.to_edges):
        return None
    return stop(
        "crossing-takes-all",
        shape.tenon.stick.id,
        shape.feature,
        f"The hole for {shape.stub.tenon.stick.name} is {tape.text(_wide(shape))} across and takes "
        f"the whole of a tenon {tape.text(shape.tenon.real('width'))} wide",
        "relieve the tenon that goes through on its narrow edges, or make the other one wider",
    )


def past_the_shoulder(shape: Hole, tape: Tape) -> Finding | None:
    """The hole runs back past the tenon's shoulder, into what bears.

    Example: a sill housed 3" deep, and a stub 2" from the face it enters. Remedy: a shallower
    housing, or the stub further from that face.
    """
    over = -shape.beyond[0]
    if over <= ZERO:
        return None
    return stop(
        "crossing-past-shoulder",
        shape.tenon.stick.id,
        shape.feature,
        f"The hole for {shape.stub.tenon.stick.name} runs {tape.text(over)} back past the shoulder",
        f"make the housing of {shape.tenon.stick.name} shallower, or move the tenon that goes "
        "through away from its shoulder",
    )


HOLE_CHECKS = (takes_all, past_the_shoulder)


def crossing_findings(shape: Crossing, least_wood: Length, tape: Tape) -> tuple[Finding, ...]:
    """What is wrong with a crossing before there is any hole; nothing of one that is scribed."""
    if shape.scribed:
        return ()
    found = (
        misses(shape, least_wood, tape),
        both_ways(shape),
        no_places(shape),
        housing_cuts_in(shape, tape),
    )
    return tuple(each for each in found if each)


def _wide(shape: Hole) -> Length:
    return shape.across[1] - shape.across[0]


def _tenon_words(shape: Crossing) -> str:
    """The tenon that is crossed: `West sill's south end tenon`."""
    tenon = shape.crossed.tenon
    return f"{tenon.stick.name}'s {tenon.stick.pose.words(tenon.end)} tenon"
