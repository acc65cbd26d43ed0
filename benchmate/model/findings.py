"""A finding: something in a design that would spoil a timber, with its remedy."""

from dataclasses import dataclass, replace
from enum import IntEnum


class Severity(IntEnum):
    """How much a finding matters; the higher, the worse."""

    NOTE = 1
    LOOK = 2
    STOP = 3

    @property
    def word(self) -> str:
        """`note`, `look` or `stop`."""
        return self.name.lower()


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One finding on one timber; `feature` is the joint or chamfer on it, or empty.

    Where it lies between two joints, `also` is the other one.
    """

    code: str
    severity: Severity
    timber: str
    feature: str
    message: str
    remedy: str
    also: str = ""


def stop(code: str, timber: str, feature: str, message: str, remedy: str) -> Finding:
    """A finding that makes a joint's figures unfit to cut to."""
    return Finding(
        code=code,
        severity=Severity.STOP,
        timber=timber,
        feature=feature,
        message=message,
        remedy=remedy,
    )


def look(
    code: str, timber: str, feature: str, message: str, remedy: str, *, also: str = ""
) -> Finding:
    """A finding to look at before cutting; `also` is the other joint where it lies between two."""
    told = stop(code, timber, feature, message, remedy)
    return replace(told, severity=Severity.LOOK, also=also)


def told_on(timber: str, feature: str, found: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """What to tell on one side of a joint: its own findings, and what stops the other."""
    return tuple(
        replace(finding, timber=timber, feature=feature)
        for finding in found
        if finding.severity is Severity.STOP or finding.timber == timber
    )
