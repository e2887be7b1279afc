"""Several benches on one database."""

from __future__ import annotations

import io
import json
import zipfile
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import httpx

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from tagger.store import Event, Role, Store
from tests.bench.served import serving
from tests.store.samples import assessment, spec


def test_two_servers_share_one_postgresql_database(postgresql_url: str) -> None:
    with Store.open(postgresql_url) as first, Store.open(postgresql_url) as second:
        _, secret = first.make_token("bench", Role.MANAGER)
        with serving(Settings(), first) as one, serving(Settings(), second) as two:
            headers = {"Authorization": f"Bearer {secret}"}

            def register(turn: int) -> list[str]:
                served = (one, two)[turn % 2]
                body = {"spec": EXAMPLE_SPEC, "count": 5}
                key = {"Idempotency-Key": f"job {turn // 2}"}  # each job is sent to both
                answer = httpx.post(
                    f"{served.url}/api/v1/assemblies", json=body, headers=headers | key, timeout=60
                )
                assert answer.status_code == 201, answer.text
                numbers: list[str] = answer.json()["numbers"]
                return numbers

            with ThreadPoolExecutor(8) as pool:
                answers = list(pool.map(register, range(20)))
        assert all(answers[n] == answers[n + 1] for n in range(0, 20, 2))
        assert first.count() == len({number for answer in answers for number in answer}) == 50


class _Busy(Store):
    """A store in which another bench registers while its history is read."""

    other: Store

    def events(self, **wanted: Any) -> list[Event]:
        self.other.register(spec(), assessment())
        return super().events(**wanted)


def test_everything_is_of_one_moment(url: str) -> None:
    with _Busy.open(url) as store, Store.open(url) as store.other:
        store.other.register(spec(), assessment())
        _, secret = store.make_token("bench", Role.MANAGER)
        with serving(Settings(), store) as served:
            headers = {"Authorization": f"Bearer {secret}"}
            answer = httpx.get(f"{served.url}/api/v1/everything.zip", headers=headers, timeout=60)
        with zipfile.ZipFile(io.BytesIO(answer.content)) as whole:
            parts = {name: whole.read(name).decode().splitlines() for name in whole.namelist()}
        numbers = [json.loads(line)["number"] for line in parts["assemblies.jsonl"]]
        assert len(numbers) == 1
        assert [json.loads(line)["number"] for line in parts["events.jsonl"]] == numbers
        assert len(parts["assemblies.csv"]) == 1 + len(numbers)
