"""A project with nothing in it yet."""

import re
from itertools import product

import pytest

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Finding
from benchmate.model.project import Project
from benchmate.outset.blank_text import blank_text
from benchmate.store.reading import parse_project


def found_on(project: Project, timber: str) -> tuple[Finding, ...]:
    """What the checks find on a timber."""
    return findings_of(lay_out(Frame(project, {}), timber), project.tape)


UNITS = (("feet and inches", "1/16"), ("inches", "1/32"), ("mm", "1 mm"))


@pytest.mark.parametrize(("tape", "rule"), list(product(UNITS, ("mill", "square"))))
def test_it_is_sound_as_it_is(tape: tuple[str, str], rule: str) -> None:
    """In any units, by either rule, whatever its name."""
    project = parse_project(blank_text('Ash & "Oak"', *tape, rule).encode())
    assert (project.name, project.rule, project.timbers) == ('Ash & "Oak"', rule, ())


@pytest.mark.parametrize("rule", ["mill", "square"])
def test_its_comments_are_an_example_that_reads(rule: str) -> None:
    """With the # off every line: two timbers and the joint between them, nothing to look at."""
    text = blank_text("Shed", "mm", "1 mm", rule)
    shown = re.sub(r'^# (?=\[|"|[a-z_]+ = )', "", text, flags=re.MULTILINE)
    project = parse_project(shown.encode())
    assert [timber.id for timber in project.timbers] == ["post-sw", "sill-south"]
    assert [found_on(project, timber.id) for timber in project.timbers] == [(), ()]
    assert ("post" in project.inner) is (rule == "square")
