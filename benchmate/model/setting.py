"""How a framing square, a saw and a sliding bevel are set for what slants, and that in words."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum

from benchmate.measure.angle import angle_text
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape


class Arm(Enum):
    """An arm of a framing square: the blade is the long one, the tongue the short one."""

    BLADE = "blade"
    TONGUE = "tongue"


@dataclass(frozen=True, slots=True, kw_only=True)
class Square:
    """A framing square with a figure on each arm, both on one edge of the timber.

    `arm` is the one to strike along; None where the square is only stepped along the edge. In
    words, `edge` is that edge, and `towards` the end that the blade's figure lies nearer to; both
    are empty where the line is struck already.
    """

    blade: Length
    tongue: Length
    arm: Arm | None
    towards: str = ""
    edge: str = ""

    def words(self, tape: Tape) -> str:
        """Both figures and how the square lies: `blade 12" towards the foot, tongue 8", on ...`.

        In inches even on a tape in feet, as a square has no feet.
        """
        square = tape.without_feet
        towards = f" towards the {self.towards}" if self.towards else ""
        figures = f"blade {square.text(self.blade)}{towards}, tongue {square.text(self.tongue)}"
        return f"{figures}, on the {self.edge}" if self.edge else figures


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """How a square, and a saw or a sliding bevel, are set for a line or a cut that slants.

    `off_square` is the bevel of the saw, and `to_edge` what the line makes with the long edge, both
    in tenths of a degree. With `bevel` a sliding bevel takes the saw's place: where no saw gets in.
    What `leans_in` is struck square across and leans only going in. Without a `square` the bevel is
    set by its angle alone, off square to the face. A line with a `straightedge` is struck from end
    to end with that, as the arm ends well inside it. Raises ValueError for one that sets nothing.
    """

    square: Square | None = None
    off_square: int | None = None
    to_edge: int | None = None
    bevel: bool = False
    leans_in: bool = False
    straightedge: bool = False

    def __post_init__(self) -> None:
        if self.square is None and self.off_square is None:
            raise ValueError("a setting sets a square, a bevel or both")

    def lying(self, towards: str, edge: str) -> "Setting":
        """The same with how the square lies: its blade towards an end, both figures on an edge."""
        square = self.square and replace(self.square, towards=towards, edge=edge)
        return replace(self, square=square)

    def by_straightedge(self) -> "Setting":
        """The same for a line that the square is too short for; the saw leans all the same."""
        return replace(self, square=None, straightedge=True)

    def with_bevel(self) -> "Setting":
        """The same for a sliding bevel: where a saw does not get in."""
        return replace(self, bevel=True)

    def leaning_in(self) -> "Setting":
        """The same for a line that is struck square across and leans only going in."""
        return replace(self, bevel=True, leans_in=True)

    def words(self, tape: Tape) -> str:
        """The whole setting, as short as it can be said: which arm first, then both figures."""
        across = "strike square across; bevel going in, " if self.leans_in else ""
        return across + "; ".join(self._parts(tape))

    def _parts(self, tape: Tape) -> Iterator[str]:
        if self.straightedge:
            yield "straightedge from one end of the line to the other"
        if self.square is not None:
            arm = self.square.arm
            struck = f"{self._does}along the {arm.value}: " if arm else ""
            yield f"{struck}{self.square.words(tape)}"
        if self.off_square is not None:
            yield self._off_square(self.off_square)
        elif self.to_edge is not None:
            yield f"{angle_text(self.to_edge)} to the long edge"

    @property
    def _does(self) -> str:
        """What is done along an arm."""
        if self.leans_in:
            return ""
        return "bevel set " if self.bevel else "strike "

    def _off_square(self, tenths: int) -> str:
        off = f"{angle_text(tenths)} off square"
        if self.square is None and not self.straightedge:
            return f"{'' if self.leans_in else 'bevel '}{off} to the face"
        tool = "" if self.bevel else "saw "
        edge = "" if self.to_edge is None else f" ({angle_text(self.to_edge)} to edge)"
        return f"{tool}{off}{edge}"
