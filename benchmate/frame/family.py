"""What a joint family is: the record it stores and the features it puts on timbers."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from benchmate.frame.frame import Frame
from benchmate.model.feature import Feature
from benchmate.model.floors import Floors
from benchmate.model.record import Record


@dataclass(frozen=True, slots=True, kw_only=True)
class Family:
    """One family of joints or other work.

    `table` is the table of the project file its records stand in; a table shared by several
    families tells them apart by the record's `family`. `features` takes one such record. `under`
    gives the same features where other joints have cut away faces that they open on, for a family
    whose figures follow that.
    """

    name: str
    table: str
    record: type[Record]
    features: Callable[[Any, Frame], tuple[Feature, ...]]
    under: Callable[[Any, Frame, Floors], tuple[Feature, ...]] | None = None
