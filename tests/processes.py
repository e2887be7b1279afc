"""Programs in processes of their own, started by a parent that has loaded what they import.

A short command spends most of its time on importing. The parent imports once for a run of the tests and
forks for each program: a real process, with arguments, environment, folder, output and exit code of its
own, that goes through the program's own start and end. Before the fork nothing is read from the
environment and no database is opened. ``tests/cli/test_fresh.py`` holds it to what a new Python does.
"""

from __future__ import annotations

import atexit
import contextlib
import gc
import importlib
import json
import os
import runpy
import select
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import traceback
from collections.abc import Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any, NoReturn

ROOT = Path(__file__).parents[1]
_READ_AT_START = ("PYTHON", "LC_", "LANG", "TZ")
"""The variables that an interpreter reads when it starts begin so; for others than ours it starts anew."""
_WIDTH = 8
"""How many bytes a number has on its way between the tests and a minder."""
_LOADED = (
    "tagger.cli.backups", "tagger.cli.commands", "tagger.cli.printing", "tagger.cli.proving", "tagger.cli.report",
    "tagger.cli.tables_report", "tagger.cli.values", "tagger.code.photo", "tagger.lists", "tagger.printing.pdf",
    "tagger.printing.preflight", "tagger.printing.printer", "tagger.printing.raster", "tagger.printing.sheets",
    "tagger.record_tag", "tagger.shop_lists", "tagger.store.backup", "tagger.trade.identifying.identify",
    "tagger.trade.likeforlike", "tagger.trade.report", "tagger.trade.validate", "tagger.cli.serving", "api.app",
    "api.web.senders", "uvicorn.lifespan.on",
    "uvicorn.loops.auto", "uvicorn.protocols.http.auto", "tests.store.samples",
)  # fmt: skip


class Process:
    """A running program; ``poll``, ``wait``, ``kill`` and ``send_signal`` as those of ``subprocess.Popen``."""

    def __init__(self, minder: socket.socket, arguments: Sequence[str]) -> None:
        self.arguments, self._minder = list(arguments), minder
        self.returncode: int | None = None
        self.pid = _number(minder)

    def wait(self, timeout: float | None = None) -> int:
        """The exit code, or minus the signal that ended it."""
        if self.returncode is None:
            if not select.select([self._minder], [], [], timeout)[0]:
                raise subprocess.TimeoutExpired(self.arguments, timeout or 0)
            self.returncode = os.waitstatus_to_exitcode(_number(self._minder))
            self._minder.close()
        return self.returncode

    def poll(self) -> int | None:
        try:
            return self.wait(0)
        except subprocess.TimeoutExpired:
            return None

    def send_signal(self, number: int) -> None:
        if self.poll() is None:
            os.kill(self.pid, number)

    def kill(self) -> None:
        self.send_signal(signal.SIGKILL)

    def terminate(self) -> None:
        self.send_signal(signal.SIGTERM)


def start(
    arguments: Sequence[str], *, cwd: Path = ROOT, env: Mapping[str, str] | None = None, stdout: int = 1, stderr: int = 2
) -> Process:  # fmt: skip
    """Starts what ``python`` would with these arguments: ``-m`` and a module, or ``-c`` and code, and its own."""
    asked = {"arguments": list(arguments), "cwd": str(cwd), "env": dict(os.environ if env is None else env)}
    minder = socket.socket(socket.AF_UNIX)
    minder.connect(_parent())
    data = json.dumps(asked).encode()
    with Path(os.devnull).open() as nothing:
        socket.send_fds(minder, [_bytes(len(data))], [nothing.fileno(), stdout, stderr])
    minder.sendall(data)
    return Process(minder, arguments)


def run(
    arguments: Sequence[str], *, cwd: Path = ROOT, env: Mapping[str, str] | None = None, timeout: float = 120
) -> subprocess.CompletedProcess[str]:
    """Runs such a program to its end; its output and errors as text."""
    if _of_the_start(os.environ if env is None else env) != _of_the_start(os.environ):
        return subprocess.run(
            [sys.executable, *arguments], capture_output=True, text=True, cwd=cwd, env=env, timeout=timeout
        )
    with tempfile.TemporaryFile("w+") as out, tempfile.TemporaryFile("w+") as wrong:
        process = start(arguments, cwd=cwd, env=env, stdout=out.fileno(), stderr=wrong.fileno())
        try:
            code = process.wait(timeout)
        except subprocess.TimeoutExpired:
            process.kill()
            raise
        out.seek(0)
        wrong.seek(0)
        return subprocess.CompletedProcess(list(arguments), code, out.read(), wrong.read())


