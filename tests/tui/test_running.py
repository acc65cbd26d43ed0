"""The running figures: one place they run from, and nothing shown where it does not hold."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.directions import LONG_FACES
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.drawing.tags import SetOff, Tag
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.running import datum_words, running_figures
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench

MEADOW = Path(__file__).parents[2] / "projects" / "meadow-cart-house"


@pytest.fixture(scope="module")
def meadow() -> Iterator[Desk]:
    """The frame with every family of joint in it, read and not ticked."""
    bench = Bench(Keeper.open(MEADOW))
    yield Desk(bench, UNICODE)
    bench.close()


def tags(desk: Desk) -> list[Tag]:
    """The figures of all faces."""
    return [tag for each in running_figures(desk).values() for tag in each]


def test_they_run_from_the_shoulder_once_it_is_struck(desk: Desk) -> None:
    """And from the squared end when swapped; the nought stands where they run from."""
    assert datum_words(desk) == "foot shoulder line"
    zero = {tag.at for tag in tags(desk) if tag.figure == "0"}
    assert zero == {0}
    desk.swap()
    assert datum_words(desk) == "squared foot"
    zero = {tag.at for tag in tags(desk) if tag.figure == "0"}
    assert zero == {desk.walk.layout.stick.start.nm}


def test_each_is_the_distance_from_the_nought_or_says_otherwise(desk: Desk) -> None:
    """What is written beside a mark is how far it lies from where the others run from."""
    tape = desk.walk.tape
    for _ in range(2):
        found = tags(desk)
        zero = next(tag.at for tag in found if tag.figure == "0")
        told = [tag for tag in found if not tag.source and tag.figure != "0"]
        assert len(told) > 9
        for tag in told:
            text = tape.text(Length(abs(tag.at - zero)))
            signs = (UNICODE.tick, UNICODE.look_again, UNICODE.waiting)
            assert tag.figure in (text, *(f"{sign} {text}" for sign in signs))
        assert all(tag.source.startswith("from ") for tag in found if tag.source)
        desk.swap()


def test_the_one_in_hand_is_marked_and_the_others_have_their_signs(desk: Desk) -> None:
    """Ticked, waiting and look-again stand before the figure as in the list of steps."""
    desk.go_to("sill-south", "sw-foot-mortise/finish")
    found = tags(desk)
    assert {tag.figure for tag in found if tag.current} == {'! 6-15/16"'}
    signs = {tag.figure.split(" ")[0] for tag in found}
    assert {UNICODE.tick, UNICODE.waiting} <= signs


def test_a_stopped_joint_has_no_figure(desk: Desk) -> None:
    """STOP stands at its marks, whichever step is in hand."""
    desk.go_to("post-se", "foot-tenon/section")
    kept = desk.bench.sizes("post-se", desk.step)
    thin = Measured(first=Length.inches(3))
    desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
    desk.go_to("post-se", "head-tenon/shoulder")
    own = desk.walk.layout.feature("foot-tenon")
    assert own is not None
    at = {line.at.nm for line in own.lines if line.axis is Axis.ALONG}
    stopped = [tag for tag in tags(desk) if tag.figure == "STOP"]
    assert {tag.at for tag in stopped} == at
    assert not any(tag.source for tag in stopped)


def test_a_slant_has_its_figure_only_where_it_is_set_off(meadow: Desk) -> None:
    """On the edge it starts on, and on no face where it comes out elsewhere."""
    meadow.take_timber("brace-sw")
    walk = meadow.walk
    seen = set()
    figures = running_figures(meadow)
    for step in walk.steps:
        feature = walk.layout.feature(step.feature)
        lines = feature.lines if feature else ()
        line = next((line for line in lines if line.id == step.line and line.slant), None)
        if line is None or line.slant is None or line.axis is not Axis.ALONG:
            continue
        for face in LONG_FACES:
            here = [tag for tag in figures[face] if tag.at == line.slant.start.along.nm]
            comes_out = axis_from(face) is line.slant.axis
            if comes_out and not face.is_reference:
                continue
            if face in step.faces:
                seen |= {tag.edge for tag in here}
                expected = SetOff.EITHER if comes_out else None
                assert any(expected in (tag.edge, None) for tag in here)
    assert SetOff.REFERENCE in seen
