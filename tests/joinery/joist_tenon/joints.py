"""A soffit tenon and a tusk tenon in the words of a project file."""

from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon


def soffit_tenon(end: str = "south", **words: object) -> SoffitTenon:
    """A 2" tenon 4" long, flush with the joist's underside, under a haunch 1-1/2" deep."""
    return SoffitTenon.model_validate(
        {
            "id": "joist-end",
            "family": "soffit tenon",
            "timber": "joist",
            "end": end,
            "into": "beam",
            "thickness": "2",
            "length": "4",
            "haunch": "1-1/2",
        }
        | words
    )


def tusk_tenon(end: str = "south", **words: object) -> TuskTenon:
    """A tusk tenon with a tusk 1" high, all else as published."""
    return TuskTenon.model_validate(
        {
            "id": "joist-end",
            "family": "tusk tenon",
            "timber": "joist",
            "end": end,
            "into": "beam",
            "tusk_height": "1",
        }
        | words
    )
