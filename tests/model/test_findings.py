"""A finding says how much it matters."""

from benchmate.model.findings import Finding, Severity


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
