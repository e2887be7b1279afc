"""Limits that hold: on every server, in every room, and for whoever is counted."""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor, as_completed
from itertools import islice
from pathlib import Path

import httpx
import pytest

from api.scan.fitted import AN_HOUR
from api.settings import Settings
from api.shared.photos import DECODING, MOST_STRANGERS
from api.web import limits
from tagger.store import Allowance, Role, Store
from tests.bench.served import PASSWORD, Bench, Served, serving
from tests.databases import fresh_sqlite, postgresql_server, postgresql_template, postgresql_url
from tests.passwords import QUICK
from tests.passwords import quick_passwords as quick_passwords
from tests.store.samples import assessment, spec

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url"]
MANY = Settings(public_requests_per_minute=10_000)


def test_two_servers_on_one_database_count_together(postgresql_url: str) -> None:
    with Store.open(postgresql_url) as first, Store.open(postgresql_url) as second:
        moment = first.now()  # it stands still: how slow the machine is lets no wrong password through
        first.now = second.now = lambda: moment
        first.add_person("anna", QUICK.hash(PASSWORD), Role.MANAGER)
        [made] = first.register(spec(), assessment())
        with (
            serving(MANY, first) as one, serving(MANY, second) as two,
            _stranger(one) as here, _stranger(two) as there,
        ):  # fmt: skip
            servers = [(here, there)[place % 2] for place in range(8)]
            wrong = {"name": "Anna ", "password": "wrong"}
            said = [server.post("/bench/sign-in", data=wrong).text for server in servers]
            assert sum("do not match" in page for page in said[:5]) == 5
            assert any("too many failed attempts" in page for page in said[5:])

            for what in ("order", "report"):  # of other tags, from this address, to either server
                for _ in range(AN_HOUR - 2):
                    assert not second.try_now({f"{what} from 127.0.0.1": Allowance(AN_HOUR, 3600)})
            order = {"number": made.number, "phone": "1"}
            asked = [
                server.post("/order", data={**order, "key": f"{n}"}) for n, server in enumerate(servers[:4])
            ]
            assert [answer.status_code for answer in asked] == [303, 303, 429, 429]
            report = {"number": made.number, "fitted_on": "2026-03-02", "machine": "M 1"}
            sent = [
                server.post("/fitted", data={**report, "key": f"{n}"}) for n, server in enumerate(servers[:4])
            ]
            assert [answer.status_code for answer in sent] == [303, 303, 429, 429]
            assert "Too many reports" in sent[-1].text and "Call the shop" in sent[-1].text


def _stranger(served: Served) -> httpx.Client:
    return httpx.Client(base_url=served.url, verify=False, timeout=30)


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        opened.add_person("manager", QUICK.hash(PASSWORD), Role.MANAGER)
        yield opened


def test_a_flood_from_the_shops_own_address_does_not_keep_the_shop_out(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(
        limits, "WINDOW_S", 3600.0
    )  # a loaded machine takes longer than a minute to ask so often
    _, token = store.make_token("scanner", Role.DEVICE)
    known = {"Authorization": f"Bearer {token}"}
    settings = Settings(public_requests_per_minute=20, signed_in_requests_per_minute=60)
    with (
        serving(settings, store) as served, Bench(served.url, store, "manager") as bench, _stranger(served) as client,
    ):  # fmt: skip
        api = "/api/v1/templates"
        assert client.get(api, headers=known).status_code == 200
        answers = [client.get(api, headers={"Authorization": f"Bearer tag_{place}"}) for place in range(25)]
        assert [answer.status_code for answer in answers].count(401) == 19, "whatever it shows of itself"
        last = answers[-1]
        assert last.status_code == 429 and last.headers["retry-after"] == "60"
        assert last.headers["content-type"] == "application/problem+json" and last.json()["status"] == 429
        invented = [{"Cookie": f"tagger_session={place}"} for place in range(25)]
        assert [client.get("/bench/sign-in", headers=one).status_code for one in invented][-1] == 429
        assert client.get("/find").status_code == 200, "public pages have their own count"

        asked = [client.get(api, headers=known).status_code for _ in range(70)]
        assert asked == [200] * 60 + [429] * 10
        disguised = [
            client.get(api, headers={**known, "Cookie": f"lang=en; x={place}"}) for place in range(3)
        ]
        assert {answer.status_code for answer in disguised} == {429}, "it is the same token"
        assert bench.get("/bench/find").status_code == 200


def test_a_proxy_that_is_not_named_is_said_to_the_manager(
    store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    through = {"X-Forwarded-For": "203.0.113.7"}
    with (
        serving(MANY, store) as served, Bench(served.url, store, "manager") as bench, _stranger(served) as client,
    ):  # fmt: skip
        assert "TAGGER_TRUSTED_PROXIES" not in bench.get("/bench/shop").text
        for _ in range(3):
            client.get("/find", headers=through)
        said = bench.get("/bench/shop").text
        assert "TAGGER_TRUSTED_PROXIES=127.0.0.1" in said and "203.0.113.7" not in said
        assert sum("TAGGER_TRUSTED_PROXIES" in line for line in caplog.messages) == 1
    named = MANY.model_copy(update={"trusted_proxies": ("127.0.0.1",)})
    with serving(named, store) as served, Bench(served.url, store, "manager") as bench:
        bench.get("/find", headers=through)
        assert "TAGGER_TRUSTED_PROXIES" not in bench.get("/bench/shop").text


def test_a_flood_of_photos_keeps_nobody_from_a_tags_page(store: Store) -> None:
    """Every thread waited for its turn to decode; now so many may, and no others. Whoever is signed in still may."""
    [made] = store.register(spec(), assessment())
    with (
        serving(MANY, store) as served, Bench(served.url, store, "manager") as bench, _stranger(served) as client,
        ThreadPoolExecutor(MOST_STRANGERS + 7) as at_once,
    ):  # fmt: skip

        def send(place: int) -> httpx.Response:
            address, field = (("/measure", "photo"), ("/measure/find", "photo"), ("/find", "image"))[
                place % 3
            ]
            lines = {"edge_1": "95", "edge_2": "121", "crest_1": "45", "crest_2": "65", "tilt": "0"}
            return client.post(address, files={field: ("x.jpg", b"no picture")}, data=lines)

        with DECODING:  # as while a photo is looked at
            sent = [at_once.submit(send, place) for place in range(MOST_STRANGERS + 6)]
            away = [one.result() for one in islice(as_completed(sent), 6)]
            assert [answer.status_code for answer in away] == [503] * 6
            assert all(answer.headers["Retry-After"] == "3" for answer in away)
            assert client.get(f"/T/{made.number}").status_code == 200
            ours = at_once.submit(bench.submit, "/bench/measure", files={"photo": ("x.jpg", b"no picture")})
        said = [one.result().status_code for one in sent]
        assert sorted(said) == [422] * MOST_STRANGERS + [503] * 6
        assert ours.result().status_code == 422
        assert client.post("/find", files={"image": ("x.jpg", b"no picture")}).status_code == 422
