"""Crimp diameters that the shop keeps."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tagger.errors import StoreError
from tagger.spec import AssemblySpec
from tagger.store import CrimpValue, Store
from tests.store.samples import spec
from tests.store.test_fittings import ROW, SWIVEL

R2 = CrimpValue("SAE 100R2", 12, "two-wire shell", 33.4, 0.1, 0.2, "shop's own trial of 2 March")


def test_the_newest_crimp_diameter_holds(store: Store) -> None:
    store.keep_crimp(R2)
    newer = CrimpValue("SAE 100R2", 12, "two-wire shell", 33.5, 0.1, 0.1, "shell maker's chart 7")
    store.keep_crimp(newer)
    assert store.crimps("SAE 100R2", 12) == [newer]
    assert store.crimps("SAE 100R2", 8) == []


@pytest.mark.parametrize(("measured", "holds"), [(33.3, True), (33.6, True), (33.29, False), (33.61, False)])
def test_a_measured_diameter_is_held_against_its_band(measured: float, holds: bool) -> None:
    assert R2.measured("a", measured).holds is holds


def test_a_crimp_diameter_without_source_is_refused(store: Store) -> None:
    with pytest.raises(StoreError, match="source"):
        store.keep_crimp(CrimpValue("SAE 100R2", 12, "shell", 33.4, 0.1, 0.1, " "))


def test_a_crimp_diameter_in_inches_is_refused_as_a_slip(store: Store) -> None:
    """1.18 in was kept as 1.18 mm: every true crimp was then out of its band, and 1.2 mm was in it."""
    with pytest.raises(StoreError, match=r"1.2 mm .* is not wider than the bore of the hose, 19"):
        store.keep_crimp(replace(R2, diameter_mm=1.18))
    assert store.crimps() == []


CARD = CrimpValue("SAE 100R2", 12, "TW two-wire", 31.0, 0.2, 0.2, "an invented chart", hose_part="TW 2W 12",
                  die="31 set", skive_outside_mm=25, insertion_depth_mm=30, machine_setting="4.5")  # fmt: skip


def _spec(part: str | None, **end: object) -> AssemblySpec:
    return spec(
        hose={"standard": "SAE 100R2", "dash": 12, "part": part},
        end_a={**SWIVEL, "fitting": "TW-1204", **end},
    )


def test_hose_and_series_with_a_card_of_their_own_are_approved_together(store: Store) -> None:
    store.keep_fitting(ROW)
    store.keep_crimp(CARD)
    wanted = _spec("tw 2w 12")
    a, b = store.crimp_cards(wanted, store.fittings_of(wanted))
    assert (a.card, a.approved, a.why) == (CARD, True, None)
    assert [str(line) for line in a.lines()] == [
        "End A: crimp diameter 31 mm +0.2 −0.2 mm (TW two-wire; source: an invented chart)",
        "Die: 31 set", "Skive outside: 25 mm", "Insertion depth: 30 mm", "Machine setting: 4.5",
    ]  # fmt: skip
    assert (b.card, b.approved) == (None, None) and b.why is not None and b.why.id == "stock-card-no-fitting"


@pytest.mark.parametrize(
    ("card", "why"),
    [
        (None, "stock-card-not-approved"),
        (replace(CARD, hose_part="ANOTHER"), "stock-card-not-approved"),
        (replace(CARD, hose_part=""), "stock-card-not-approved"),
        (replace(CARD, shell="another series"), "stock-card-not-approved"),
        (replace(CARD, hose_dash=8), "stock-card-not-approved"),
    ],
)
def test_without_a_card_of_their_own_they_are_not_approved_together(
    store: Store, card: CrimpValue | None, why: str
) -> None:
    store.keep_fitting(ROW)
    if card:
        store.keep_crimp(card)
    wanted = _spec("TW 2W 12")
    a, _ = store.crimp_cards(wanted, store.fittings_of(wanted))
    assert (a.card, a.approved, a.wrong) == (None, False, True)
    assert a.why is not None and a.why.id == why and "not approved together" in str(a.why)


def test_a_hose_without_its_part_number_has_no_card_and_is_asked_for_it(store: Store) -> None:
    store.keep_fitting(ROW)
    store.keep_crimp(CARD)
    wanted = _spec(None)
    a, _ = store.crimp_cards(wanted, store.fittings_of(wanted))
    assert (a.card, a.approved) == (None, None) and a.why is not None and a.why.id == "stock-card-no-part"


def test_two_insertion_depths_of_one_fitting_are_told(store: Store) -> None:
    store.keep_fitting(ROW.model_copy(update={"insertion_depth_mm": 28.0}))
    store.keep_crimp(CARD)
    wanted = _spec("TW 2W 12")
    a, _ = store.crimp_cards(wanted, store.fittings_of(wanted))
    assert a.wrong and "28 mm" in str(a.why) and "30 mm" in str(a.why)


def test_a_measured_crimp_is_held_against_the_card_of_its_own_hose_never_of_another(store: Store) -> None:
    general, other = (
        replace(CARD, hose_part="", diameter_mm=30),
        replace(CARD, hose_part="OTHER", diameter_mm=29),
    )
    store.keep_crimps({2: CARD, 3: general, 4: other})
    for part, diameter in (("tw 2w 12", 31), ("a third", 30), (None, 30), ("OTHER", 29)):
        assert store.crimp("SAE 100R2", 12, "TW two-wire", part=part).diameter_mm == diameter, part
    assert len(store.crimps("SAE 100R2", 12)) == 3


def test_a_list_of_cards_is_kept_whole_or_not_at_all(store: Store) -> None:
    with pytest.raises(StoreError, match=r"row 5\.skive_inside_mm"):
        store.keep_crimps({2: CARD, 5: replace(CARD, skive_inside_mm=-1)})  # rows 3 and 4 are blank
    assert store.crimps() == []


def test_a_deleted_card_holds_no_more_and_may_be_kept_anew(store: Store) -> None:
    store.keep_crimp(R2)
    kept = store.keep_crimp(CARD)
    assert store.drop_crimp(kept.id or 0, by="Mara") == CARD
    assert store.crimps() == [R2] and store.crimps_of("SAE 100R2", 12, "TW 2W 12") == [R2]
    with pytest.raises(StoreError, match="not on record"):
        store.drop_crimp(kept.id or 0)
    anew = store.keep_crimp(CARD)
    assert store.crimps() == [R2, CARD] and anew.id != kept.id
