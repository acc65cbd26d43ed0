"""The figures to saw, chop and pare to agree with the lines, and so does the back-check."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Stage
from tests.proof.demos import RULES, demo
from tests.proof.marks import Rule
from tests.proof.raising import Raising, raised
from tests.proof.sizes import UNSHRUNK, real_sizes

EXAMPLES = 6
"""Frames laid out for each demo and rule: each has some five hundred such figures."""


def _off_the_line(rule: Rule, step: Step) -> list[str]:
    """The figures of a cutting step that are hooked on a face but come to no struck line."""
    lines = {rule.place(step.feature, line) for line in rule.marks[step.feature]}
    return [
        f"{step.id}: {reading.value.exact_text()} {reading.words}"
        for reading in step.readings
        if reading.hook in rule.sides and rule.set_off(step.feature, reading) not in lines
    ]


def _misread_back(rule: Rule, step: Step) -> list[str]:
    """The figures of a back-check that come to another place than the mark they read again."""
    wrong = []
    for reading in step.readings[1:]:
        feature, _, line = reading.key.partition("/")
        if rule.overall - reading.value.nm != rule.place(feature, line).at:
            wrong.append(f"{reading.value.exact_text()} {reading.words}")
    return wrong


def _wrong(raising: Raising) -> list[str]:
    found: list[str] = []
    for timber, piece in raising.pieces.items():
        for step in lay_out(raising.frame, timber).steps:
            if step.stage is Stage.BACK_CHECK:
                found += _misread_back(piece.rule, step)
            elif step.stage in (Stage.CUT, Stage.PARE) and step.feature in piece.carving.cuts:
                found += _off_the_line(piece.rule, step)
    return found


@pytest.mark.parametrize(("name", "rule"), RULES)
@settings(max_examples=EXAMPLES, phases=UNSHRUNK)
@given(data=st.data())
def test_every_cut_goes_to_a_line(name: str, rule: str, data: st.DataObject) -> None:
    """So deep from a face is as far as the line that was struck, whatever the stick measures."""
    assert not _wrong(raised(demo(name, rule), data.draw(real_sizes(name, rule))))


def test_a_figure_that_comes_to_no_line_is_noticed() -> None:
    """A saw set for the other face's depth would be told."""
    found = raised(demo(*RULES[0]), {})
    rule = found.pieces["post-sw"].rule
    step = lay_out(found.frame, "post-se").step("foot-tenon/saw-second")
    assert rule.sides[step.readings[0].hook].far
    assert _off_the_line(rule, step)
