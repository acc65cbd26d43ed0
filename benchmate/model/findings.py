"""A finding: something in a design that would spoil a timber, with its remedy."""

from dataclasses import dataclass
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
    """One finding on one timber; `feature` is the joint or chamfer on it, or empty."""

    code: str
    severity: Severity
    timber: str
    feature: str
    message: str
    remedy: str


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
