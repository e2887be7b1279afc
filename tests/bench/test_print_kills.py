"""The print queue killed at any moment: no job is lost, none is printed twice, and the history says what may be on a hose."""

from __future__ import annotations

import os
import random
import re
import signal
import tempfile
import textwrap
import time
from collections import Counter
from pathlib import Path

from api.settings import Settings
from api.workers.print_queue import PrintQueue
from tagger.store import Kind, PrintState, Store
from tests import processes
from tests.databases import fresh_sqlite
from tests.printing.ipp.endpoint import serving, until
from tests.store.samples import assessment, spec
from tests.volume import volume

KILLS = volume(1, 50)
PATIENCE_S = 600  # of a busy machine
JOBS = volume(1, 3)  # asked for before each kill
_VICTIM = textwrap.dedent(f"""
    import os, sys, time
    from api.settings import Settings
    from api.workers import print_queue
    from tagger.store import Store

    url, number = sys.argv[1:]
    store = Store.open(url)
    queue = print_queue.PrintQueue(store, Settings(base_url="https://tags.example.com"))
    queue.start()
    under_way = {{"waiting", "sending", "printing"}}
    while under_way & {{str(job.state) for job in store.print_jobs(limit=20)}}:  # what the last one left behind
        time.sleep(0.05)
    for _ in range({JOBS}):
        job = store.ask_print(1, [number], "hang_tag")
        os.write(1, f"{{job.id}}\\n".encode())
        queue.wake()
    time.sleep(600)
""")
_SETTLED = (PrintState.DONE, PrintState.FAILED, PrintState.UNKNOWN)


def test_a_queue_killed_at_any_moment_loses_no_job_and_prints_none_twice(tmp_path: Path) -> None:
    chance, told = random.Random(50), list[int]()
    url = fresh_sqlite(tmp_path)
    with serving(tmp_path / "spool", "application/pdf") as printer, Store.open(url) as store:
        [made] = store.register(spec(), assessment())
        store.add_printer("Bench 1", printer.uri, 600)
        for _ in range(KILLS):
            told += _killed(url, made.number, chance)
            assert store.audit().broken is None
        queue = PrintQueue(store, Settings(base_url="https://tags.example.com"))
        queue.start()
        try:
            until(lambda: {job.state for job in store.print_jobs(limit=1000)} <= set(_SETTLED), PATIENCE_S)
        finally:
            queue.stop()
        jobs = store.print_jobs(limit=1000)
        assert {job.id for job in jobs} >= set(told) and len(told) >= KILLS, "none is lost"
        sent = Counter(int(re.findall(r"_job_(\d+)_", file.name)[0]) for file in printer.received())
        logged = Counter(
            event.data["job"] for event in store.history(made.number) if event.kind is Kind.PRINTED
        )
        for job in jobs:
            assert job.attempts == 1, "nothing is sent again by itself"
            assert sent[job.id] in {PrintState.DONE: (1,), PrintState.FAILED: (0,)}.get(job.state, (0, 1))
            assert logged[job.id] == (job.state is not PrintState.FAILED), (job, "what may be printed counts")
        print(KILLS, "kills:", dict(Counter(str(job.state) for job in jobs)), "of", len(jobs), "jobs")


def _killed(url: str, number: str, chance: random.Random) -> list[int]:
    """The jobs that a process told of before it was killed, at a moment of the time that printing them takes."""
    with tempfile.TemporaryFile("w+") as out:
        process = processes.start(("-c", _VICTIM, url, number), stdout=out.fileno())
        end = time.monotonic() + PATIENCE_S
        while not os.pread(out.fileno(), 1, 0):
            assert time.monotonic() < end and process.poll() is None
            time.sleep(0.005)
        time.sleep(chance.uniform(0, 1.2))
        process.send_signal(signal.SIGKILL)
        assert process.wait(PATIENCE_S) == -signal.SIGKILL
        out.seek(0)
        return [int(line) for line in out.read().split()]
