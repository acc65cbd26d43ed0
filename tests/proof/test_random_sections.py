"""Laws of fit: whatever the sticks measure, and however their ends come out, the frame stands.

Law: a mark that counts on a size follows it, and the mark on the other timber follows as well.
"""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.proof.checks import faults, told
from tests.proof.demos import RULES, demo
from tests.proof.raising import joints_of, raised
from tests.proof.sizes import UNSHRUNK, real_sizes

EXAMPLES = 6
"""Frames raised for each demo and rule: each takes a quarter of a second, and has some forty joints
and a dozen real sizes in it."""


@pytest.mark.parametrize(("name", "rule"), RULES)
@settings(max_examples=EXAMPLES, phases=UNSHRUNK)
@given(data=st.data())
def test_any_sticks_make_a_frame(name: str, rule: str, data: st.DataObject) -> None:
    """Mates bear, nothing overlaps and every joint fits, by mill rule and by square rule."""
    project = demo(name, rule)
    found = raised(project, data.draw(real_sizes(name, rule)))
    assert len(found.joints) >= len(joints_of(project)) // 2
    assert not told(faults(found))
