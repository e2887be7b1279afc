"""The layout holds: who may import whom, and which modules touch the world outside."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]

# A room, and the rooms of tagger it may import beside itself and the three modules below all.
GROUND = {
    "tagger.spec",
    "tagger.connection",
    "tagger.units",
    "tagger.errors",
    "tagger.messages",
    "tagger.moments",
    "tagger.phrases",
    "tagger.rated",
    "tagger.trimmed",
    "tagger.whole_files",
}
MAY_IMPORT: dict[str, set[str]] = {
    "tagger/intake.py": set(),
    "tagger/moments.py": set(),
    "tagger/record.py": set(),
    "tagger/connection.py": set(),
    "tagger/spec.py": {"tagger.intake"},
    "tagger/units.py": set(),
    "tagger/errors.py": set(),
    "tagger/trade": set(),
    "tagger/code": set(),
    "tagger/messages.py": {"tagger.i18n"},  # English for logs and tracebacks
    "tagger/phrases.py": set(),
    "tagger/rated.py": set(),
    "tagger/trimmed.py": set(),
    "tagger/whole_files.py": set(),
    "tagger/i18n": set(),
    "tagger/words.py": {"tagger.i18n"},
    "tagger/measuring": {"tagger.code"},  # its symbols
    "tagger/drawing": {"tagger.trade"},
    "tagger/printing": {"tagger.record", "tagger.code", "tagger.trade", "tagger.i18n", "tagger.drawing"},
    "tagger/store": {"tagger.record", "tagger.code", "tagger.trade"},
    "tagger/signing.py": {"tagger.code"},
    "tagger/settings.py": {"tagger.signing", "tagger.i18n", "tagger.printing", "tagger.trade"},
    "tagger/papers": {
        "tagger.record",
        "tagger.settings",
        "tagger.signing",
        "tagger.printing",  # its fonts
        "tagger.drawing",
        "tagger.measuring",
        "tagger.store",
        "tagger.code",
        "tagger.trade",
        "tagger.i18n",
    },
    "tagger/gauges": {
        "tagger.settings",
        "tagger.papers",  # its fonts
        "tagger.code",
        "tagger.trade",
        "tagger.i18n",
    },
    "tagger/record_tag.py": {
        "tagger.record",
        "tagger.settings",
        "tagger.printing",
        "tagger.store",
        "tagger.code",
        "tagger.trade",
    },
}
ROOMS_OF_THE_WEB = ("scan", "bench", "rest")
BELOW_THEM = ("web", "workers", "shared")  # what these rooms stand on
NO_WORLD = ("tagger/trade", "tagger/code", "tagger/measuring")
WORLD = {
    "os",
    "socket",
    "subprocess",
    "time",
    "urllib.request",
    "http",
    "requests",
    "httpx",
    "random",
    "tempfile",
}


def _modules(room: str) -> Iterator[Path]:
    path = ROOT / room
    yield from [path] if path.suffix else sorted(path.rglob("*.py"))


def imports_of(path: Path, for_types: bool = True) -> Iterator[str]:
    """Every module, or name of one, that a file imports, wherever in it; those for types alone where asked."""
    nodes: list[ast.AST] = [ast.parse(path.read_text(encoding="utf-8"))]
    while nodes:
        node = nodes.pop()
        if isinstance(node, ast.If) and ast.unparse(node.test) == "TYPE_CHECKING" and not for_types:
            continue
        nodes.extend(ast.iter_child_nodes(node))
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def _within(module: str, names: set[str]) -> bool:
    return any(module == name or module.startswith(f"{name}.") for name in names)


@pytest.mark.parametrize("room", MAY_IMPORT)
def test_arrows_point_down_only(room: str) -> None:
    own = room.removesuffix(".py").replace("/", ".")
    allowed = MAY_IMPORT[room] | GROUND | {own}
    for path in _modules(room):
        strays = {
            module
            for module in imports_of(path)
            if _within(module, {"tagger", "api"}) and module != "tagger" and not _within(module, allowed)
        }
        assert not strays, f"{path.relative_to(ROOT)} imports {strays}"


def _table() -> dict[str, str]:
    """DEVELOPERS.md, "The house": what each room may import."""
    rows = re.findall(
        r"^\| (`tagger/.*?) \|.*\| (.*?) \|$", (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8"), re.M
    )
    return {
        f"tagger/{name.removeprefix('tagger/').rstrip('/')}": allowed
        for names, allowed in rows
        for name in re.findall(r"`([^`]*)`", names)
    }


def test_every_room_is_in_the_table_of_the_house() -> None:
    rooms = {
        path.relative_to(ROOT).as_posix()
        for path in (ROOT / "tagger").iterdir()
        if path.suffix == ".py" or (path / "__init__.py").exists()
    }
    assert rooms - {"tagger/__init__.py", "tagger/__main__.py"} == _table().keys()


@pytest.mark.parametrize(
    "room", [room for room in MAY_IMPORT if room.removesuffix(".py").replace("/", ".") not in GROUND]
)
def test_the_table_of_the_house_names_what_a_room_may_import(room: str) -> None:
    named = {*re.findall(r"\w+", _table()[room])} - {
        "spec",
        "nothing",
        "messages",
        "their",
        "fonts",
        "the",
        "of",
    }
    ground = {name.removeprefix("tagger.") for name in GROUND}
    assert named - ground == {name.removeprefix("tagger.") for name in MAY_IMPORT[room]} - ground


def test_tagger_imports_nothing_from_the_web() -> None:
    for path in _modules("tagger"):
        assert not [
            module for module in imports_of(path) if _within(module, {"api", "fastapi", "starlette"})
        ], path


@pytest.mark.parametrize("room", [*ROOMS_OF_THE_WEB, *BELOW_THEM])
def test_the_rooms_of_the_web_import_none_of_each_other(room: str) -> None:
    others = {f"api.{name}" for name in ROOMS_OF_THE_WEB if name != room} | {"api.app"}
    for path in _modules(f"api/{room}"):
        strays = {module for module in imports_of(path) if _within(module, others)}
        assert not strays, f"{path.relative_to(ROOT)} imports {strays}"


def test_what_the_rooms_share_has_no_routes() -> None:
    for path in _modules("api/shared"):
        assert "APIRouter" not in path.read_text(encoding="utf-8"), path.relative_to(ROOT)


def test_a_printers_protocol_is_named_in_its_own_room_only() -> None:
    """Whoever prints asks `tagger.printing.printer` for a printer."""
    asked_there = "tagger.printing.ipp"
    for path in [*_modules("tagger"), *_modules("api"), *_modules("examples")]:
        if path.is_relative_to(ROOT / "tagger/printing"):
            continue
        assert not [module for module in imports_of(path) if _within(module, {asked_there})], path
    within = ROOT / "tagger/printing"
    for path in _modules("tagger/printing"):
        if not path.is_relative_to(within / "ipp") and path != within / "printer.py":
            assert not [module for module in imports_of(path) if _within(module, {asked_there})], path


@pytest.mark.parametrize("room", NO_WORLD)
def test_pure_rooms_have_no_clock_no_network_no_files_but_their_data(room: str) -> None:
    for path in _modules(room):
        assert not [module for module in imports_of(path) if _within(module, WORLD)], path
        source = path.read_text(encoding="utf-8")
        for call in ("today()", ".now(", "utcnow("):
            assert call not in source, f"{path.relative_to(ROOT)} reads the clock"


def test_top_level_is_as_agreed() -> None:
    agreed = {
        "README.md", "DEVELOPERS.md", "pyproject.toml", "tagger", "label_templates", "api", "tests", "examples",
        "Makefile", "LICENSE", "CHANGELOG.md",
    }  # fmt: skip
    made = {"out", "build", "dist"}
    found = {
        path.name for path in ROOT.iterdir() if not path.name.startswith(".") and path.suffix != ".egg-info"
    }
    assert found - made <= agreed
    assert {path.name for path in ROOT.iterdir() if path.name.startswith(".")} >= {".ci", ".gitignore"}


# What Python's own documentation marks as not there on Windows ("Availability: Unix").
UNIX_MODULES = {
    "crypt",
    "fcntl",
    "grp",
    "posix",
    "pty",
    "pwd",
    "resource",
    "spwd",
    "syslog",
    "termios",
    "tty",
}
UNIX_CALLS = {
    "os": {"fork", "forkpty", "chown", "fchmod", "fchown", "getuid", "geteuid", "getgid", "getpgid", "killpg", "mkfifo",
           "nice", "setsid", "setuid", "sysconf", "uname", "wait", "wait3", "wait4", "WNOHANG"},
    "signal": {"SIGKILL", "SIGHUP", "SIGUSR1", "SIGUSR2", "SIGALRM", "SIGCHLD", "SIGPIPE", "alarm", "setitimer", "pause"},
    "socket": {"AF_UNIX", "socketpair", "SO_REUSEPORT"},
    "time": {"tzset", "clock_gettime"},
    "select": {"poll", "epoll", "kqueue"},
}  # fmt: skip


@pytest.mark.parametrize("room", ["tagger", "api", "label_templates", "examples"])
def test_nothing_in_the_program_needs_a_posix_system(room: str) -> None:
    for path in _modules(room):
        assert not UNIX_MODULES & set(imports_of(path)), path
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
                assert node.attr not in UNIX_CALLS.get(node.value.id, set()), (
                    f"{path}: {node.value.id}.{node.attr}"
                )
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                assert "%-d" not in node.value and "%-m" not in node.value, f"{path}: a day without its zero"
