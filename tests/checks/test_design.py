"""Findings on one timber."""

from datetime import UTC, datetime

from benchmate.checks.design import findings_on
from benchmate.layout.standing import memory_of
from benchmate.layout.walk import lay_out
from benchmate.measure.printing import Tape
from benchmate.model.findings import Severity
from benchmate.model.progress import AsCut, Measured, Progress, Tick
from tests.builders import codes, corners, frame, length, real, tenon, timber

AT = datetime(2026, 3, 2, tzinfo=UTC)


def test_a_sound_timber_has_no_findings() -> None:
    """Nothing is said where nothing is wrong."""
    assert findings_on(lay_out(corners(), "post-se"), Progress(timber="post-se"), Tape()) == ()


def test_a_tick_that_no_longer_reads_as_it_did_is_a_finding() -> None:
    """Law 6: the tick stays, and the finding says what it was and what it is now."""
    step = lay_out(corners(), "post-se").step("foot-tenon/shoulder")
    memory = memory_of(step)
    tick = Tick(
        step=step.id,
        marked={"squared foot": length("4-1/2")},
        on=memory.on,
        waste=memory.waste,
        at=AT,
    )
    progress = Progress(timber="post-se", ticks=(tick,))
    (found,) = findings_on(lay_out(corners(), "post-se"), progress, Tape())
    assert found.code == "tick-out-of-date"
    assert found.severity is Severity.LOOK
    assert 'marked at 4-1/2", now 5" from the squared foot' in found.message


def test_a_tick_on_a_step_that_has_gone_is_a_finding() -> None:
    """A tick is never dropped in silence."""
    progress = Progress(timber="post-se", ticks=(Tick(step="knee-mortise/depth", at=AT),))
    (found,) = findings_on(lay_out(corners(), "post-se"), progress, Tape())
    assert (found.code, found.feature) == ("tick-without-step", "knee-mortise")


def test_a_size_for_a_place_that_is_not_there_is_a_finding() -> None:
    """Known places raise none: joints, chamfers, ends, the middle and the whole stick."""
    size = Measured(first=length("6"))
    known = ("foot-tenon", "head-tenon", "inside-chamfer", "foot", "head", "middle", "all")
    progress = Progress(
        timber="post-se",
        measured=dict.fromkeys((*known, "knee"), size),
        as_cut={"foot-tenon": AsCut(width=length("4")), "inside-chamfer": AsCut()},
    )
    found = findings_on(lay_out(corners(), "post-se"), progress, Tape())
    assert [(each.code, each.feature) for each in found] == [
        ("size-without-place", "inside-chamfer"),
        ("size-without-place", "knee"),
    ]


def test_the_worst_comes_first() -> None:
    """A stop before what is only to be looked at."""
    thin = frame(
        timber("post"), tenon(), real={"post": real(measured={"foot-tenon": {"first": "3"}})}
    )
    progress = Progress(timber="post", ticks=(Tick(step="gone/shoulder", at=AT),))
    found = findings_on(lay_out(thin, "post"), progress, Tape())
    assert codes(found) == ("tenon-cheek-outside", "tick-without-step")
