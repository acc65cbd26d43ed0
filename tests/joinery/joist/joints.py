"""A joist pocket and a dovetailed joist, in the words of a project file."""

from benchmate.joinery.joist.record import DovetailJoist, JoistPocket


def joist_pocket(end: str = "south", **words: object) -> JoistPocket:
    """An end 2" in the beam, as deep as the joist."""
    return JoistPocket.model_validate(
        {
            "id": "joist-end",
            "family": "joist pocket",
            "timber": "joist",
            "end": end,
            "into": "beam",
            "bearing": "2",
        }
        | words
    )


def dovetail_joist(end: str = "south", **words: object) -> DovetailJoist:
    """A tail 3" long with 3/4" of flare on each flank, as deep as the joist."""
    return DovetailJoist.model_validate(
        {
            "id": "joist-end",
            "family": "dovetail joist",
            "timber": "joist",
            "end": end,
            "into": "beam",
            "length": "3",
            "flare": "3/4",
        }
        | words
    )
