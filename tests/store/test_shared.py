"""Several benches on one PostgreSQL database, each with a server of its own."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

import httpx

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from tagger.store import Role, Store
from tests.bench.served import serving


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
