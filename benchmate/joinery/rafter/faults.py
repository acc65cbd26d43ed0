"""What keeps timbers from being a rafter, or a plate or ridge across one, by how they stand."""

from collections.abc import Iterator

from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Fault, rolled_fault


def rafter_faults(key: str, timber: Timber) -> Iterator[Fault]:
    """A timber that does not rake, or is not measured from the edge that makes the roof plane."""
    if timber.incline is None:
        problem = f"is for a rafter, and {timber.name} does not rake"
        yield Fault(key, problem, 'give it "incline" instead of "at"')
    elif Direction.UP not in (timber.first_face, timber.second_face):
        problem = f"{timber.name} is not measured from its top, which makes the roof plane"
        remedy = 'turn its reference face "down" to "up", and its incline to its top edge'
        yield Fault(key, problem, remedy)


def crossed_faults(rafter: Timber, into: Timber) -> Iterator[Fault]:
    """What keeps a rafter from crossing or meeting a level timber square to its plane."""
    found = tuple(rafter_faults("timber", rafter))
    yield from found
    if found:
        return
    head = rafter.pose.head or Direction.UP
    if fault := rolled_fault("into", into, "a rafter bears on a level top"):
        yield fault
    elif into.upright or into.incline is not None:
        does = "stands" if into.upright else "rakes too"
        problem = f"{into.name} {does}, and a rafter bears on a timber that lies level"
        yield Fault("into", problem, "name a timber that lies level")
    elif not into.placed:
        problem = f"{rafter.name} has a place in the frame, but {into.name} has none"
        yield Fault("into", problem, f"give {into.name} its place too")
    elif not into.reference_end.square_to(head):
        problem = f"{into.name} runs the same way as {rafter.name} rises, so the two do not cross"
        yield Fault("into", problem, "name a timber that lies across it")
