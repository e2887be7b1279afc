"""Which messages the program asks for, and with which values: read from its source, not from a run."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from tagger.i18n import SOURCE
from tagger.i18n.catalogue import rooms

ROOT = Path(__file__).parents[2]
ROOMS = tuple(room for room in rooms(SOURCE) if room != "language")
ID = re.compile(rf"(?<![\w/-])(?:{'|'.join(ROOMS)})-[A-Za-z0-9_-]*[A-Za-z0-9_]")
QUOTED = re.compile(rf"""(['"`])((?:{"|".join(ROOMS)})-[A-Za-z0-9_-]*)(\1|\$\{{|\{{\{{)""")
"""An id in quotes; one that ends in a hyphen, or where a value begins, is the start of several ids."""


@dataclass(frozen=True)
class Use:
    """``id`` asked for at ``where``; ``values`` is None where the source does not spell them out."""

    id: str
    where: str
    values: frozenset[str] | None = None
    start: bool = False  # an id that goes on with a value: every id that begins so


@cache
def uses() -> tuple[Use, ...]:
    """Every message that Python, templates and scripts ask for."""
    return tuple(_uses())


def _uses() -> Iterator[Use]:
    for folder in ("tagger", "api", "examples", "label_templates"):
        for path in sorted((ROOT / folder).rglob("*")):
            where = str(path.relative_to(ROOT))
            if path.suffix == ".py":
                yield from _in_python(path, where)
            elif path.suffix in (".html", ".js") and "vendor" not in path.parts:
                yield from _in_text(path.read_text(encoding="utf-8"), where)
            elif path.suffix == ".mustache":
                text = path.read_text(encoding="utf-8")
                said = re.findall(r"\{\{#t\}\}(.*?)\{\{/t\}\}", text)
                yield from (Use(found, where) for found in said if ID.fullmatch(found))
            elif path.suffix in (".csv", ".json", ".toml"):
                text = path.read_text(encoding="utf-8")
                yield from (Use(found, where) for found in ID.findall(text))


def _in_text(text: str, where: str) -> Iterator[Use]:
    for match in QUOTED.finditer(text):
        yield Use(match[2], where, start=match[3] != match[1] or match[2].endswith("-"))


def _in_python(path: Path, where: str) -> Iterator[Use]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    nodes = [node for node in ast.walk(tree) if isinstance(node, ast.Call | ast.JoinedStr | ast.Constant)]
    called: set[int] = set()
    for node in nodes:
        if isinstance(node, ast.Call):
            for place, argument in enumerate(node.args):
                if _is_id(argument):
                    called.add(id(argument))
                    spelled = all(keyword.arg for keyword in node.keywords) and place == len(node.args) - 1
                    values = frozenset(str(keyword.arg) for keyword in node.keywords) if spelled else None
                    named = getattr(node.func, "id", getattr(node.func, "attr", ""))
                    yield Use(argument.value, f"{where}:{node.lineno}", values if named in _MAKES else None)  # type: ignore[attr-defined]
    for node in nodes:
        if isinstance(node, ast.JoinedStr) and node.values and isinstance(node.values[0], ast.Constant):
            first = str(node.values[0].value)
            if re.match(rf"(?:{'|'.join(ROOMS)})-", first):
                yield Use(first, f"{where}:{node.lineno}", start=True)
        elif _is_id(node) and id(node) not in called:
            yield Use(node.value, f"{where}:{node.lineno}")  # type: ignore[attr-defined]


_MAKES = {"Message", "t", "say", "html"}
"""Calls whose keywords are the values of the message."""


def _is_id(node: ast.AST) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, str) and bool(ID.fullmatch(node.value))
