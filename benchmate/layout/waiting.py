"""What a step had better wait for: a mortise is cut to the tenon that was really made."""

from benchmate.layout.floors import MAKING, last_making
from benchmate.layout.step import Layout, Step
from benchmate.model.feature import Asks, Awaits, Stage
from benchmate.model.stick import STICK


def awaited(layout: Layout, step: Step) -> tuple[Awaits, ...]:
    """The steps that come before this one: in the order its joint names those on other timbers.

    What is done to the whole stick waits for nothing, but for its back-check, which waits for the
    marks it reads; nor does a fresh look at it, such as measuring it at a joint. What lies under
    another joint of the same timber is made after that.
    """
    if step.stage is Stage.BACK_CHECK and step.feature == STICK:
        own = (feature for feature in layout.features if not feature.mated)
        return tuple(dict.fromkeys(each for feature in own for each in feature.awaits))
    feature = layout.feature(step.feature)
    fresh_look = not step.lasting and step.asks is not Asks.AS_CUT
    if feature is None or fresh_look:
        return ()
    return (*feature.awaits, *(_over(layout, feature.id) if step.stage in MAKING else ()))


def ever_awaited(layout: Layout) -> tuple[Awaits, ...]:
    """All that any step of a timber waits for, each once."""
    joints = (each for feature in layout.features for each in feature.awaits)
    under = dict.fromkeys(floor.under for floor in layout.floors)
    over = (each for feature in under for each in _over(layout, feature))
    return tuple(dict.fromkeys((*joints, *over)))


def _over(layout: Layout, feature: str) -> tuple[Awaits, ...]:
    """The last step of all work that takes a face of a feature away."""
    over = (layout.feature(each) for each in layout.over(feature))
    return tuple(Awaits(layout.stick.id, last_making(each)) for each in over if each)
