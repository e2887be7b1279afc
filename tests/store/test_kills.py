"""Killed at any moment while several register at once, on both databases: what was told is kept, and nothing is half-written."""

from __future__ import annotations

import os
import random
import signal
import tempfile
import textwrap
import time
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import psycopg
import pytest
from sqlalchemy import text

from tagger.store import Kind, Store
from tests import processes
from tests.databases import create_database, fresh_sqlite
from tests.volume import volume

KILLS = volume(1, 200)  # on each database
SHOPS = volume(1, 10)  # so many databases share them: one grows to thousands of assemblies
AT_ONCE, THREADS, RUN = 2, 3, 4
STEPS = volume(3, 40)  # told by the victims, at most, before one is killed
STEP_BYTES = 40  # of a line that tells one, about
MOMENT_S = 0.15
PATIENCE_S = 600  # of a busy machine
_VICTIM = textwrap.dedent(f"""
    import os, sys, threading
    from tagger.store import Kind, Store
    from tests.store.samples import assessment, spec
    from sqlalchemy.exc import SQLAlchemyError

    url, name = sys.argv[1:]

    def tell(*words):
        os.write(1, (" ".join(words) + "\\n").encode())

    def work(store, thread):
        for turn in range(1_000_000):
            key = f"{{name}}.{{thread}}.{{turn}}"
            tell("begun", key)
            try:
                made = store.register(spec(), assessment(), count={RUN}, key=key, customer=key)
                numbers = [one.number for one in made]
                tell("registered", key, *numbers)
                store.record_many(numbers, Kind.PRINTED, {{"template": key}})
                tell("printed", key)
            except SQLAlchemyError:  # the server was killed
                os._exit(3)

    store = Store.open(url)
    for thread in range({THREADS}):
        threading.Thread(target=work, args=(store, thread)).start()
""")


@pytest.fixture
def urls(request: pytest.FixtureRequest, database: str, tmp_path: Path) -> Iterator[str]:
    """Addresses of new databases."""

    def each() -> Iterator[str]:
        for shop in range(SHOPS):
            if database == "sqlite":
                folder = tmp_path / str(shop)
                folder.mkdir()
                yield fresh_sqlite(folder)
            else:
                server, template = (
                    request.getfixturevalue(name) for name in ("postgresql_server", "postgresql_template")
                )
                create_database(server, f"killed_{shop}", template)
                yield f"{server}/killed_{shop}"

    return each()


@pytest.mark.parametrize("database", ["sqlite", "postgresql"])
def test_killed_at_any_moment_of_concurrent_registers_nothing_told_is_lost_and_nothing_is_half_written(
    urls: Iterator[str], database: str
) -> None:
    chance, kills, within, runs = random.Random(database), 0, 0, 0
    for shop, url in enumerate(urls):
        told: list[list[str]] = []
        for turn in range(KILLS // SHOPS):
            names = [f"{shop}.{turn}.{one}" for one in range(AT_ONCE)]
            # of ten kills on PostgreSQL, one is that of a process of its server: it ends all others, and starts anew
            told += _killed(url, names, chance, server=database == "postgresql" and turn % 10 == 9)
            kills += 1
            done = processes.run(("-m", "tagger.cli", "audit"), env=os.environ | {"TAGGER_DATABASE_URL": url})
            assert done.returncode == 0, (turn, done.stdout, done.stderr)
        within += _all_or_nothing(url, told)
        runs += len(told)
    assert kills == KILLS and runs > KILLS
    assert within >= KILLS, "each kill met runs on their way"


def _killed(url: str, names: list[str], chance: random.Random, *, server: bool) -> list[list[str]]:
    """What several processes told of their registers until each was killed at a moment of its own."""
    with tempfile.TemporaryFile("w+") as out, tempfile.TemporaryFile("w+") as wrong:
        running = [
            processes.start(("-c", _VICTIM, url, name), stdout=out.fileno(), stderr=wrong.fileno())
            for name in names
        ]
        end = time.monotonic() + PATIENCE_S
        while not (begun := os.pread(out.fileno(), 1 << 20, 0)) or any(
            f"begun {name}.".encode() not in begun for name in names
        ):
            assert time.monotonic() < end and not any(one.poll() for one in running), wrong.read()
            time.sleep(0.005)
        steps = chance.randrange(STEPS)  # a moment of the work, however slow the machine is
        while os.fstat(out.fileno()).st_size < steps * STEP_BYTES:
            assert time.monotonic() < end and not any(one.poll() for one in running), wrong.read()
            time.sleep(0.005)
        for process in running:
            time.sleep(chance.uniform(0, MOMENT_S))
            if server:
                _kill_one_of_the_server(url)
            else:
                process.send_signal(signal.SIGKILL)
        ended = {process.wait(PATIENCE_S) for process in running}
        out.seek(0)
        told = [line.split() for line in out.read().splitlines()]
        wrong.seek(0)
        assert ended == ({3} if server else {-signal.SIGKILL}), wrong.read()
        return told


def _kill_one_of_the_server(url: str) -> None:
    """The process that serves one of the victims; PostgreSQL then recovers as after a crash."""
    try:
        with psycopg.connect(url) as connection:
            wanted = (
                "SELECT pid FROM pg_stat_activity WHERE datname = current_database() "
                "AND backend_type = 'client backend' AND pid <> pg_backend_pid() LIMIT 1"
            )
            found = connection.execute(wanted).fetchone()
            if found:
                os.kill(found[0], signal.SIGKILL)
    except psycopg.OperationalError:
        pass  # it is recovering from the last one
    end = time.monotonic() + PATIENCE_S
    while True:
        try:
            psycopg.connect(url).close()
            return
        except psycopg.OperationalError:
            assert time.monotonic() < end, "the server does not come back"
            time.sleep(0.02)


def _all_or_nothing(url: str, told: list[list[str]]) -> int:
    """Holds the database to what was told; answers how many runs were begun and not told to their end."""
    begun = {words[1] for words in told if words[0] == "begun"}
    registered = {words[1]: words[2:] for words in told if words[0] == "registered"}
    printed = {words[1] for words in told if words[0] == "printed"}
    with Store.open(url) as store:
        with store.reading() as session:
            kept: dict[str, list[str]] = {}
            rows = "SELECT r.key, a.number FROM registration r LEFT JOIN assembly a ON a.registration_id = r.id ORDER BY a.place"
            for key, number in session.execute(text(rows)):
                kept.setdefault(key, []).append(number)
            lines = Counter(
                (number, kind) for number, kind in session.execute(text("SELECT number, kind FROM event"))
            )
        assert {key: kept.get(key) for key in registered} == registered, "what was told is there"
        assert kept.keys() <= begun and {len(numbers) for numbers in kept.values()} <= {RUN}, "no half run"
        for key, numbers in kept.items():
            assert {lines[number, str(Kind.REGISTERED)] for number in numbers} == {1}
            [times] = {lines[number, str(Kind.PRINTED)] for number in numbers}
            assert times == 1 if key in printed else times <= 1, "the whole run is logged, or none of it"
        assert {number for number, _ in lines} == {number for numbers in kept.values() for number in numbers}
        assert store.audit().broken is None
        print(
            len(told),
            "steps told,",
            len(kept),
            "runs kept,",
            len(begun - printed),
            "cut off,",
            store.head().links,
            "links",
        )
    return len(begun - printed)
