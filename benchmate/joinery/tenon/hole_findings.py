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


def ends_clash(shape: Crossing) -> Finding | None:
    """A housed end comes in the way where only one tenon is to go through the other.

    Example: a post housed 3" into a sill, over a tenon that lies 2" down; or a sill housed so deep
    that it reaches the post's stub. Remedy: a shallower housing, or more room between the two.
    """
    if not shape.ends_clash:
        return None
    name, other = shape.stub.tenon.stick.name, shape.crossed.tenon.stick.name
    return stop(
        "crossing-ends-clash",
        shape.stub.tenon.stick.id,
        shape.stub.tenon.feature,
        f"The ends of {name} and {other} are in one another's way inside {shape.stub.stick.name}: "
        "a tenon can go through a tenon, but not through a housed end",
        "make their housings shallower, or move one of the two away from the other",
    )


def takes_all(shape: Hole, tape: Tape) -> Finding | None:
    """The hole takes the whole width of the tenon, and cuts it off.

    Example: a stub 6" wide through a tenon 5" wide. Remedy: relieve the stub, or make the tenon
    wider.
    """
    if any(left > ZERO for left in shape.to_edges):
        return None
    wide = shape.across[1] - shape.across[0]
    return stop(
        "crossing-takes-all",
        shape.tenon.stick.id,
        shape.feature,
        f"The hole for {shape.stub.tenon.stick.name} is {tape.text(wide)} across and takes "
        f"the whole of a tenon {tape.text(shape.tenon.real('width'))} wide",
        "relieve the tenon that goes through on its narrow edges, or make the other one wider",
    )


def crossing_findings(shape: Crossing, least_wood: Length, tape: Tape) -> tuple[Finding, ...]:
    """What is wrong with a crossing before there is any hole; nothing of one that is scribed."""
    if shape.scribed:
        return ()
    found = (
        misses(shape, least_wood, tape),
        both_ways(shape),
        no_places(shape),
        ends_clash(shape),
    )
    return tuple(each for each in found if each)


def _tenon_words(shape: Crossing) -> str:
    """The tenon that is crossed: `West sill's south end tenon`."""
    tenon = shape.crossed.tenon
    return f"{tenon.stick.name}'s {tenon.stick.pose.words(tenon.end)} tenon"
