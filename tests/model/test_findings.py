"""A finding says how much it matters."""

from benchmate.model.findings import Finding, Severity, stop


def test_severities_grow_and_have_words() -> None:
    """The worst of several is the greatest."""
    assert [one.word for one in sorted(Severity)] == ["note", "look", "stop"]
    assert max(Severity.NOTE, Severity.STOP, Severity.LOOK) is Severity.STOP


def test_equal_findings_are_one() -> None:
    """The same trouble found twice is shown once."""
    one, other = (
        Finding(
            code="tenon-cheek-outside",
            severity=Severity.STOP,
            timber="post",
            feature="foot-tenon",
            message="The far cheek lies in the air",
            remedy="choose another stick",
        )
        for _ in range(2)
    )
    assert len({one, other}) == 1


def test_a_stop_is_the_worst_of_findings() -> None:
    """It says where, what is wrong and what to do, and withholds the figures there."""
    found = stop("mortise-through", "sill", "sw-foot-mortise", "The mortise goes through", "deepen")
    assert found.severity is max(Severity)
    assert (found.timber, found.feature, found.remedy) == ("sill", "sw-foot-mortise", "deepen")
