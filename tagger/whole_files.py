"""Files that are whole or not there: written beside their place first, whoever else writes there at the same time."""

from __future__ import annotations

import secrets
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from glob import escape
from pathlib import Path

_LEFT_BEHIND_S = 86_400.0  # after a day no program writes any more what a killed one left


def beside(out: Path) -> Path:
    """Where to write what will take the place of ``out``: a name of its own, so that no two write into one file."""
    for old in out.parent.glob(f"{escape(out.name)}.*.part"):
        with suppress(OSError):  # somebody else's turn to clear it away
            if time.time() - old.stat().st_mtime > _LEFT_BEHIND_S:
                old.unlink()
    return out.with_name(f"{out.name}.{secrets.token_hex(4)}.part")


@contextmanager
def whole(out: Path) -> Iterator[Path]:
    """A file to write, which takes the name ``out`` at the end; where anything is raised, nothing is left behind."""
    part = beside(out)
    try:
        yield part
        part.replace(out)
    finally:
        part.unlink(missing_ok=True)


def write(out: Path, body: bytes) -> None:
    """Writes a whole file, or leaves what was there as it was. Raises OSError."""
    with whole(out) as part:
        part.write_bytes(body)
