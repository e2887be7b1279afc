"""Real databases: a SQLite file, and a PostgreSQL server of our own started for the tests."""

from __future__ import annotations

import os
import pwd
import shutil
import socket
import subprocess
import uuid
from collections.abc import Iterator
from pathlib import Path

import psycopg
import pytest

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
def postgresql_server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The address, without a database, of a throw-away server."""
    binaries = _binaries()
    folder = Path("/tmp") / f"tagger-pg-{uuid.uuid4().hex[:8]}"  # short: a socket's path has a limit
    folder.mkdir(mode=0o700)
    run_as: dict[str, object] = {}
    if os.geteuid() == 0:  # the server refuses to run as root
        user = next(pwd.getpwnam(n) for n in ("postgres", "nobody") if _exists(n))
        os.chown(folder, user.pw_uid, user.pw_gid)
        run_as = {"user": user.pw_uid, "group": user.pw_gid, "extra_groups": []}
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]

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


def _exists(user: str) -> bool:
    try:
        pwd.getpwnam(user)
    except KeyError:
        return False
    return True


@pytest.fixture
def postgresql_url(postgresql_server: str) -> str:
    """The address of a new, empty database."""
    name = f"t_{uuid.uuid4().hex}"
    with psycopg.connect(f"{postgresql_server}/postgres", autocommit=True) as connection:
        connection.execute(f"CREATE DATABASE {name}")
    return f"{postgresql_server}/{name}"


@pytest.fixture
def sqlite_url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'tags.sqlite3'}"


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest) -> str:
    """Each test that asks for it runs on both databases."""
    value: str = request.getfixturevalue(f"{request.param}_url")
    return value
