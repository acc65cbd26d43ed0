"""Every stored record is frozen, strict and closed."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.chamfer.record import Chamfer, Stop
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.model.progress import AsCut, Measured, Progress, Tick
from benchmate.model.project import Project, Shop, Timber
from benchmate.model.record import Record
from benchmate.model.work import Work

RECORDS = (
    AsCut,
    Chamfer,
    Measured,
    TenonJoint,
    Progress,
    Project,
    Shop,
    Stop,
    Tick,
    Timber,
    Work,
)


class Peg(Record):
    """A record for these tests."""

    count: int


def test_a_record_does_not_change() -> None:
    """An edit makes a new record."""
    peg = Peg(count=2)
    with pytest.raises(ValidationError, match="frozen"):
        setattr(peg, "count", 3)  # noqa: B010 - a plain assignment is refused by the type checker


@pytest.mark.parametrize("words", [{"count": "2"}, {"count": 2.0}, {"count": 2, "size": 1}, {}])
def test_a_record_takes_its_own_types_and_keys_only(words: dict[str, object]) -> None:
    """Text is no number, and a key nobody knows is a slip of the pen."""
    with pytest.raises(ValidationError):
        Peg.model_validate(words)


@pytest.mark.parametrize("record", RECORDS)
def test_every_stored_record_keeps_to_this(record: type[Record]) -> None:
    """None of them loosens what the base sets."""
    config = record.model_config
    assert issubclass(record, Record)
    assert (config["frozen"], config["extra"], config["strict"]) == (True, "forbid", True)
