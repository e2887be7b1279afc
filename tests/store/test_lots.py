"""A reel's lot is one hose of one manufacturer: a wrong reel is not registered without a reason."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.spec import AssemblySpec, Hose
from tagger.store import Filter, Kind, LotReason, Registration, Store
from tests.store.samples import assessment, spec

R2_12 = {"standard": "SAE 100R2", "dash": 12, "lot": "H-77"}
R17_8 = {"standard": "SAE 100R17", "dash": 8, "lot": "H-77"}


def _build(store: Store, hose: dict[str, object], **more: object) -> str:
    return store.register(spec(hose=hose), assessment(), **more)[0].number  # type: ignore[arg-type]


def test_a_lot_known_as_another_hose_stops_with_what_it_is_known_as(store: Store) -> None:
    _build(store, R2_12)
    with pytest.raises(StoreError, match=r"hose\.lot: Reel lot h-77 is known as SAE 100R2 -12"):
        _build(store, {**R17_8, "lot": " h-77 "})
    assert store.count() == 1


def test_a_ticked_reason_lets_it_go_on_and_stays_in_the_history(store: Store) -> None:
    _build(store, R2_12)
    number = _build(store, R17_8, lot_reason="other_manufacturer")
    first = store.history(number)[0]
    assert first.kind is Kind.REGISTERED
    assert first.data["lot_reason"] == LotReason.OTHER_MANUFACTURER
    assert first.data["lot_known_as"] == [{"standard": "SAE 100R2", "dash": 12}]
    _build(store, R17_8)  # it is known as both from now on
    with pytest.raises(StoreError, match=r"SAE 100R17 -8.*SAE 100R2 -12"):
        _build(store, {**R2_12, "dash": 16})


def test_a_reason_nobody_knows_is_refused_by_name(store: Store) -> None:
    with pytest.raises(StoreError, match=r"lot_reason: .*date_code"):
        _build(store, R2_12, lot_reason="because")


def test_two_names_of_one_hose_are_one_lot(store: Store) -> None:
    _build(store, {"standard": "EN 853 2SN", "dash": 12, "lot": "H-78"})
    _build(store, {"standard": "R2AT", "dash": 12, "lot": "H-78"})
    _build(store, {"standard": "SAE 100R2", "dash": 12, "edition": "AT", "lot": "H-78"})
    with pytest.raises(StoreError, match="H-78 is known as"):
        _build(store, {"standard": "EN 857 2SC", "dash": 12, "lot": "H-78"})


def test_two_editions_with_other_figures_are_two_hoses(store: Store) -> None:
    _build(store, {"standard": "SAE 100R2", "dash": 12, "edition": "AT", "lot": "H-79"})
    _build(store, {"standard": "SAE 100R2", "dash": 12, "edition": "A", "lot": "H-79"})
    with pytest.raises(StoreError, match="H-79"):
        _build(store, {"standard": "SAE 100R2", "dash": 12, "edition": "S", "lot": "H-79"})


def test_the_manufacturers_part_number_tells_two_hoses_of_one_lot_apart(store: Store) -> None:
    one = {"standard": "SAE 100R2", "dash": 12, "part": "TW-2012", "lot": "H-80"}
    number = _build(store, one)
    _build(store, {**one, "part": "tw 2012"})
    with pytest.raises(StoreError, match=r"H-80 is known as SAE 100R2 -12 .*part TW-2012"):
        _build(store, {**one, "part": "TW-9"})
    assert store.assembly(number).spec.hose.part == "TW-2012"


@pytest.mark.parametrize("lot", ["2Q26", "3/26", "2026-W07"])
def test_a_lot_that_is_only_a_date_spans_sizes(store: Store, lot: str) -> None:
    _build(store, {**R2_12, "lot": lot})
    _build(store, {**R17_8, "lot": lot})


def test_a_lot_once_ticked_as_a_date_asks_no_more(store: Store) -> None:
    _build(store, {**R2_12, "lot": "1606"})
    with pytest.raises(StoreError, match="1606"):
        _build(store, {**R17_8, "lot": "1606"})
    _build(store, {**R17_8, "lot": "1606"}, lot_reason="date_code")
    _build(store, {**R17_8, "dash": 10, "lot": "1606"})


def test_a_lot_is_known_however_it_is_spelled_and_a_date_is_no_lot_of_its_digits(store: Store) -> None:
    """H77 typed for H-77 was a lot that nobody knew: the wrong reel went through without a word."""
    number = _build(store, R2_12)
    for typed in (
        "H77",
        "h 77",
        "H_77",
        "H\N{NON-BREAKING HYPHEN}77",
        "LOT: H-77",
        "Lot no. h77",
        "Charge H-77",
    ):
        with pytest.raises(StoreError, match=r"hose\.lot: Reel lot .* is known as SAE 100R2 -12"):
            _build(store, {**R17_8, "lot": typed})
        assert store.hoses_of_lot(typed) == [Hose(standard="SAE 100R2", dash=12)]
        assert [one.number for one in store.find(Filter(lot=typed)).assemblies] == [number]
    rows = [
        Registration(spec(hose={**one, "lot": lot}), assessment())
        for one, lot in ((R2_12, "K-1"), (R17_8, "K1"))
    ]
    with pytest.raises(StoreError, match=r"row 2\.hose\.lot: .*K1"):
        store.register_many(rows)
    _build(store, {**R17_8, "lot": "H77"}, lot_reason="date_code")
    _build(store, {**R17_8, "dash": 10})
    _build(store, {**R2_12, "lot": "2/26"})
    _build(store, {**R17_8, "lot": "226"})


def test_rows_of_one_run_are_held_against_each_other(store: Store) -> None:
    rows = [Registration(spec(hose=hose), assessment()) for hose in (R2_12, R17_8)]
    with pytest.raises(StoreError, match=r"row 2\.hose\.lot: .*H-77"):
        store.register_many(rows)
    assert store.count() == 0
    rows[1] = Registration(spec(hose=R17_8), assessment(), lot_reason="date_code")
    assert len(store.register_many(rows)) == 2


def test_what_a_lot_is_known_as_can_be_asked(store: Store) -> None:
    _build(store, R2_12)
    assert store.hoses_of_lot("h-77") == [Hose(standard="SAE 100R2", dash=12)]
    assert store.another_hose(Hose(**R17_8)) is not None  # type: ignore[arg-type]
    assert store.another_hose(Hose(**R2_12)) is None  # type: ignore[arg-type]


def test_the_part_number_is_not_carried_by_the_tag() -> None:
    hose = {"standard": "SAE 100R2", "dash": 12, "part": "TW-2012"}
    assert AssemblySpec.read({**spec().as_dict(), "hose": hose}).carried().hose.part is None
