"""What a step had better wait for: a mortise is cut to the tenon that was really made."""

from benchmate.layout.step import Layout, Step
from benchmate.model.feature import Asks, Awaits, Stage
from benchmate.model.stick import STICK


def awaited(layout: Layout, step: Step) -> tuple[Awaits, ...]:
    """The steps on other timbers that come before this one, in the order its joint names them.

    What is done to the whole stick waits for nothing, but for its back-check, which waits for the
    marks it reads; nor does a fresh look at it, such as measuring it at a joint.
    """
    if step.stage is Stage.BACK_CHECK and step.feature == STICK:
        own = (feature for feature in layout.features if not feature.mated)
        return tuple(dict.fromkeys(each for feature in own for each in feature.awaits))
    feature = layout.feature(step.feature)
    fresh_look = not step.lasting and step.asks is not Asks.AS_CUT
    return () if feature is None or fresh_look else feature.awaits
