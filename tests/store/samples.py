"""A small project as text, to be changed by a test, and pieces to make others from."""

from datetime import UTC, datetime
from pathlib import Path

from benchmate.measure.length import Length
from benchmate.model.progress import Progress, Tick

AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)
"""When the ticks of samples were made."""

HEAD = """\
format = 1
name = "Apple store"
"""

SILL = """
[[timber]]
id = "south-sill"
name = "South sill"
kind = "sill"
section = "8 x 8"
first_face = "south"
second_face = "up"
reference_end = "west"
length = "12'"
"""

POST = """
[[timber]]
id = "post-sw"
name = "South-west post"
kind = "post"
section = "7 x 7"
first_face = "south"
second_face = "west"
reference_end = "foot"
length = "7' 11"
"""

JOINT = """
[[joint]]
id = "sw-foot"
family = "tenon"
timber = "post-sw"
end = "foot"
into = "south-sill"
at = "0"
length = "4"
thickness = "2"
set_back = "2"
"""

CHAMFER = """
[[chamfer]]
id = "inside-chamfer"
on = ["post-sw"]
arrises = ["far-far"]
leg = "3/4"
near_stop = { shoulder = "foot", distance = "8" }
far_stop = { shoulder = "head", distance = "6" }
"""

PLATES = """
[[timber]]
id = "west-plate"
name = "West plate"
kind = "plate"
section = "8 x 8"
first_face = "up"
second_face = "south"
reference_end = "west"
at = { north = "0", up = "9'" }
reference_end_at = "0"

[[timber]]
id = "east-plate"
name = "East plate"
kind = "plate"
section = "8 x 8"
first_face = "up"
second_face = "south"
reference_end = "west"
at = { north = "0", up = "9'" }
far_end_at = "26'"
"""

SCARF = """
[[joint]]
id = "plate-scarf"
family = "scarf"
timber = "west-plate"
end = "east"
into = "east-plate"
kind = "stop-splayed"
at = "14'"
length = "3 ft"
keeps = "up"
butt = "2"
"""

STORE = HEAD + SILL + POST + JOINT + CHAMFER

PROJECTS = Path(__file__).parents[2] / "projects"


def put(folder: Path, text: str = STORE) -> Path:
    """Write a project file into a folder, which is made if need be; the folder."""
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "project.toml").write_text(text, "utf-8")
    return folder


def tick(step: str, **marked: Length) -> Tick:
    """A tick made on a May morning."""
    return Tick(step=step, marked=marked, at=AT)


def ticked(progress: Progress, *steps: str) -> Progress:
    """The progress with steps ticked besides."""
    return progress.model_copy(update={"ticks": (*progress.ticks, *map(tick, steps))})
