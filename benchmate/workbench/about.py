"""One timber of the frame in a few lines: what it is, where it stands, its like, what meets it."""

from benchmate.frame.frame import Frame
from benchmate.layout.likeness import alike
from benchmate.layout.roster import Entry, entry, looks
from benchmate.measure.section import section_text
from benchmate.workbench.frame_form import alike_line, meets_words, place_words
from benchmate.workbench.walk import Walk


def about(frame: Frame, walk: Walk) -> tuple[str, ...]:
    """The lines about a timber, its name and kind first.

    What stops it comes next. No length of such a timber is told, nor where others meet it: none of
    them is fit to cut to.
    """
    timber = walk.timber.id
    found, tape, stops = entry(frame, timber), frame.tape, _stops(walk)
    stick = found.stick
    alike_words, meets = like_words(frame, timber), _meets(frame, found)
    title = f"{found.timber.name}: {found.timber.what}, {section_text(stick.nominal, tape)}"
    if stops:
        return (title, *stops, f"{looks(found)}.", alike_words, meets)
    return (
        title,
        f"{looks(found)}; {place_words(found, tape)}.",
        f"Shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}.",
        alike_words,
        meets,
        *(meets_words(each, tape) for each in found.meets),
    )


def _stops(walk: Walk) -> tuple[str, ...]:
    """Why nothing of a timber is to be cut yet, each once: it cannot be read, or cannot be."""
    trouble = (f"STOP: {walk.trouble}",) if walk.trouble else ()
    told = (f"STOP: {found.message}. To mend it: {found.remedy}." for found in walk.stops)
    return tuple(dict.fromkeys((*trouble, *told)))


def like_words(frame: Frame, timber: str) -> str:
    """The timbers marked like it, with a count of each hand."""
    group = next(group for group in alike(frame) if timber in group.timbers)
    if len(group.timbers) == 1:
        return f"No other is marked like it ({group.hand(timber)})."
    names = {each.id: each.name for each in frame.project.timbers}
    return f"Marked alike: {alike_line(group, names)}."


def _meets(frame: Frame, found: Entry) -> str:
    names = dict.fromkeys(frame.timber(each.timber).name for each in found.meets)
    return f"Meets {', '.join(names)}." if names else "Meets no other timber."
