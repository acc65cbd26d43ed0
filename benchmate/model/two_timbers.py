"""What every joint of two timbers answers alike: it names both, and they differ."""

from typing import ClassVar, Self

from pydantic import model_validator

from benchmate.model.fields import EndDirection, Id
from benchmate.model.work import Work


class TwoTimbers(Work):
    """A joint of two timbers, which a file may not name as one and the same."""

    itself: ClassVar[str]
    """What is wrong with such a joint of a timber with itself, and what to do."""

    @model_validator(mode="after")
    def _two_timbers(self) -> Self:
        if len(set(self.timbers().values())) == 1:
            raise ValueError(self.itself)
        return self


class EndAtTimber(TwoTimbers):
    """A joint of one `end` of `timber` with another timber, `into`."""

    itself: ClassVar[str] = "cannot enter its own timber; name another in into"

    family: str
    timber: Id
    end: EndDirection
    into: Id

    def timbers(self) -> dict[str, str]:
        """The timber whose end it is, and the one that receives it."""
        return {"timber": self.timber, "into": self.into}
