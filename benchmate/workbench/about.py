"""One timber of the frame in a few lines: what it is, where it stands, its like, what meets it."""

from benchmate.frame.frame import Frame
from benchmate.layout.likeness import Alike, alike
from benchmate.layout.roster import Entry, entry, looks
from benchmate.measure.section import section_text
from benchmate.model.project import Project
from benchmate.workbench.frame_form import alike_line, meets_words, place_words


class Likes:
    """The like members of a project, as drawn; worked out anew when the project is another."""

    def __init__(self) -> None:
        self._project: Project | None = None
        self._groups: tuple[Alike, ...] = ()

    def of(self, project: Project) -> tuple[Alike, ...]:
        """The groups of timbers that are marked alike, in file order."""
        if project is not self._project:
            self._project, self._groups = project, alike(Frame(project, {}))
        return self._groups


def about(frame: Frame, groups: tuple[Alike, ...], timber: str) -> tuple[str, ...]:
    """The lines about a timber, its name and kind first; `groups` are the frame's like members."""
    found, tape = entry(frame, timber), frame.project.tape
    stick = found.stick
    return (
        f"{found.timber.name}: {found.timber.what}, {section_text(stick.nominal, tape)}",
        f"{looks(found)}; {place_words(found, tape)}.",
        f"Shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}.",
        like_words(frame, groups, timber),
        _meets(frame, found),
        *(meets_words(meets, tape) for meets in found.meets),
    )


def like_words(frame: Frame, groups: tuple[Alike, ...], timber: str) -> str:
    """The timbers marked like it, with a count of each hand."""
    group = next(group for group in groups if timber in group.timbers)
    if len(group.timbers) == 1:
        return f"No other is marked like it ({group.hand(timber)})."
    names = {each.id: each.name for each in frame.project.timbers}
    return f"Marked alike: {alike_line(group, names)}."


def _meets(frame: Frame, found: Entry) -> str:
    names = dict.fromkeys(frame.timber(each.timber).name for each in found.meets)
    return f"Meets {', '.join(names)}." if names else "Meets no other timber."
