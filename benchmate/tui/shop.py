"""Where the framer's projects lie, seen from where the program was started."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.workbench import shelf
from benchmate.workbench.new_project import home
from benchmate.workbench.preferences import find_preferences

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from benchmate.outset.own import Own


@dataclass(frozen=True, slots=True)
class Shop:
    """The folder the program was started in, and the system's environment."""

    here: Path
    environ: Mapping[str, str]

    @property
    def home(self) -> Path:
        """The folder new projects go to."""
        return home(self.here, self.environ)

    @property
    def own(self) -> Own:
        """What the framer's settings suggest to a new project."""
        return find_preferences(self.environ).preferences.own

    def projects(self) -> tuple[Path, ...]:
        """Every project that can be opened."""
        return shelf.every_project(self.here, self.environ)

    def place_of(self, project: Path) -> str:
        """Where a project lies, in words."""
        return shelf.place_of(project, self.here, self.environ)
