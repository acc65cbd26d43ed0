"""A timber rolled on the horses: the view follows the step, and loses no mark."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.progress import Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.rolling import Rolling
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench

MEADOW = Path(__file__).parents[2] / "projects" / "meadow-cart-house"
PANES = [(80, 16), (120, 30)]
"""The room for the faces in a window of 80 x 24 and of 120 x 40."""


@pytest.fixture(scope="module")
def meadow() -> Iterator[Desk]:
    """The frame with every family of joint in it, read and not ticked."""
    bench = Bench(Keeper.open(MEADOW))
    yield Desk(bench, UNICODE)
    bench.close()


def of_role(drawing: Drawing, role: Role) -> list[str]:
    """The runs of a role, from the top."""
    return [text for row in drawing.rows for text, each in row if each is role]


@pytest.mark.parametrize(
    "timber", ["plate-south-1", "plate-north-1", "brace-sw", "principal-south", "sleeper"]
)
def test_the_mark_in_hand_is_always_in_sight(meadow: Desk, timber: str) -> None:
    """At every step of a plate of 120 and of a few others, near and far, in two windows."""
    meadow.take_timber(timber)
    rolling = Rolling(meadow)
    for place, step in enumerate(meadow.walk.steps):
        meadow.take_step(place)
        rolling.follow()
        if step.line is None or meadow.walk.withheld(step):
            continue
        for rolling.whole in (True, False):
            for width, height in PANES:
                drawing = rolling.drawing(width, height)
                assert drawing is not None
                # A depth has no line on its face: its figure stands over its waste instead.
                pointed = of_role(drawing, Role.LOUD)[1:]
                assert of_role(drawing, Role.CURRENT) or pointed, (step.id, width)


def test_every_figure_along_is_reversed_where_it_is_struck(meadow: Desk) -> None:
    """The figure of the bench, letter by letter, on the face that is turned up."""
    meadow.take_timber("plate-south-1")
    rolling, seen = Rolling(meadow), 0
    for place, step in enumerate(meadow.walk.steps):
        meadow.take_step(place)
        rolling.follow()
        figure = meadow.figure()
        tagged = [tag for tag in rolling.tags()[rolling.face] if tag.current]
        if not tagged or figure is None:
            continue
        for width, height in PANES:
            drawing = rolling.drawing(width, height)
            assert drawing is not None
            assert any(figure.text() in text for text in of_role(drawing, Role.LOUD)), step.id
            seen += 1
    assert seen > 50


def test_it_rolls_round_both_ways(desk: Desk) -> None:
    """Four on and four back, and one is where one was; each key undoes the other."""
    rolling = Rolling(desk)
    start, faces = rolling.face, []
    for _ in range(4):
        rolling.roll(1)
        faces.append(rolling.face)
    assert rolling.face is start
    assert len(set(faces)) == 4
    back = []
    for _ in range(4):
        back.append(rolling.face)
        rolling.roll(-1)
    assert rolling.face is start
    assert back == [start, *faces[2::-1]]


def test_it_says_which_faces_come_up(desk: Desk) -> None:
    """The one before and the one after are named, and are what rolling brings."""
    rolling = Rolling(desk)
    pose = desk.walk.layout.stick.pose
    before, after = rolling.neighbours
    rolling.roll(1)
    assert pose.words(rolling.face) == after
    rolling.roll(-2)
    assert pose.words(rolling.face) == before


def test_the_view_follows_the_step_and_stays_where_it_is_turned(desk: Desk) -> None:
    """Another step turns to a face that shows it; looking again at the same one does not."""
    rolling = Rolling(desk)
    assert rolling.face in desk.step.faces
    rolling.roll(1)
    turned = rolling.face
    rolling.follow()
    assert rolling.face is turned
    desk.go_to("post-se", "head-tenon/shoulder")
    rolling.follow()
    assert rolling.face in desk.step.faces


def test_a_face_without_the_mark_says_where_it_is(desk: Desk) -> None:
    """So that no one looks for it, or strikes it, on the wrong face."""
    rolling = Rolling(desk)
    assert not [saying for saying in rolling.words() if saying.label == "see"]
    rolling.roll(1)
    (see,) = [saying for saying in rolling.words() if saying.label == "see"]
    assert see.warning
    assert see.text.startswith("Not on the South face: it is on the East face, West face")
    drawing = rolling.drawing(80, 16)
    assert drawing is not None
    assert not of_role(drawing, Role.CURRENT)


def test_the_words_carry_the_figure_and_all_that_guards_it(desk: Desk) -> None:
    """Title, figure with its hook, waste side and caution; figures run from, reference arris."""
    said = {saying.label: saying.text for saying in Rolling(desk).words()}
    assert said["mark"] == '3-1/2" from the South face, in towards the North face'
    assert said["waste"] == "Towards the North face."
    assert said["care"] == "Never measure this from the North face."
    assert "the foot shoulder line" in said["runs"]
    assert said["arris"] == "the reference arris is South-East"
    desk.go_to("sill-north", "ne-foot-mortise/start")
    assert "waits" in {saying.label for saying in Rolling(desk).words()}
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    assert "again" in {saying.label for saying in Rolling(desk).words()}


def test_a_stop_draws_nothing_but_the_word(desk: Desk) -> None:
    """No line, no waste and no figure to cut to."""
    desk.go_to("post-se", "foot-tenon/section")
    kept = desk.bench.sizes("post-se", desk.step)
    thin = Measured(first=Length.inches(3))
    desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
    desk.go_to("post-se", "foot-tenon/far-cheek")
    rolling = Rolling(desk)
    drawing = rolling.drawing(80, 16)
    assert drawing is not None
    assert {role for row in drawing.rows for _, role in row} == {Role.LOUD}
    assert "stop" in {saying.label for saying in rolling.words()}
    assert "mark" not in {saying.label for saying in rolling.words()}


def test_the_ends_are_looked_at_and_left(desk: Desk) -> None:
    """Both ends by their names, and rolling goes back to the faces."""
    rolling = Rolling(desk)
    rolling.look_at_ends()
    drawing = rolling.drawing(80, 16)
    assert drawing is not None
    assert {"foot", "head"} <= set(of_role(drawing, Role.TITLE))
    rolling.roll(1)
    assert not rolling.ends


def test_a_timber_begins_at_a_reference_face(meadow: Desk) -> None:
    """A step on no face shows the first reference face, never one left over from another timber."""
    meadow.take_timber("plate-south-1")
    rolling = Rolling(meadow)
    rolling.roll(2)
    meadow.take_timber("tie-1")
    meadow.take_step(meadow.walk.place("stick/crown"))
    rolling.follow()
    assert rolling.face is Face.FIRST