def _bytes(number: int) -> bytes:
    return number.to_bytes(_WIDTH, "big")


def _number(connection: socket.socket) -> int:
    got = connection.recv(_WIDTH, socket.MSG_WAITALL)
    assert len(got) == _WIDTH, "the parent of the tests' programs is gone"
    return int.from_bytes(got, "big")


def _of_the_start(env: Mapping[str, str]) -> dict[str, str]:
    return {name: value for name, value in env.items() if name.startswith(_READ_AT_START)}


@cache
def _parent() -> str:
    """The address of the parent; it ends with this process, whose end of a pipe it watches."""
    address = str(Path(tempfile.mkdtemp()) / "parent")
    watched, ours = os.pipe()  # our end closes when we end
    parent = subprocess.Popen(
        [sys.executable, "-m", "tests.processes", address], cwd=ROOT, stdin=watched, stdout=subprocess.PIPE
    )
    os.close(watched)

    def end() -> None:
        os.close(ours)
        parent.wait()

    atexit.register(end)
    assert parent.stdout is not None
    assert parent.stdout.readline() == b"ready\n", "the parent of the tests' programs did not start"
    return address


def _serve(address: str) -> dict[str, Any]:
    """In the parent this does not return; in a program's own process it returns what to run."""
    for name in _LOADED:
        importlib.import_module(name)
    gc.collect()
    gc.freeze()  # the programs share it
    with socket.socket(socket.AF_UNIX) as listening:
        listening.bind(address)
        listening.listen()
        print("ready", flush=True)
        while True:
            ready, _, _ = select.select([listening, 0], [], [])
            if 0 in ready:  # the tests have ended
                Path(address).unlink()
                Path(address).parent.rmdir()
                os._exit(0)
            connection, _ = listening.accept()
            with contextlib.suppress(ChildProcessError):
                while os.waitpid(-1, os.WNOHANG)[0]:  # minders that have done their work
                    pass
            if os.fork():
                connection.close()
                continue
            break
    return _mind(connection)


def _mind(connection: socket.socket) -> dict[str, Any]:
    """Starts one program and waits for it; in the program's process it returns what to run."""
    with connection:
        size, files, _, _ = socket.recv_fds(connection, _WIDTH, 3)
        with connection.makefile("rb") as sent:
            asked: dict[str, Any] = json.loads(sent.read(int.from_bytes(size, "big")))
        program = os.fork()
        if program:
            with contextlib.suppress(BrokenPipeError):  # the tests have ended
                connection.sendall(_bytes(program))
                connection.sendall(_bytes(os.waitpid(program, 0)[1]))
            os._exit(0)
    for place, file in enumerate(files):
        os.dup2(file, place)
        os.close(file)
    return asked


def _become(asked: dict[str, Any]) -> NoReturn:
    """Runs the program here, as the interpreter would have been started for it, and ends as that would.

    Only the loaded modules are not taken apart again: that would copy the memory shared with the parent.
    """
    os.chdir(asked["cwd"])
    os.environ.clear()
    os.environ.update(asked["env"])
    how, what, *arguments = asked["arguments"]
    sys.path[0] = asked["cwd"] if how == "-m" else ""
    sys.argv = [what if how == "-m" else "-c", *arguments]
    code = 0
    try:
        if how == "-m":
            runpy.run_module(what, run_name="__main__", alter_sys=True)
        else:
            exec(compile(what, "<string>", "exec"), {"__name__": "__main__", "__builtins__": __builtins__})
    except SystemExit as end:
        if isinstance(end.code, str):
            print(end.code, file=sys.stderr)
        code = end.code if isinstance(end.code, int) else int(end.code is not None)
    except BaseException:
        traceback.print_exc()
        code = 1
    for thread in threading.enumerate():
        if thread is not threading.current_thread() and not thread.daemon:
            thread.join()
    atexit._run_exitfuncs()
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(code)


if __name__ == "__main__":
    _become(_serve(sys.argv[1]))
