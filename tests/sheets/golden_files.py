"""Writes the golden sheets anew: `python -m tests.sheets.golden_files`."""

import os
import shutil
import tempfile
import time
from pathlib import Path

from benchmate.workbench.opening import read_bench
from benchmate.workbench.print_out import print_frame
from tests.sheets.conftest import CHANGED, DEMO, MADE

GOLDEN = Path(__file__).parent / "golden"

SHEETS = ("post-se", "sill-south", "frame_schedule", "joint_schedule")
"""A post in the middle of its work, a sill with a mark to look at again, and the schedules."""


def made(folder: Path) -> dict[str, bytes]:
    """The sheets as they come out now, each by its file's name."""
    demo = Path(shutil.copytree(DEMO, folder / "four-posts"))
    for path in demo.rglob("*.toml"):
        os.utime(path, (CHANGED, CHANGED))
    done = print_frame(read_bench(demo), folder / "out", clock=lambda: MADE)
    names = [name for name in done.files if name.partition(".")[0] in SHEETS]
    return {name: (done.folder / name).read_bytes() for name in names}


if __name__ == "__main__":
    os.environ["TZ"] = "UTC"
    time.tzset()
    with tempfile.TemporaryDirectory() as place:
        for file, data in made(Path(place)).items():
            (GOLDEN / file).write_bytes(data)
