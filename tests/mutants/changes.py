"""Small changes of meaning to the program's text: a sample that stays the same while the code around it moves.

The changes themselves are those of Cosmic Ray's operators (``cosmic_ray.operators``, driven through its
``mutate_code``): another comparison, another sum, a number one more or less, ``and`` for ``or``, a ``not``, a loop
that never runs, a decorator less.
"""

from __future__ import annotations

import ast
import hashlib
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import islice
from pathlib import Path

from cosmic_ray.ast import ast_nodes, get_ast
from cosmic_ray.mutating import mutate_code
from cosmic_ray.plugins import get_operator, operator_names

ROOT = Path(__file__).parents[2]
ROOMS = ("tagger/trade", "tagger/code", "tagger/printing/preflight.py")
STATE = "2026"
"""Fixed, so that every run tries the same changes."""
Position = tuple[int, int]  # line from 1, column from 0


@dataclass(frozen=True)
class Change:
    """One operator at one place of a file."""

    file: str  # from the root
    line: int
    function: str  # "" outside of functions
    operator: str
    occurrence: int  # among all that this operator finds in the file
    rank: str  # a digest: the sample is those that come first

    def before(self) -> str:
        return _line(_source(self.file), self.line)

    def after(self) -> str:
        return _line(self.source(), self.line)

    def source(self) -> str:
        """The whole file with this one change."""
        return _changed(self)


def sample(most: int) -> list[Change]:
    """``most`` places of the rooms with one change at each, by a fixed random state.

    A place's rank depends on its room, function and line of text alone: a new line elsewhere changes nothing.
    """
    found = sorted((change for file in _files() for change in _changes(file)), key=lambda change: change.rank)
    return list(islice(filter(_compiles, found), most))


@cache
def _changed(change: Change) -> str:
    changed = mutate_code(_source(change.file), get_operator(change.operator)(), change.occurrence)
    assert changed is not None
    return str(changed)


def _compiles(change: Change) -> bool:
    """The operators take the star before parameters for a product, and the like."""
    try:
        compile(change.source(), change.file, "exec", dont_inherit=True)
    except SyntaxError:
        return False
    return True


def _files() -> Iterator[str]:
    for room in ROOMS:
        where = ROOT / room
        for file in [where] if where.is_file() else sorted(where.rglob("*.py")):
            yield str(file.relative_to(ROOT))


def _changes(file: str) -> Iterator[Change]:
    """One change at each place of a file where there is a choice of them."""
    source = _source(file)
    tree = ast.parse(source)
    apart, functions = [*_annotations(tree), *_remembering(tree)], _functions(tree)
    seen: Counter[str] = Counter()
    for (start, _), ways in sorted(_places(source).items()):
        if any(first <= start < last for first, last in apart):
            continue
        function = functions.get(start[0], "")
        name = f"{file}|{function}|{_line(source, start[0])}"
        seen[name] += 1
        rank = _digest(f"{STATE}|{name}|{seen[name]}")
        operator, occurrence = min(ways, key=lambda way: _digest(f"{rank}|{way[0]}|{ways.index(way)}"))
        yield Change(file, start[0], function, operator, occurrence, rank)


def _places(source: str) -> dict[tuple[Position, Position], list[tuple[str, int]]]:
    """Every place that an operator can change, with all the ways to."""
    found: dict[tuple[Position, Position], list[tuple[str, int]]] = defaultdict(list)
    counted: Counter[str] = Counter()
    operators = {name: kind() for name in operator_names() if not (kind := get_operator(name)).arguments()}
    for node in ast_nodes(get_ast(source)):
        for name, operator in operators.items():
            for place in operator.mutation_positions(node):
                found[place].append((name, counted[name]))
                counted[name] += 1
    return found


def _annotations(tree: ast.AST) -> Iterator[tuple[Position, Position]]:
    """Where types are written: mypy holds those, and no test could."""
    for node in ast.walk(tree):
        for kind in (getattr(node, "annotation", None), getattr(node, "returns", None)):
            if isinstance(kind, ast.expr):
                yield (kind.lineno, kind.col_offset), (kind.end_lineno or 0, kind.end_col_offset or 0)


def _remembering(tree: ast.AST) -> Iterator[tuple[Position, Position]]:
    """Decorators that say how a value is kept, not what it is: without them it is slower, or mypy says so."""
    for node in ast.walk(tree):
        for kind in getattr(node, "decorator_list", ()):
            if ast.unparse(kind).partition("(")[0] in {"dataclass", "cache", "lru_cache", "cached_property"}:
                yield (kind.lineno, kind.col_offset - 1), (kind.end_lineno or 0, kind.end_col_offset or 0)


def _functions(tree: ast.AST) -> dict[int, str]:
    """The function that each line is in, the innermost."""
    found: dict[int, str] = {}

    def look(node: ast.AST, within: str) -> None:
        for child in ast.iter_child_nodes(node):
            name = within
            if isinstance(child, ast.FunctionDef | ast.ClassDef):
                name = f"{within}.{child.name}".lstrip(".")
            if isinstance(child, ast.FunctionDef):
                found.update(dict.fromkeys(range(child.lineno, (child.end_lineno or 0) + 1), name))
            look(child, name)

    look(tree, "")
    return found


def _source(file: str) -> str:
    return (ROOT / file).read_text(encoding="utf-8")


def _line(source: str, number: int) -> str:
    return source.splitlines()[number - 1].strip()


def _digest(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()
