"""Frames set out for tests: from a few answers, and at random within what is sensible."""

from hypothesis import strategies as st

from benchmate.frame.frame import Frame
from benchmate.outset.answering import fill
from benchmate.outset.answers import Answers
from benchmate.outset.project_text import frame_text
from benchmate.store.reading import parse_project

LAPPED = {"ties": "lapped over the plates"}
PEGGED = {"pegs": "heads, ties and braces"}
JOISTED = {"floor": "joists"}
SQUARE = {"rule": "square"}
METRIC = {"units": "mm"}
SMALL = {"bays": "1", "length": "10'", "rafter spacing": "10'"}
"""One bay with two pairs of rafters."""

CHOICES = {
    "corners": ("tenoned", "half-lapped"),
    "ties": ("tenoned into the posts", "lapped over the plates"),
    "floor": ("none", "joists"),
    "braces": ("post to plate", "post to tie", "both", "none"),
    "roof": (
        "butted at the peak",
        "half-lapped at the peak",
        "bridled at the peak",
        "on a ridge",
        "none",
    ),
    "pegs": ("none", "heads, ties and braces"),
    "rule": ("mill", "square"),
}


def answers(*typed: dict[str, str], **more: str) -> Answers:
    """The answers, all of which can be; the rest as suggested."""
    filled = fill({key: text for each in (*typed, more) for key, text in each.items()})
    assert [(row.question.id, row.cannot) for row in filled.faults] == []
    return filled.answers


def told(question: str, *typed: dict[str, str], **more: str) -> str:
    """What is told at a question, in one line; empty for nothing."""
    filled = fill({key: text for each in (*typed, more) for key, text in each.items()})
    cannot = next(row.cannot for row in filled.rows if row.question.id == question)
    return f"{cannot.problem}; {cannot.remedy}" if cannot else ""


def suggestion(question: str, *typed: dict[str, str], **more: str) -> str:
    """The text of a question that is left alone."""
    filled = fill({key: text for each in (*typed, more) for key, text in each.items()})
    return next(row.text for row in filled.rows if row.question.id == question)


def frame(*typed: dict[str, str], **more: str) -> Frame:
    """The frame that the answers make."""
    return Frame(parse_project(frame_text(answers(*typed, more)).encode()), {})


@st.composite
def sensible(draw: st.DrawFn) -> dict[str, str]:
    """Answers that a framer might give: timbers that fit one another, bays that hold them."""
    mm = draw(st.booleans())
    units = "mm" if mm else draw(st.sampled_from(("feet and inches", "inches")))
    per = 25 if mm else 1

    def sized(low: float, high: float) -> float:
        """A size between two in inches, in whole 5 mm or half inches."""
        step = 5 if mm else 0.5
        return step * draw(st.integers(int(low * per / step), int(high * per / step)))

    bays = draw(st.integers(1, 2))
    post = sized(6, 10), sized(6, 10)
    brace = sized(4, 6), sized(3, min(*post) / per * 5 / 8)
    typed = {key: draw(st.sampled_from(each)) for key, each in CHOICES.items()}
    sizes = {
        "length": sized(bays * 90, bays * 140),
        "width": sized(96, 240),
        "post height": sized(84, 132),
        "rafter spacing": sized(44, 60),
        "overhang": draw(st.sampled_from((0, sized(2, 24)))),
    }
    sections = {
        "post": post,
        "sill": (sized(max(post) / per, 12), sized(max(post) / per, 12)),
        "plate": (sized(6, 10), sized(post[0] / per, 11)),
        "tie": (sized(6, 11), sized(5.5, post[1] / per)),
        "brace": brace,
        "rafter": (sized(5, 9), sized(3, 6)),
        "joist": (sized(4, 8), sized(3, 6)),
    }
    typed |= {key: f"{value:g}" for key, value in sizes.items()}
    typed |= {key: f"{one:g} x {other:g}" for key, (one, other) in sections.items()}
    pitch = draw(st.sampled_from(("3", "5", "8-1/2", "9", "12", "16")))
    return typed | {"units": units, "bays": str(bays), "longest": "", "pitch": pitch}
