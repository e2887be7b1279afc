"""What a stranger types stays text, on every page that shows it."""

from __future__ import annotations

import json
from pathlib import Path

from api.settings import Settings
from tagger.store import Role, Store
from tests.bench.served import PASSWORD, Bench, serving
from tests.databases import fresh_sqlite
from tests.passwords import QUICK
from tests.passwords import quick_passwords as quick_passwords
from tests.store.samples import assessment, spec

MARKUP = "<img src=x onerror=alert(1)>\"'{{7*7}}{$x}"


def test_what_a_stranger_types_is_text_wherever_it_is_shown(tmp_path: Path) -> None:
    with Store.open(fresh_sqlite(tmp_path)) as store:
        store.add_person("manager", QUICK.hash(PASSWORD), Role.MANAGER)
        [made] = store.register(
            spec(note=MARKUP, hose={"standard": "SAE 100R2", "dash": 12, "lot": MARKUP[:30]}), assessment(),
            customer=MARKUP, machine=MARKUP, position=MARKUP,
        )  # fmt: skip
        with serving(Settings(), store) as served, Bench(served.url, store, "manager") as bench:
            texts = ("name", "company", "change_other", "change_length", "change_cover")
            order = {"number": made.number, "phone": "1", "reference": MARKUP} | dict.fromkeys(texts, MARKUP)
            ordered = bench.post("/order", data=order)
            assert ordered.status_code == 200
            reported = {
                "number": made.number,
                "fitted_on": "2026-03-02",
                "machine": MARKUP,
                "fitted_by": MARKUP,
            }
            assert bench.post("/fitted", data=reported).status_code == 200
            [kept] = store.orders()
            [report] = store.fitted_reports()
            shown = [
                f"/T/{made.number}/{made.digits}", f"/order/{kept.reference}", "/bench/orders",
                f"/bench/orders/{kept.reference}", f"/bench/tag/{made.number}", "/bench/fitted",
                f"/bench/fitted/{report.id}", "/bench/find", f"/bench/build?tag={made.number}",
                f"/bench/build?order={kept.reference}",
            ]  # fmt: skip
            pages = {address: bench.get(address) for address in shown}
            pages |= {
                path: bench.get(path, params={name: MARKUP, "customer": MARKUP})
                for path, name in (
                    ("/bench/customer", "name"), ("/bench/machine", "machine"), ("/bench/go", "text"),
                    ("/bench/find", "text"), ("/find", "q"), ("/bench/sign-in", "next"), ("/bench/stock", "text"),
                )
            }  # fmt: skip
            for address, page in pages.items():
                assert page.status_code < 500, address
                assert "<img src=x" not in page.text, address
                assert "49{$x}" not in page.text, address
            assert sum("&lt;img src=x" in page.text for page in pages.values()) >= 8
            refused = bench.post("/bench/sign-in", data={"name": MARKUP, "password": "x"})
            assert "<img src=x" not in refused.text and "&lt;img" in refused.text
            answer = bench.get(f"/T/{made.number}", headers={"accept": "application/json"})
            assert answer.headers["content-type"].startswith("application/json") and json.loads(answer.text)
            assert answer.headers["x-content-type-options"] == "nosniff"
