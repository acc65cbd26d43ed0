"""A ripple in words."""

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import read_length
from benchmate.measure.section import Section, read_section
from benchmate.model.findings import Finding, Severity
from benchmate.tui.ripple_words import MOST_SHOWN, names_line, ripple_lines, worth_text
from benchmate.workbench.names import NameMoved
from benchmate.workbench.ripple import Moved, Ripple
from tests.builders import corners

FRAME = corners()
TAPE = FRAME.project.tape


def size(text: str | None) -> Length | None:
    """A length, or none."""
    return None if text is None else read_length(text, exact=True)


def moved(
    step: str = "foot-tenon/shoulder",
    *,
    before: str | None = "3",
    after: str | None = "4",
    words: str = "from the squared foot",
    timber: str = "SW post",
    ticked: bool = False,
    cut: bool = False,
    right: bool = False,
    stopped: bool = False,
) -> Moved:
    """One figure that moves."""
    return Moved(
        timber=timber.lower(),
        name=timber,
        step=step,
        title=f"Title of {step}",
        words=words,
        before=size(before),
        after=size(after),
        ticked=ticked,
        cut=cut,
        right=right,
        stopped=stopped,
    )


def lines(*figures: Moved) -> tuple[str, ...]:
    """What is told of these figures."""
    return ripple_lines(Ripple(moved=figures, findings=()), FRAME)


def test_nothing_moved_is_said() -> None:
    """An empty pane would leave the framer in doubt."""
    assert lines() == ("No mark moves.",)


def test_the_summary_counts_figures_steps_timbers_and_what_is_done() -> None:
    """One line tells how much it is before the list begins."""
    summary = lines(
        moved("a"),
        moved("a", words="from the head shoulder line"),
        moved("b", ticked=True),
        moved("c", ticked=True, cut=True, timber="South sill"),
    )[0]
    assert summary == (
        "Moves 4 figures in 3 steps on 2 timbers: 2 steps ticked, 1 step already cut. "
        "Ticked steps will say: look again."
    )
    assert lines(moved("a"))[0] == "Moves 1 figure in 1 step on 1 timber."
    assert lines(moved("a", cut=True))[0].endswith("on 1 timber: 1 step already cut.")


def test_what_is_cut_comes_first_then_what_is_ticked() -> None:
    """The dearest to mend is read first, and says so in words."""
    assert lines(moved("a"), moved("b", ticked=True), moved("c", ticked=True, cut=True))[1:] == (
        'ALREADY CUT: SW post, title of c (ticked): 3" becomes 4" from the squared foot',
        'SW post, title of b (ticked): 3" becomes 4" from the squared foot',
        'SW post, title of a: 3" becomes 4" from the squared foot',
    )


def test_all_figures_of_a_step_stand_in_one_line() -> None:
    """A mark with two readings is one mark."""
    (line,) = lines(moved("a"), moved("a", words="from the squared head", ticked=True))[1:]
    assert line == (
        'SW post, title of a (ticked): 3" becomes 4" from the squared foot; '
        '3" becomes 4" from the squared head'
    )


@pytest.mark.parametrize(
    ("before", "after", "words", "told"),
    [
        (None, "4", "from the squared foot", 'new, 4" from the squared foot'),
        ("3", None, "from the squared foot", 'falls away, was 3" from the squared foot'),
        (None, None, "is new", "is new"),
        ("3", "76.3 mm", "of relish", '3" becomes 76.3 mm of relish'),
        ("3", "76.20001 mm", "of relish", '3" moves by less than the tape shows of relish'),
    ],
)
def test_a_figure_that_comes_goes_or_hardly_moves(
    before: str | None, after: str | None, words: str, told: str
) -> None:
    """Never two figures that look alike, and never one that is not there."""
    figure = moved("a", before=before, after=after, words=words)
    assert lines(figure)[1] == f"SW post, title of a: {told}"


def test_a_tick_made_true_again_is_told_as_such_and_comes_last() -> None:
    """A slip put right is no loss."""
    told = lines(moved("a", ticked=True, cut=True, right=True), moved("b", ticked=True))
    assert told[0].endswith(": 1 step ticked. Ticked steps will say: look again.")
    assert told[1].startswith("SW post, title of b (ticked): ")
    assert told[2].startswith("SW post, title of a (ticked, and right again): ")


def test_a_figure_not_fit_to_cut_to_is_withheld() -> None:
    """Law 7: a stop shows no number; which steps it stops, cut ones first, is told all the same."""
    assert lines(moved("a", stopped=True), moved("b", stopped=True, cut=True))[1:] == (
        "ALREADY CUT: SW post, title of b: withheld until the stop is mended",
        "SW post, title of a: withheld until the stop is mended",
    )


def finding(severity: Severity, timber: str = "sill") -> Finding:
    """A finding on a timber."""
    return Finding(
        code="code", severity=severity, timber=timber, feature="", message="No", remedy="choose"
    )


def test_stops_and_what_is_not_known_come_before_all() -> None:
    """None may be overlooked, so all stand above the figures, the worst first."""
    found = Ripple(
        moved=(),
        findings=(finding(Severity.LOOK), finding(Severity.STOP)),
        unknown=("Sill: progress/sill.toml:1: bad\n  mend it",),
    )
    assert ripple_lines(found, FRAME) == (
        "STOP on Sill: No. To mend it: choose.",
        "LOOK on Sill: No. To mend it: choose.",
        "NOT KNOWN what is done on Sill: progress/sill.toml:1: bad",
        "No mark moves.",
    )


@pytest.mark.parametrize(
    ("timbers", "told"),
    [
        (["sill", "plate", "sill"], "Sill and Plate"),
        (["sill", "plate", "post-sw", "post-se"], "Sill, Plate, Post sw and Post se"),
    ],
)
def test_a_stop_is_told_once_with_all_its_timbers(timbers: list[str], told: str) -> None:
    """One joint stopped on both its timbers is one thing to mend."""
    findings = tuple(finding(Severity.STOP, timber) for timber in timbers)
    lines_told = ripple_lines(Ripple(moved=(), findings=findings), FRAME)
    assert lines_told == (f"STOP on {told}: No. To mend it: choose.", "No mark moves.")


def test_a_very_long_list_is_counted_from_some_line_on() -> None:
    """What is left out is said."""
    told = lines(*(moved(str(each)) for each in range(MOST_SHOWN + 2)))
    assert len(told) == MOST_SHOWN + 2
    assert told[-1] == "and 2 steps more"


def test_names_are_told_from_what_to_what() -> None:
    """Lengths and sections, each as the tape shows it."""
    names = (
        NameMoved(table="levels", name="top", before=Length.inches(3), after=Length.inches(4)),
        NameMoved(
            table="sections",
            name="post",
            before=read_section("7 x 7"),
            after=Section(Length.inches(7), read_length("177.9 mm")),
        ),
    )
    assert names_line(names, TAPE) == ('top 3" becomes 4"; post 7" x 7" becomes 7" x 177.9 mm')
    assert worth_text(read_section("6 x 8"), TAPE) == '6" x 8"'
