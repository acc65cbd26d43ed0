"""Where a timber stands in the building, by the project file and the test's own arithmetic.

The file says where the reference arris runs and where the faces look. Only how far along itself a
timber lies is taken from the program, which settles it by what the ends meet. One number places
both ends, so a timber of the wrong length cannot bear at both.
"""

from benchmate.frame.frame import Frame
from benchmate.model.project import Timber
from tests.space import Placed, Stance, inward

AXES = ("east", "north", "up")
"""The building's coordinates in the order of its axes."""


def stance(timber: Timber) -> Stance:
    """Where a timber's reference faces and its reference end look."""
    return Stance(timber.first_face.word, timber.second_face.word, timber.reference_end.word)


def placed(frame: Frame, timber: Timber, shoulder: int) -> Placed:
    """A timber in the building, read from its squared end: `shoulder` lies so far along it.

    Raises ValueError for a timber whose arris the file does not place.
    """
    there = frame.place(timber.id)
    if timber.at is None or there is None:
        raise ValueError(f"{timber.name} stands or lies nowhere")
    ways = inward(stance(timber))
    axis, sense = ways[0]
    at = {AXES[axis]: there.origin[axis] - sense * shoulder}
    at |= {name: frame.value(total).nm for name, total in timber.at.sums().items()}
    return Placed((at["east"], at["north"], at["up"]), ways)
