"""The walks of an open project, each kept for as long as nothing that it follows from changes."""

from collections.abc import Callable, Iterable
from typing import NamedTuple

from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.progress import Progress
from benchmate.workbench.walk import Walk, walk_of


class _Laid(NamedTuple):
    """A walk and everything its marks were laid out from.

    That is held here, not asked of the old frame later: a frame reads a stick's real sizes only
    when it is asked for them, and by then they may be the new ones.
    """

    walk: Walk
    inputs: tuple[object, ...]


class Walks:
    """One walk a timber, made when first asked for.

    `progress` gives what is kept for a timber, `trouble` why its figures cannot be trusted.
    """

    def __init__(
        self, frame: Frame, progress: Callable[[str], Progress], trouble: Callable[[str], str]
    ) -> None:
        self._frame = frame
        self._progress = progress
        self._trouble = trouble
        self._laid: dict[str, _Laid] = {}

    def of(self, timber: str) -> Walk:
        """A timber as it stands. Raises KeyError for an unknown id."""
        found = self._laid.get(timber)
        if found is None:
            found = self._laid[timber] = self._lay(timber)
        return found.walk

    def take(self, frame: Frame) -> None:
        """Go by another frame: only walks whose marks can differ are laid out anew."""
        known = {timber.id for timber in frame.project.timbers}
        self._frame = frame
        self._laid = {
            timber: laid
            for timber, laid in self._laid.items()
            if timber in known and frame.inputs(timber) == laid.inputs
        }
        self.stand(tuple(self._laid))

    def stand(self, timbers: Iterable[str]) -> None:
        """Look at what is ticked on some timbers again; the marks themselves stay."""
        for timber in timbers:
            laid = self._laid.get(timber)
            if laid is not None:
                self._laid[timber] = laid._replace(walk=self._standing(laid.walk))

    def _lay(self, timber: str) -> _Laid:
        inputs = self._frame.inputs(timber)
        walk = walk_of(
            self._frame.timber(timber),
            lay_out(self._frame, timber),
            self._progress(timber),
            self._frame.tape,
            self._trouble(timber),
        )
        return _Laid(walk, inputs)

    def _standing(self, walk: Walk) -> Walk:
        """The walk itself while nothing has been done on its timber."""
        progress, trouble = self._progress(walk.timber.id), self._trouble(walk.timber.id)
        if (progress, trouble) == (walk.progress, walk.trouble):
            return walk
        return walk_of(walk.timber, walk.layout, progress, walk.tape, trouble)
