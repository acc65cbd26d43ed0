"""The catalogue of families tells every record apart."""

from benchmate.frame.family import Family
from benchmate.joinery import FAMILIES
from benchmate.model.feature import Feature
from benchmate.model.project import Timber
from tests.builders import corners


def test_no_two_families_share_a_name_or_a_record() -> None:
    """A record in the file leads to one family."""
    assert len({family.name for family in FAMILIES}) == len(FAMILIES)
    assert len({family.record for family in FAMILIES}) == len(FAMILIES)


def test_families_that_share_a_table_name_themselves_in_their_records() -> None:
    """Where a table is shared, the record's own `family` tells which it is."""
    for family in FAMILIES:
        if family.table == "joint":
            assert family.record.model_fields["family"].is_required()


def test_a_family_turns_its_record_into_features() -> None:
    """Every feature is on a timber of the frame, with cuts and lines of its own."""
    built = corners()
    family = next(family for family in FAMILIES if family.record is Timber)
    assert isinstance(family, Family)
    (feature,) = family.features(built.timber("sill"), built)
    assert isinstance(feature, Feature)
    assert feature.timber == "sill"
