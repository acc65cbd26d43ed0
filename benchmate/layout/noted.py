"""Notes and blemishes of a timber in words, and where a blemish comes out on its face."""

from benchmate.layout.outlines import Outline
from benchmate.layout.step import Layout
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section
from benchmate.model.directions import Face
from benchmate.model.progress import Blemish, Progress, WrittenNote
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, axis_from, reference_for

WHOLE = "the whole timber"
"""What a note is about that names neither a joint nor a step."""


def beside_reference(face: Face) -> Face:
    """The reference face that a long face shares an arris with, from which one measures in."""
    return reference_for(across(axis_from(face)))


def arris_of(stick: Stick, face: Face) -> str:
    """That arris in words: `South-West arris`."""
    return f"{stick.pose.arris_words(face, beside_reference(face))} arris"


def blemish_name(stick: Stick, blemish: Blemish, tape: Tape) -> str:
    """What it is and where, in brief: `knot on the South face, 2' 3" from the squared foot`."""
    words = stick.pose.words
    what = "blemish" if blemish.kind == "other" else blemish.kind
    end = words(Face.REFERENCE_END)
    return (
        f"{what} on the {words(blemish.side)}, {tape.text(blemish.from_end)} from the squared {end}"
    )


def blemish_sizes(stick: Stick, blemish: Blemish, tape: Tape) -> str:
    """How long, wide and deep it is, and how far in it starts."""
    deep = (
        f"depth not known, counted {tape.text(blemish.depth)}"
        if blemish.deep is None
        else f"{tape.text(blemish.deep)} deep"
    )
    return (
        f"{tape.text(blemish.long)} long; {tape.text(blemish.from_arris)} in from the "
        f"{arris_of(stick, blemish.side)}, {tape.text(blemish.wide)} wide; {deep}"
    )


def blemish_words(stick: Stick, blemish: Blemish, tape: Tape) -> str:
    """All of it in one line, with what was written of it."""
    told = f"{blemish_name(stick, blemish, tape)}, {blemish_sizes(stick, blemish, tape)}"
    text = " ".join(blemish.text.split())
    return f"{told[:1].upper()}{told[1:]}{f': {text}' if text else ''}"


def blemish_outline(stick: Stick, blemish: Blemish) -> Outline:
    """Where it comes out on its face, as `layout.outlines` sees a face: (along, in)."""
    near = stick.start + blemish.from_end
    a, c = near.nm, (near + blemish.long).nm
    b, d = blemish.from_arris.nm, (blemish.from_arris + blemish.wide).nm
    return Outline(((a, b), (c, b), (c, d), (a, d)), (None,) * 4)


def off_the_stick(stick: Stick, section: Section, blemish: Blemish) -> tuple[str, Length] | None:
    """The way in which a blemish runs off a stick of some section, and by how much."""
    face = blemish.side
    wide, deep = (
        section.first if axis is Axis.FIRST else section.second
        for axis in (across(axis_from(face)), axis_from(face))
    )
    over = {
        "past the far end": blemish.from_end + blemish.long - stick.overall,
        "over the arris across the face": blemish.from_arris + blemish.wide - wide,
        "through the opposite face": (blemish.deep or ZERO) - deep,
    }
    return next(((words, by) for words, by in over.items() if by.nm > 0), None)


def about_words(layout: Layout, about: str) -> str:
    """What a note is about, in words; an id that the timber has no more is told as it is."""
    if not about:
        return WHOLE
    titles = {step.id: step.title for step in layout.steps}
    titles |= {feature.id: feature.title for feature in layout.features}
    return titles.get(about, f'"{about}"')


def notes_at(progress: Progress, feature: str, step: str) -> tuple[WrittenNote, ...]:
    """The notes about a step, and those about its joint, oldest first."""
    return tuple(note for note in progress.notes if note.about in (feature, step))


def notes_on_stick(progress: Progress) -> tuple[WrittenNote, ...]:
    """The notes about the whole timber, oldest first."""
    return tuple(note for note in progress.notes if not note.about)


def one_line(text: str) -> str:
    """A note's words without its line breaks."""
    return " ".join(text.split())
