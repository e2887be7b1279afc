"""What the acts of a day take as the records grow: registering, scanning, finding, withdrawing, figures, a backup.

    .venv/bin/python -m tests.speed.large [ASSEMBLIES ...]     (by default 2000 10000 100000)

A few real records are registered, and repeated in bulk by SQL under numbers, customers, machines and lots of
their own. Each figure is the median of several acts, on SQLite and on a PostgreSQL started for it, in ms of CPU: of this process
and of the database's, so that other work on the machine does not count, and neither does waiting for the disk.
A find is what the bench's page asks: fifty assemblies and their count. The names looked for are spread
over the whole time; some are parts of names, some are found nowhere. A backup is written, read back and compared in a
process of its own, whose memory is told beside what the program takes there before it. Each size is told as it is done.
"""

from __future__ import annotations

import os
import random
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import psycopg
from sqlalchemy import text
from stdnum.iso7064 import mod_37_36

from tagger.code import number as tag_number
from tagger.spec import AssemblySpec
from tagger.store import Filter, Kind, Registration, Scope, Store
from tagger.store.recorded_texts import keep_texts
from tagger.trade import assess
from tests.databases import create_database, running_postgresql
from tests.scan.conftest import SPEC
from tests.speed.table import Row

MEMORY = "memory of a backup, MB"
RUN = 4  # assemblies registered together
A_CUSTOMER, A_MACHINE, A_REEL, A_BOX = 100, 5, 50, 80  # assemblies of each
_FIRST, _LAST = (
    ("Brindle", "Harbour", "Quarry", "Ridge", "Tide", "Écluse"),
    ("Cranes", "Farm", "North", "Works"),
)
_KINDS = ("Loader", "Crusher", "Drill", "Excavator", "Press", "Telehandler")
_AT_ONCE = (
    -300_000
)  # kB that SQLite remembers while it is filled: the indexes of a million are written all over
_START = datetime(2020, 1, 1, tzinfo=UTC)


def customer(n: int) -> str:
    """The customer of the assembly with the place ``n``: customers come back over the years."""
    return f"{_FIRST[n % 6]} {_LAST[n % 4]} {n // A_CUSTOMER}"


def machine(n: int) -> str:
    return f"{_KINDS[n // A_MACHINE % 6]} {7919 * (n // A_MACHINE) % 1_000_003:06}"


def lots(n: int) -> dict[str, str]:
    box = f"F-{n // A_BOX}"
    return {"hose_lot": f"H-{n // A_REEL}", "fitting_lot_a": box, "fitting_lot_b": box}


def fill(store: Store, count: int) -> None:
    """Repeats a few real records until there are ``count``, each with three lines of history."""
    specs = [AssemblySpec.read(SPEC | {"length_mm": 1000.0 + 10 * step}) for step in range(8)]
    made = store.register_many([Registration(spec, assess(spec)) for spec in specs])
    with store.reading() as session:
        connection = session.connection().connection.dbapi_connection
        assert connection is not None
        columns, kept = _read(connection, "assembly", [item.number for item in made])
    with store.writing() as session:
        if isinstance(connection, sqlite3.Connection):
            session.execute(text(f"PRAGMA cache_size={_AT_ONCE}"))
        keep_texts(
            session, ({"customer": customer(n), "machine": machine(n), **lots(n)} for n in range(count))
        )
    store.database.connect_anew()  # with what a connection remembers by itself
    names, moments = _numbers(count), [_moment(n) for n in range(count)]
    if isinstance(connection, sqlite3.Connection):
        own: Any = sqlite3.connect(str(store.database.url.database))
        own.execute("PRAGMA synchronous=OFF")
        own.execute(f"PRAGMA cache_size={_AT_ONCE}")
    else:
        own = psycopg.connect(store.database.url.set(drivername="postgresql").render_as_string(False))
    _write(own, "registration", ("id", "key", "fingerprint", "created_at"), _runs(moments))
    _write(own, "assembly", columns, _assemblies(columns, kept, names, moments))
    _write(own, "event", ("number", "kind", "at", "by", "data"), _events(names, moments))
    if isinstance(own, psycopg.Connection):
        own.execute("SELECT setval(pg_get_serial_sequence('registration', 'id'), %s)", [1000 + count])
        own.execute("ANALYZE")
    own.commit()
    own.close()


def _read(connection: Any, table: str, numbers: list[str]) -> tuple[tuple[str, ...], list[dict[str, Any]]]:
    cursor = connection.cursor()
    cursor.execute(f"SELECT * FROM {table}")
    columns = tuple(column[0] for column in cursor.description)
    found = [dict(zip(columns, row, strict=True)) for row in cursor.fetchall()]
    return columns, [row for row in found if row["number"] in numbers]


def _numbers(count: int) -> list[str]:
    """As many tag numbers, always the same: the system's randomness takes longer than the rest of a row."""
    chance, letters = random.Random(count), tag_number.ALPHABET
    bodies = ("".join(chance.choices(letters, k=tag_number.LENGTH - 1)) for _ in range(count))
    return [body + mod_37_36.calc_check_digit(body, letters) for body in bodies]


