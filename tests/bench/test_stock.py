"""The shop's fittings on the bench: kept, imported, offered, and the cut length on the build page."""

from __future__ import annotations

import re
from typing import Any

from api.rest.shared import EXAMPLE_SPEC
from tagger.store import Store
from tests.bench.served import HOSE, Bench, Served
from tests.store.test_fittings import ELBOW, ROW

FORM = {"stock_number": "TW-1204", "end.connection": "sae_37_flare", "end.size": "12", "end.form": "female_swivel",
        "end.shape": "straight", "end.material": "carbon_steel", "cut_off_mm": "1 7/8 in",
        "cut_off_kind": "seat_to_hose_butt", "source": "an invented chart", "swivel": "yes"}  # fmt: skip


def _preview(bench: Bench, **changes: str) -> dict[str, Any]:
    found: dict[str, Any] = bench.submit("/bench/build/preview", {**HOSE, **changes}).json()
    found["said"] = re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", found["html"]))
    return found


def test_a_fitting_is_entered_changed_and_deleted_on_its_page(bench: Bench, store: Store) -> None:
    assert bench.submit("/bench/stock/keep", FORM).status_code == 200
    assert (store.fitting("TW-1204").cut_off_mm, store.fitting("TW-1204").swivel) == (47.6, True)
    page = bench.get("/bench/stock", params={"number": "tw-1204"}).text
    assert 'value="47.6"' in page and "seat to hose butt" in page
    assert bench.submit("/bench/stock/drop", {"number": "TW-1204"}).status_code == 200
    assert store.fittings() == []


def test_a_wrong_fitting_is_told_at_its_field_and_kept_typed(bench: Bench, store: Store) -> None:
    for change, field in (
        ({"end.size": "7"}, "end.size"),
        ({"cut_off_kind": ""}, "cut_off_kind"),
        ({"source": ""}, "source"),
        ({"rating_bar": "3000", "rating_source": "a chart"}, "rating_bar"),
        ({"rating_bar": "900", "rating_source": "a chart"}, "rating_confirmed"),
    ):
        answer = bench.submit("/bench/stock/keep", {**FORM, **change})
        assert answer.status_code == 422 and f'id="wrong-{field}"' in answer.text, field
        assert 'value="TW-1204"' in answer.text
    assert store.fittings() == []
    high = {"rating_bar": "900", "rating_source": "a chart", "rating_confirmed": "1"}
    assert bench.submit("/bench/stock/keep", {**FORM, **high}).status_code == 200
    assert store.fitting("TW-1204").rating_confirmed
    data = {**EXAMPLE_SPEC, "end_a": {"fitting": "TW-1204"}}
    rating = store.read_spec(data).end_a.rating
    assert rating is not None and (rating.value_bar, rating.confirmed) == (900, True)


def test_a_list_is_imported_whole_or_not_at_all(bench: Bench, store: Store) -> None:
    heading = "stock_number,end.connection,end.dash,end.form\n"
    rows = "TW-1,sae_37_flare,12,female_swivel\n", "TW-2,sae_37_flare,7,female_swivel\n"
    refused = bench.submit(
        "/bench/stock/import", files={"file": ("list.csv", (heading + "".join(rows)).encode())}
    )
    assert refused.status_code == 422 and store.fittings() == []
    bench.submit("/bench/stock/import", files={"file": ("list.csv", (heading + rows[0]).encode())})
    assert [one.stock_number for one in store.fittings()] == ["TW-1"]


def test_only_a_manager_changes_the_list(served: Served, store: Store) -> None:
    store.keep_fitting(ROW)
    with Bench(served.url, store, "builder") as builder:
        assert "TW-1204" in builder.get("/bench/stock").text
        for act, sent in (("keep", FORM), ("drop", {"number": "TW-1204"}), ("import", {})):
            assert builder.submit(f"/bench/stock/{act}", sent).status_code == 403, act
    assert store.fittings() == [ROW]


def test_a_few_letters_offer_stock_numbers_with_the_fields_of_their_end(bench: Bench, store: Store) -> None:
    store.keep_fittings([ROW, ELBOW])
    [one] = bench.get("/bench/stock/find", params={"text": "jic 90"}).json()
    assert one["stock_number"] == "TW-1290"
    assert {k: one["fields"][k] for k in ("size", "shape", "drop_mm", "fitting")} == {
        "size": "12", "shape": "elbow_90", "drop_mm": "56", "fitting": "TW-1290"}  # fmt: skip
    scanned = bench.get("/bench/scan", params={"text": "tw-1204"}).json()
    assert (scanned["kind"], scanned["fields"]["fitting"]) == ("fitting", "TW-1204")


def test_the_build_page_shows_the_cut_length_and_names_what_is_unknown(bench: Bench, store: Store) -> None:
    store.keep_fitting(ROW)
    both = _preview(bench, **{"end_a.fitting": "TW-1204", "length_mm": "1250 mm"})
    assert "1153 mm" in both["said"] and "1250 mm − 48.5 mm (A) − 48.5 mm (B) = 1153 mm" in both["said"]
    one = _preview(bench, **{"end_a.fitting": "TW-1204", "end_b.same": "", **{
        f"end_b.{k}": v for k, v in (("connection", "sae_37_flare"), ("form", "female_swivel"), ("shape", "straight"))}})  # fmt: skip
    assert "The cut-off of end B is not known" in one["said"] and "1153 mm" not in one["said"]


