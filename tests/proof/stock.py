"""The real stick under the marks: what a framer finds when he measures it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from benchmate.frame.frame import Real
from benchmate.measure.section import Section
from benchmate.model.progress import AsCut, Measured
from benchmate.model.project import Project, Timber

OF_AN_END = ("-tenon", "-bearing")
"""What is cut on an end of a stick: `foot-tenon` may have been measured as `foot`."""

Depths = tuple[int, int]
"""In from the first and from the second reference face, in nanometres."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """One stick: as it was ordered, and as it came out where somebody measured it.

    `inner` is the perfect timber inside by square rule, or nothing by mill rule.
    """

    drawn: Depths
    inner: Depths | None
    measured: Mapping[str, Measured] = field(default_factory=dict)
    as_cut: Mapping[str, AsCut] = field(default_factory=dict)

    def section(self, feature: str) -> Depths:
        """The real section at a joint: measured there, at that end, all along, or as ordered."""
        return self.depth(1, feature), self.depth(2, feature)

    def depth(self, axis: int, feature: str) -> int:
        """One side of the real section at a joint."""
        end = next((feature.removesuffix(of) for of in OF_AN_END if feature.endswith(of)), feature)
        for place in (feature, end, "all"):
            size = self.measured.get(place, Measured())
            real = size.first if axis == 1 else size.second
            if real is not None:
                return real.nm
        return self.drawn[axis - 1]

    def framed(self, axis: int, feature: str) -> int:
        """The depth that other timbers count on: the inner one by square rule, else the real."""
        return self.inner[axis - 1] if self.inner else self.depth(axis, feature)

    def over(self, axis: int, feature: str) -> int:
        """How much more wood there is than other timbers count on."""
        return self.depth(axis, feature) - self.framed(axis, feature)

    def cut(self, feature: str, size: str) -> int | None:
        """A size of a finished part, where it was measured."""
        found = self.as_cut.get(feature, AsCut()).get(size)
        return None if found is None else found.nm


def stock(project: Project, timber: Timber, real: Real) -> Stock:
    """The stick of one timber of a project."""
    drawn = timber.section
    if not isinstance(drawn, Section):
        drawn = project.sections[drawn]
    square = (timber.rule or project.rule) == "square"
    inner = (timber.inner or project.inner[str(timber.section)]) if square else None
    return Stock(
        drawn=_depths(drawn),
        inner=_depths(inner) if inner else None,
        measured=real.measured,
        as_cut=real.as_cut,
    )


def _depths(section: Section) -> Depths:
    return section.first.nm, section.second.nm
