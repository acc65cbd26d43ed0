"""The same corner of a frame eight ways round: turned by quarters on its plan, and mirrored."""

from dataclasses import dataclass

from tests.builders import length

_ROUND = ("east", "north", "west", "south")
_MIRROR = {"east": "west", "west": "east"}


@dataclass(frozen=True, slots=True)
class Plan:
    """How a corner is turned: so many quarters against the sun, after it was mirrored or not."""

    quarters: int = 0
    mirrored: bool = False

    def way(self, word: str) -> str:
        """A direction of the corner as it is drawn, once that is turned; up and down stay."""
        if word not in _ROUND:
            return word
        seen = _MIRROR.get(word, word) if self.mirrored else word
        return _ROUND[(_ROUND.index(seen) + self.quarters) % 4]

    def at(self, **drawn: str) -> dict[str, str]:
        """Coordinates of the corner as it is drawn, once that is turned."""
        return dict(self._at(axis, text) for axis, text in drawn.items())

    def along(self, axis: str, text: str) -> str:
        """One coordinate of them: where along the turned axis it comes."""
        return self._at(axis, text)[1]

    def _at(self, axis: str, text: str) -> tuple[str, str]:
        look = self.way(axis)
        if look in ("east", "north", "up"):
            return look, text
        turned = {"west": "east", "south": "north"}[look]
        return turned, (-length(text)).exact_text()


PLANS = tuple(Plan(quarters, mirrored) for mirrored in (False, True) for quarters in range(4))
"""All eight."""
