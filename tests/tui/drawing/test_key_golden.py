"""Keys to look at as a framer would: would I know at once which timber this is?

`golden/key-<name>.txt` holds each as plain text, without the colours, rows stripped at the right.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from benchmate.tui.drawing.key import View, draw_key, draw_keys, views_for
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from tests.tui.drawing.key_frames import shed

GOLDEN = Path(__file__).parent / "golden"

VIEWS = {
    "plan": View.PLAN,
    "south": View.FROM_SOUTH,
    "east": View.FROM_EAST,
    "north": View.FROM_NORTH,
    "west": View.FROM_WEST,
}
SIZES = ((20, 6), (44, 10), (78, 20), (200, 50))
SINGLE = (
    *(("se-post", view, size) for view in ("plan", "south") for size in SIZES),
    *(("se-post", view, (44, 10)) for view in ("east", "north", "west")),
    *(
        (timber, view, (44, 10))
        for timber, view in (
            ("south-plate", "south"),
            ("se-brace", "south"),
            ("joist-2", "west"),
            ("joist-2", "south"),
            ("south-rafter-4", "east"),
        )
    ),
)
CASES = (
    *((*case, UNICODE) for case in SINGLE),
    *(("se-post", view, size, ASCII) for view in ("plan", "south") for size in SIZES[:2]),
    ("south-rafter-4", "east", (44, 10), ASCII),
)
PAIRS = tuple(
    (timber, glyphs)
    for timber in ("se-post", "south-sill", "east-brace-south", "middle-tie")
    for glyphs in (UNICODE, ASCII)
)


@pytest.mark.parametrize(("timber", "view", "size", "glyphs"), CASES)
def test_a_key_looks_as_it_did_when_it_was_judged(
    timber: str, view: str, size: tuple[int, int], glyphs: Glyphs
) -> None:
    """Any change to a key is seen and judged again before it is kept."""
    width, height = size
    drawing = draw_key(shed(), timber, VIEWS[view], width=width, height=height, glyphs=glyphs)
    assert _bare(drawing.text) == _golden(_name(timber, view, size, glyphs))


@pytest.mark.parametrize(("timber", "glyphs"), PAIRS)
def test_a_pair_of_views_looks_as_it_did_when_it_was_judged(timber: str, glyphs: Glyphs) -> None:
    """As for one view."""
    plan, best, *_ = views_for(shed(), timber)
    drawing = draw_keys(shed(), timber, (plan, best), width=44, height=10, glyphs=glyphs)
    assert _bare(drawing.text) == _golden(_name(timber, "pair", (44, 10), glyphs))


def test_no_golden_key_is_left_over() -> None:
    """Every file is compared with a drawing."""
    names = {_name(*case) for case in CASES}
    names |= {_name(timber, "pair", (44, 10), glyphs) for timber, glyphs in PAIRS}
    assert {path.stem for path in GOLDEN.glob("key-*")} == names


def _name(timber: str, view: str, size: tuple[int, int], glyphs: Glyphs) -> str:
    plain = "-ascii" if glyphs is ASCII else ""
    return f"key-{timber}-{view}{plain}-{size[0]}x{size[1]}"


def _bare(text: str) -> str:
    return "".join(f"{line.rstrip()}\n" for line in text.splitlines())


def _golden(name: str) -> str:
    return (GOLDEN / f"{name}.txt").read_text("utf-8")
