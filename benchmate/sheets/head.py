"""What stands at the head of a timber's sheet: what it is, how it lies, how long it is."""

from collections.abc import Iterator

from benchmate.measure.section import section_text
from benchmate.model.directions import Face
from benchmate.sheets.sheet import TimberSheet


def title(sheet: TimberSheet) -> str:
    """The timber in one line: `SE post (post-se): post, white pine, 7" x 7"`."""
    timber, stick = sheet.timber, sheet.layout.stick
    section = section_text(stick.nominal, sheet.tape)
    return f"{timber.name} ({timber.id}): {timber.what}, {section}"


def head_lines(sheet: TimberSheet) -> Iterator[str]:
    """The lines under the title. No length is told of a timber that is stopped."""
    yield from _alarms(sheet)
    if not (sheet.stops or sheet.trouble):
        yield lengths(sheet)
    yield faces_line(sheet)
    yield sizes_line(sheet)
    yield from (f"LOOK: {each}" for each in sheet.looks)
    if sheet.timber.note:
        yield f"Note: {' '.join(sheet.timber.note.split())}"
    yield from (f"Noted: {each}" for each in sheet.noted)


def _alarms(sheet: TimberSheet) -> Iterator[str]:
    if sheet.trouble:
        yield f"FIGURES WITHHELD: {' '.join(sheet.trouble.split())}"
    yield from (f"STOP: {each}" for each in sheet.stops)


def lengths(sheet: TimberSheet) -> str:
    """Both lengths, each by its name."""
    stick, tape = sheet.layout.stick, sheet.tape
    return f"Shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}."


def faces_line(sheet: TimberSheet) -> str:
    """Reference faces and end, hand and crown."""
    words = sheet.layout.stick.pose.words
    return (
        f"Reference: {words(Face.FIRST)} first, {words(Face.SECOND)} second, measured from the "
        f"{words(Face.REFERENCE_END)}. {sheet.hand.capitalize()}. Crown {sheet.crown}."
    )


def sizes_line(sheet: TimberSheet) -> str:
    """The rule, and which real sizes the figures go by."""
    inner = sheet.layout.stick.inner
    within = f", inner timber {section_text(inner, sheet.tape)}" if inner else ""
    lead = f"{sheet.rule.capitalize()} rule{within}."
    if not sheet.used:
        return f"{lead} Nothing measured yet: every size is as drawn."
    return f"{lead} Real sizes used: {'; '.join(sheet.used)}. All else as drawn."
