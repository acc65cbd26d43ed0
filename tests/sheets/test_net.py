"""The drawing of the four faces."""

import re
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from benchmate.sheets.ink import SMALL, room_for
from benchmate.sheets.net import WIDTH, net
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]
SVG = "{http://www.w3.org/2000/svg}"
TIMBERS = ("post-se", "post-ne", "sill-south", "plate-north")


def upright(drawn: ET.Element) -> list[ET.Element]:
    """The running figures."""
    return [text for text in drawn.iter(f"{SVG}text") if text.get("transform")]


def level(drawn: ET.Element) -> list[ET.Element]:
    """The words that stand level, the names of the faces not among them."""
    texts = drawn.iter(f"{SVG}text")
    return [text for text in texts if not text.get("transform") and float(text.get("x", 0)) > 0]


@pytest.mark.parametrize("timber", TIMBERS)
def test_every_running_figure_is_there_and_none_overlaps(timber: str, sheet_of: SheetOf) -> None:
    """They stand at least a line of writing apart."""
    drawn = ET.fromstring(net(sheet_of(timber)))  # noqa: S314 - our own
    places = sorted(float(text.get("x", 0)) for text in upright(drawn))
    assert len(places) > 3
    assert all(high - low >= SMALL - 0.02 for low, high in pairwise(places))
    assert all(0 < place < WIDTH + 2 for place in places)


@pytest.mark.parametrize("timber", TIMBERS)
def test_figures_on_the_faces_do_not_overlap(timber: str, sheet_of: SheetOf) -> None:
    """Two in one row are as far apart as they are wide."""
    drawn = ET.fromstring(net(sheet_of(timber)))  # noqa: S314 - our own
    found = [
        (float(text.get("y", 0)), float(text.get("x", 0)), room_for(text.text or ""))
        for text in level(drawn)
    ]
    assert found
    for place, (y, x, width) in enumerate(found):
        for other_y, other_x, other_width in found[place + 1 :]:
            if abs(y - other_y) < SMALL * 0.8:
                assert x + width <= other_x + 0.02 or other_x + other_width <= x + 0.02


def test_it_is_black_ink_only(sheet_of: SheetOf) -> None:
    """No colour and no grey: white is paper."""
    drawn = net(sheet_of("post-se"))
    assert set(re.findall(r'(?:fill|stroke)="([^"]*)"', drawn)) <= {"#fff", "none"}
    widths = {float(each) for each in re.findall(r'stroke-width="([^"]*)"', drawn)}
    assert min(widths) * 600 / 25.4 >= 3, "three dots of a printer at least"


def test_nothing_is_drawn_where_nothing_can_be_trusted(sheet_of: SheetOf, demo: Path) -> None:
    """A file that cannot be read leaves no drawing."""
    (demo / "progress" / "post-se.toml").write_text("format = ", "utf-8")
    assert net(sheet_of("post-se")) == ""