def test_the_build_page_holds_the_length_against_the_shops_own_cut_offs(bench: Bench, store: Store) -> None:
    store.keep_fitting(ROW.model_copy(update={"insertion_depth_mm": 40.0}))
    short = {"end_a.fitting": "TW-1204", "length_mm": "170 mm"}  # 2 x (48.5 + 40) mm are in the shells
    found = _preview(bench, **short)
    assert [problem["field"] for problem in found["problems"]] == ["length_mm"]
    assert "177 mm" in str(found["problems"])
    answer = bench.submit("/bench/build", {**HOSE, **short, "key": "k"})
    assert answer.status_code == 422 and "not longer than its two ends" in answer.text and store.count() == 0
    assert _preview(bench, **{**short, "end_a.fitting": ""})["problems"] == []


def test_the_build_page_refuses_a_stock_number_of_another_end(bench: Bench, store: Store) -> None:
    store.keep_fittings([ROW, ELBOW])
    found = _preview(bench, **{"end_a.fitting": "TW-1290"})
    assert {problem["field"] for problem in found["problems"]} == {"end_a.fitting", "end_b.fitting"}
    answer = bench.submit("/bench/build", {**HOSE, "end_a.fitting": "TW-1290", "key": "k"})
    assert answer.status_code == 422 and "is another fitting" in answer.text and store.count() == 0


def test_what_is_built_keeps_its_stock_numbers_for_the_next_build(bench: Bench, store: Store) -> None:
    store.keep_fitting(ROW)
    bench.submit("/bench/build", {**HOSE, "end_a.fitting": "tw-1204", "key": "k"})
    [made] = store.find().assemblies
    assert made.spec.end_b.fitting
    page = bench.get("/bench/build", params={"tag": made.number}).text
    assert re.search(r'name="end_a.fitting" value="(?i:TW-1204)"', page)


def test_the_build_page_shows_the_crimp_card_or_that_the_parts_are_not_approved_together(
    bench: Bench, store: Store
) -> None:
    store.keep_fitting(ROW)
    named = {"end_a.fitting": "TW-1204", "hose.part": "TW 2W 12"}
    assert (
        "have no crimp card of their own. They are not approved together." in _preview(bench, **named)["said"]
    )
    card = {"hose_standard": "R2", "hose_dash": "-12", "hose_part": "TW 2W 12", "shell": "TW two-wire", "diameter_mm": "31",
            "minus_mm": "0.2", "plus_mm": "0.2", "die": "31 set", "skive_outside_mm": "1 in", "source": "a chart"}  # fmt: skip
    assert bench.submit("/bench/shop/crimps", card).status_code == 200
    said = _preview(bench, **named)["said"]
    assert (
        "crimp diameter 31 mm +0.2 −0.2 mm (TW two-wire; source: a chart)" in said
        and "Skive outside: 25.4 mm" in said
    )
    assert "not approved together" not in said


def test_a_list_of_crimp_cards_is_imported_in_the_settings(bench: Bench, store: Store) -> None:
    rows = "hose_standard,hose_dash,hose_part,shell,diameter_mm,minus_mm,plus_mm,source\nR2,12,TW 2W,TW two-wire,31,0.2,0.2,a chart\n"
    assert (
        bench.submit("/bench/shop/crimps/import", files={"file": ("c.csv", rows.encode())}).status_code == 200
    )
    [card] = store.crimps()
    assert (card.hose_standard, card.hose_part, card.by) == ("SAE 100R2", "TW 2W", "manager")


def test_a_crimp_card_is_shown_changed_and_deleted_on_its_page_and_what_is_typed_wrong_stays(
    bench: Bench, store: Store
) -> None:
    card = {"hose_standard": "SAE 100R2", "hose_dash": "-12", "hose_part": "TW 2W", "shell": "TW two-wire",
            "diameter_mm": "31", "minus_mm": "0.2", "plus_mm": "0.2", "die": "31 set", "source": "a chart"}  # fmt: skip
    bench.submit("/bench/shop/crimps", card)
    [kept] = store.crimps()
    page = bench.get("/bench/shop/crimps", params={"card": kept.id}).text
    assert 'name="die" value="31 set"' in page and 'name="diameter_mm" value="31.0"' in page
    wrong = bench.submit("/bench/shop/crimps", {**card, "diameter_mm": "wide", "die": "32 set"})
    assert wrong.status_code == 422 and 'id="wrong-diameter_mm"' in wrong.text
    assert 'value="32 set"' in wrong.text and store.crimps() == [kept]
    bench.submit("/bench/shop/crimps", {**card, "die": "32 set"})
    [changed] = store.crimps()
    assert changed.die == "32 set"
    listed = bench.get("/bench/shop/crimps/cards.csv").text
    assert "TW two-wire" in listed and "32 set" in listed
    assert bench.submit("/bench/shop/crimps/drop", {"card": str(kept.id)}).status_code == 404, (
        "it was changed"
    )
    bench.submit("/bench/shop/crimps/drop", {"card": str(changed.id)})
    assert store.crimps() == []


def test_a_fittings_own_rating_limits_the_assembly_on_the_build_page(bench: Bench, store: Store) -> None:
    store.keep_fitting(ROW.model_copy(update={"rating_bar": 100.0, "rating_source": "an invented sheet"}))
    assert "100 bar" in _preview(bench, **{"end_a.fitting": "TW-1204"})["said"]
    bench.submit("/bench/build", {**HOSE, "end_a.fitting": "TW-1204", "key": "k"})
    [made] = store.find().assemblies
    assert made.content.working_pressure_bar == 100
