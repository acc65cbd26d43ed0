"""Draws the README's picture anew: `python -m tests.pictures`."""

import asyncio
import re
import shutil
import tempfile
from html import unescape
from pathlib import Path

from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import UNICODE

HERE = Path(__file__).parent
DEMO = HERE.parents[1] / "projects" / "orchard-tool-shed"
PICTURE = HERE / "bench.svg"
SIZE = (120, 40)


async def draw() -> str:
    """The first screen of the demo as an SVG."""
    with tempfile.TemporaryDirectory() as folder:
        demo = shutil.copytree(DEMO, Path(folder) / DEMO.name)
        app = BenchmateApp(str(demo), UNICODE)
        async with app.run_test(size=SIZE) as pilot:
            await pilot.pause()
            picture = app.export_screenshot(title="benchmate")
    # Without it some programs leave out the spaces the big digits begin with.
    return picture.replace("<svg ", '<svg xml:space="preserve" ', 1)


def words_in(svg: str) -> str:
    """The text of an SVG, spaces made plain."""
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", svg)).split())


if __name__ == "__main__":
    PICTURE.write_text(asyncio.run(draw()), encoding="utf-8")
