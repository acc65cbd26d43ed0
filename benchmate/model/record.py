"""The base of every stored record."""

from pydantic import BaseModel, ConfigDict


class Record(BaseModel):
    """A stored record: frozen, strict about types, and closed to unknown keys."""

    model_config = ConfigDict(
        frozen=True, extra="forbid", strict=True, arbitrary_types_allowed=True, defer_build=True
    )
