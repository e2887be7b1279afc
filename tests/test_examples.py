"""The invented week loads, twice the same, and its pages answer."""

from __future__ import annotations

from pathlib import Path

from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from examples.load import JOBS, Calendar, load_week
from tagger.record_tag import tags_of
from tagger.spec import AssemblySpec
from tagger.store import Store


def test_loading_the_week_twice_changes_nothing(tmp_path: Path) -> None:
    with Store.open(f"sqlite:///{tmp_path}/week.sqlite3", now=Calendar()) as store:
        first = load_week(store, Calendar())
        count, events = store.count(), len(store.events())
        parts = (store.own_hoses(), store.crimps(), store.shop_rows(ended=True))
        wanted = AssemblySpec.read(
            {"hose": {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"}, "length_mm": 900,
             **{end: store.fitting("TW-1204").spec_end() for end in ("end_a", "end_b")}}
        )  # fmt: skip
        assert all(card.approved for card in store.crimp_cards(wanted, store.fittings_of(wanted)))
        second = load_week(store, Calendar())
        assert (store.count(), len(store.events())) == (count, events)
        assert parts == (store.own_hoses(), store.crimps(), store.shop_rows(ended=True))
    assert count == sum(job.count for job in JOBS) + 11
    assert [one.number for one in second.service_run] == [one.number for one in first.service_run]
    assert second.order.reference == first.order.reference


def test_every_tag_of_the_week_opens(tmp_path: Path) -> None:
    settings = Settings(database_url=f"sqlite:///{tmp_path}/week.sqlite3")
    with Store.open(settings.database_url, now=Calendar()) as store:
        week = load_week(store, Calendar())
        with TestClient(create_app(settings, store=store)) as client:
            for assembly in [one for built in week.built.values() for one in built]:
                path = tags_of(store, [assembly], settings)[0].link.removeprefix("HTTP://127.0.0.1:8000")
                page = client.get(path)
                assert page.status_code == 200
                assert assembly.number[:5] in page.text
                assert ("cover blistered" in page.text) == (assembly.spec.hose.lot == "H-2310")


def test_each_reel_of_the_week_is_one_hose(tmp_path: Path) -> None:
    with Store.open(f"sqlite:///{tmp_path}/week.sqlite3", now=Calendar()) as store:
        load_week(store, Calendar())
        lots = {item.spec.hose.lot for item in store.every() if item.spec.hose.lot}
        assert len(lots) >= 8
        assert {lot: len(store.hoses_of_lot(lot)) for lot in lots} == dict.fromkeys(lots, 1)
        assert all("lot_reason" not in event.data for event in store.events())