def _moment(n: int) -> str:
    return f"{(_START + timedelta(minutes=n)).replace(tzinfo=None).isoformat(' ')}.000000"


def _runs(moments: list[str]) -> Iterator[tuple[Any, ...]]:
    for run in range(len(moments) // RUN):
        yield 1000 + run, None, "0" * 64, moments[run * RUN]


def _assemblies(
    columns: tuple[str, ...], kept: list[dict[str, Any]], names: list[str], moments: list[str]
) -> Iterator[tuple[Any, ...]]:
    for n, name in enumerate(names[: len(names) // RUN * RUN]):
        own = {
            "number": name, "registration_id": 1000 + n // RUN, "place": n % RUN, "created_at": moments[n],
            "built_on": moments[n][:10], "customer": customer(n), "machine": machine(n),
            **lots(n),
        }  # fmt: skip
        row = kept[n % len(kept)] | own
        yield tuple(row[column] for column in columns)


def _events(names: list[str], moments: list[str]) -> Iterator[tuple[Any, ...]]:
    for n, name in enumerate(names[: len(names) // RUN * RUN]):
        for kind in map(str, (Kind.REGISTERED, Kind.PRINTED, Kind.SCANNED)):
            yield name, kind, moments[n], None, "{}"


def _write(own: Any, table: str, columns: tuple[str, ...], rows: Iterator[tuple[Any, ...]]) -> None:
    named = ", ".join(f'"{column}"' for column in columns)
    if isinstance(own, sqlite3.Connection):
        marks = ", ".join("?" * len(columns))
        own.executemany(f"INSERT INTO {table} ({named}) VALUES ({marks})", rows)
        return
    with own.cursor().copy(f"COPY {table} ({named}) FROM STDIN") as copy:
        for row in rows:
            copy.write_row(row)


class Clock:
    """How much CPU this process and a database's server have had, in ms.

    The server's processes are those of the same parent as the one that answers us. ``/proc``: Linux alone.
    """

    def __init__(self, store: Store) -> None:
        self._parent, self._answering = 0, list[Path]()
        if store.database.engine.dialect.name == "postgresql":
            with store.reading() as session:
                self._parent = int(_stat(session.scalar(text("SELECT pg_backend_pid()")) or 0)[1])

    def __call__(self) -> float:
        return 1000 * time.process_time() + self.server()

    def look(self) -> None:
        """Which processes of the server there are now."""
        self._answering = []
        for one in Path("/proc").iterdir():
            with suppress(OSError):  # ended meanwhile
                if self._parent and one.name.isdecimal() and int(_stat(one.name)[1]) == self._parent:
                    self._answering.append(one / "schedstat")

    def server(self) -> float:
        """What the server's processes have had; of those that ended, such as parallel workers, to 10 ms."""
        if not self._parent:
            return 0.0
        alive = 0
        for one in self._answering:
            with suppress(OSError):
                alive += int(one.read_text().split()[0])
        ended = sum(map(int, _stat(self._parent)[13:15]))
        return alive / 1e6 + 1000 * ended / os.sysconf("SC_CLK_TCK")


def _stat(pid: int | str) -> list[str]:
    """The fields of /proc/PID/stat from the state on (proc_pid_stat(5)): 1 is the parent, 13 and 14 ended children."""
    return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()


def timed(clock: Clock, act: Callable[[Any], object], asked: list[Any]) -> float:
    """The median of one act with each of these, in ms of CPU."""
    took = []
    act(asked[0])  # whatever is done only once in a process
    clock.look()
    for one in asked:
        start = clock()
        act(one)
        took.append(clock() - start)
    return statistics.median(took)


def measure(store: Store, count: int) -> dict[str, float]:
    """The median of each act, in ms of CPU; of figures, one."""
    chance, clock = random.Random(count), Clock(store)
    some = [chance.randrange(count) for _ in range(9)]

    def find(wanted: Filter) -> None:
        with store.reading():
            store.find(wanted)
            store.count(wanted)

    def withdraw(lot: str) -> None:
        store.lift(store.withdraw("a test", hose_lot=lot).id, "a test")

    spec = AssemblySpec.read(SPEC | {"hose": {**SPEC["hose"], "lot": None}})
    numbers = [
        item.number for n in some for item in store.find(Filter(lot=f"H-{n // A_REEL}"), limit=1).assemblies
    ]
    return {
        "register": timed(clock, lambda n: store.register(spec, assess(spec), customer=f"New {n}"), some),
        "scan": timed(clock, lambda number: (store.assembly(number), store.history(number)), numbers),
        "find customer": timed(clock, lambda n: find(Filter(customer=customer(n).lower())), some),
        "find part of it": timed(clock, lambda n: find(Filter(customer=customer(n)[3:])), some),
        "find machine": timed(clock, lambda n: find(Filter(machine=machine(n).upper())), some),
        "find serial": timed(clock, lambda n: find(Filter(machine=machine(n)[-5:])), some),
        "find a common word": timed(clock, lambda n: find(Filter(machine=_KINDS[n % 6])), some[:3]),
        "find nothing": timed(clock, lambda n: find(Filter(customer=f"nobody {n}")), some),
        "find lot": timed(clock, lambda n: find(Filter(lot=f"h-{n // A_REEL}")), some),
        "find fitting lot": timed(clock, lambda n: find(Filter(lot=f"f-{n // A_BOX}")), some),
        "names offered": timed(clock, lambda n: store.named("machine", machine(n)[-5:]), some),
        "a machine's hoses": timed(clock, lambda n: store.on_machine(customer(n), machine(n)), some),
        "affected": timed(clock, lambda n: store.affected(Scope.HOSE_LOT, f"H-{n // A_REEL}"), some),
        "withdraw and lift": timed(clock, lambda n: withdraw(f"H-{n // A_REEL}"), some[:5]),
        "figures": timed(clock, lambda _: (store.totals(store.now() - timedelta(days=30)), store.oldest()), [1]),
    }  # fmt: skip


def back_up(url: str, folder: Path) -> dict[str, float]:
    """A backup in a process of its own: ms of CPU, and how much memory it took beside the program, in MB."""
    with Store.open(url) as store:
        clock = Clock(store)
        before = clock.server()
        done = subprocess.run(
            [sys.executable, "-m", "tests.speed.large", "backup", url, str(folder)],
            stdout=subprocess.PIPE,
            check=True,
        )
        ms, mb = map(float, done.stdout.split())
        return {"backup": ms + clock.server() - before, MEMORY: mb}


def _back_up(url: str, folder: Path) -> None:
    with Store.open(url) as store:
        store.count()
        before, start = _most_memory(), time.process_time()
        copy = folder / f"{time.time_ns()}.copy"
        store.backup(copy)
        print(1000 * (time.process_time() - start), _most_memory() - before)
        copy.unlink()


def _most_memory() -> float:
    """What this program has taken at most so far, in MB; what getrusage says is at least what the parent took."""
    [line] = [one for one in Path("/proc/self/status").read_text().splitlines() if one.startswith("VmHWM:")]
    return int(line.split()[1]) / 1024


@contextmanager
def _urls(folder: Path) -> Iterator[dict[str, Callable[[int], str]]]:
    """For each engine the address of a new database by its name."""

    def new(count: int) -> str:
        create_database(server, f"of_{count}")
        return f"{server}/of_{count}"

    with running_postgresql() as server:
        yield {"SQLite": lambda count: f"sqlite:///{folder}/{count}.sqlite3", "PostgreSQL": new}


def all_of(sizes: list[int]) -> dict[str, dict[int, dict[str, float]]]:
    """Of each engine what each act takes, in ms of CPU, by the number of assemblies."""
    with tempfile.TemporaryDirectory() as folder, _urls(Path(folder)) as engines:
        found: dict[str, dict[int, dict[str, float]]] = {engine: {} for engine in engines}
        urls = {(engine, count): new(count) for count in sizes for engine, new in engines.items()}
        for (engine, count), url in urls.items():
            with Store.open(url) as store:
                start = time.monotonic()
                fill(store, count)
                print(f"{engine}, {count:,}: filled in {time.monotonic() - start:.0f} s", flush=True)
                found[engine][count] = measure(store, count)
            _tell(engine, count, found[engine][count])
        for (engine, count), url in urls.items():
            backup = back_up(url, Path(folder))
            _tell(engine, count, backup)
            found[engine][count] |= backup
        return found


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks: the largest size beside the smallest."""
    sizes = [200, 2_000] if small else [2_000, 100_000]
    for engine, found in all_of(sizes).items():
        first, last = (found[count] for count in sizes)
        for act, value in last.items():
            goal = "<= 1.5" if act.startswith("find") else "<="
            unit = "MB" if act == MEMORY else "ms"
            yield Row(
                f"{engine}, {sizes[1]:,} beside {sizes[0]:,}: {act}",
                value,
                unit,
                value / max(first[act], 0.1),
                goal,
            )


def main() -> None:
    sizes = [int(one) for one in sys.argv[1:]] or [2_000, 10_000, 100_000]
    for engine, by_size in all_of(sizes).items():
        _print_table(engine, by_size)


def _tell(engine: str, count: int, values: dict[str, float]) -> None:
    print(f"{engine}, {count:,}: " + ", ".join(f"{act} {ms:.1f}" for act, ms in values.items()), flush=True)


def _print_table(engine: str, found: dict[int, dict[str, float]]) -> None:
    first, last = next(iter(found.values())), list(found.values())[-1]
    print(f"\n{engine}, CPU ms{'':<10}" + "".join(f"{count:>12,}" for count in found) + "   last : first")
    for act in first:
        values = "".join(f"{by_act[act]:>12.1f}" for by_act in found.values())
        print(f"{act:<24}{values}   {last[act] / max(first[act], 0.1):.1f}")


if __name__ == "__main__":
    if sys.argv[1:2] == ["backup"]:
        _back_up(sys.argv[2], Path(sys.argv[3]))
    else:
        main()
