"""What a step had better wait for: a mortise is cut to the tenon that was really made."""

from benchmate.layout.step import Layout, Step
from benchmate.model.feature import Asks, Awaits


def awaited(layout: Layout, step: Step) -> tuple[Awaits, ...]:
    """The steps on other timbers that come before this one, in the order its joint names them.

    What is done to the whole stick waits for nothing, nor does measuring it at a joint: that needs
    no other timber.
    """
    feature = layout.feature(step.feature)
    measuring = step.asks is Asks.SECTION and not step.lasting
    return () if feature is None or measuring else feature.awaits
