"""Real databases: a SQLite file, and a PostgreSQL server of our own started for the tests."""

from __future__ import annotations

import os
import pwd
import shutil
import sqlite3
import subprocess
import tempfile
import uuid
from collections.abc import Iterator
from contextlib import closing, contextmanager
from functools import cache
from pathlib import Path

import psycopg
import pytest

from tagger.store import Store
from tests import compiled
from tests.ports import free_port

compiled.share()

_WHERE = ("/usr/lib/postgresql/*/bin", "/usr/local/pgsql/bin", "/opt/homebrew/opt/postgresql*/bin")


def _binaries() -> Path:
    found = shutil.which("initdb")
    if found:
        return Path(found).resolve().parent
    for pattern in _WHERE:
        root, rest = Path(pattern).anchor, str(Path(pattern).relative_to(Path(pattern).anchor))
        for folder in sorted(Path(root).glob(rest), reverse=True):
            if (folder / "initdb").exists():
                return folder
    pytest.fail(
        "PostgreSQL's initdb is not on this machine: install the package postgresql (Debian: apt-get install postgresql)."
    )


@pytest.fixture(scope="session")
def postgresql_server() -> Iterator[str]:
    """The address, without a database, of a throw-away server."""
    with running_postgresql() as address:
        yield address


@contextmanager
def running_postgresql() -> Iterator[str]:
    """The same outside of a test."""
    binaries = _binaries()
    folder = _memory() / f"tagger-pg-{uuid.uuid4().hex[:8]}"  # short: a socket's path has a limit
    folder.mkdir(mode=0o700)
    run_as: dict[str, object] = {}
    if os.geteuid() == 0:  # the server refuses to run as root
        user = next(pwd.getpwnam(n) for n in ("postgres", "nobody") if _exists(n))
        os.chown(folder, user.pw_uid, user.pw_gid)
        run_as = {"user": user.pw_uid, "group": user.pw_gid, "extra_groups": []}
    port = free_port()

    def run(*command: str) -> None:
        done = subprocess.run(command, capture_output=True, text=True, cwd=folder, **run_as)  # type: ignore[call-overload]
        assert done.returncode == 0, f"{command[0]}: {done.stdout}{done.stderr}"

    data = str(folder / "data")
    run(str(binaries / "initdb"), "-D", data, "-U", "tester", "-A", "trust", "-E", "UTF8", "--no-sync")
    options = f"-p {port} -k {folder} -c listen_addresses=127.0.0.1 -c fsync=off"
    run(str(binaries / "pg_ctl"), "-D", data, "-w", "-l", str(folder / "log"), "-o", options, "start")
    try:
        yield f"postgresql://tester@127.0.0.1:{port}"
    finally:
        run(str(binaries / "pg_ctl"), "-D", data, "-m", "immediate", "-w", "stop")
        shutil.rmtree(folder)


def _memory() -> Path:
    """A folder in memory where there is room: each database is some 300 files, to be made and deleted."""
    memory = Path("/dev/shm")
    roomy = memory.is_dir() and shutil.disk_usage(memory).free > 4_000_000_000
    return memory if roomy else Path("/tmp")


def _exists(user: str) -> bool:
    try:
        pwd.getpwnam(user)
    except KeyError:
        return False
    return True


@pytest.fixture(scope="session")
def postgresql_template(postgresql_server: str) -> str:
    """The name of a database of today's shape that holds nothing; the others are copied from it."""
    name = "of_today"
    create_database(postgresql_server, name)
    Store.open(f"{postgresql_server}/{name}").close()
    return name


@pytest.fixture
def postgresql_url(postgresql_server: str, postgresql_template: str) -> Iterator[str]:
    """The address of a new database of today's shape that holds nothing."""
    with _new(postgresql_server, postgresql_template) as address:
        yield address


@pytest.fixture
def empty_postgresql_url(postgresql_server: str) -> Iterator[str]:
    """The address of a new database without any table."""
    with _new(postgresql_server, "template1") as address:
        yield address


@contextmanager
def _new(server: str, template: str) -> Iterator[str]:
    name = f"t_{uuid.uuid4().hex}"
    create_database(server, name, template)
    yield f"{server}/{name}"
    _run(server, f"DROP DATABASE {name} WITH (FORCE)")


def create_database(server: str, name: str, template: str = "template1") -> None:
    _run(server, f"CREATE DATABASE {name} TEMPLATE {template}")


def _run(server: str, statement: str) -> None:
    with psycopg.connect(f"{server}/postgres", autocommit=True) as connection:
        connection.execute(statement)


@pytest.fixture
def sqlite_url(tmp_path: Path) -> str:
    return fresh_sqlite(tmp_path)


def fresh_sqlite(folder: Path) -> str:
    """The address of a new SQLite file there, of today's shape and empty: a copy, not migrated each time."""
    file = folder / "tags.sqlite3"
    file.write_bytes(_sqlite_template())
    return f"sqlite:///{file}"


@cache
def _sqlite_template() -> bytes:
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "tags.sqlite3"
        Store.open(f"sqlite:///{file}").close()
        with closing(sqlite3.connect(file)) as connection:
            connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        return file.read_bytes()


@pytest.fixture(params=["sqlite", "postgresql"])
def new_url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """A database without any table, on each of the two."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'new.sqlite3'}"
    value: str = request.getfixturevalue("empty_postgresql_url")
    return value


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest) -> str:
    """Each test that asks for it runs on both databases."""
    value: str = request.getfixturevalue(f"{request.param}_url")
    return value


def registered_in(folder: Path) -> int:
    """How many assemblies the database of the command line's tests holds; none where there is no database."""
    file = folder / "tags.sqlite3"
    if not file.exists():
        return 0
    with Store.open(f"sqlite:///{file}") as store:
        return store.count()
