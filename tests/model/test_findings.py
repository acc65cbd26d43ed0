"""A finding says how much it matters."""

from benchmate.model.findings import Finding, Severity, look, stop, told_on


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


def test_a_finding_between_two_joints_names_both() -> None:
    """So that it is told at either."""
    found = look("cuts-meet", "sill", "a-mortise", "They meet", "move one", also="b-mortise")
    assert (found.severity, found.feature, found.also) == (Severity.LOOK, "a-mortise", "b-mortise")


def test_what_stops_one_side_is_told_on_both() -> None:
    """What is only to be looked at stays with its own timber."""
    stopped = stop("a", "post", "foot-tenon", "It cannot be", "mend it")
    own = look("b", "sill", "sw-foot-mortise", "It is open", "relieve it")
    assert own.severity is Severity.LOOK
    assert [each.code for each in told_on("sill", "sw-foot-mortise", (stopped, own))] == ["a", "b"]
    assert own.also == ""
    (told,) = told_on("post", "foot-tenon", (stopped, own))
    assert (told.code, told.timber, told.feature) == ("a", "post", "foot-tenon")
    moved, _ = told_on("sill", "sw-foot-mortise", (stopped, own))
    assert (moved.timber, moved.feature) == ("sill", "sw-foot-mortise")
