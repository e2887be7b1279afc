"""A seal over a file: a digest in its last line, and the same kind of digest in a file beside it.

One changed bit anywhere in the file, in its seal or in the file beside it is found before a byte of
it is used. The file beside it has the form that ``sha256sum --check`` reads.
"""

from __future__ import annotations

import hashlib
import os
from pathlib import Path
from typing import Final

_MARK: Final = b"\n-- sealed sha256 "
_SEAL: Final = len(_MARK) + 64 + 1  # the digest in hexadecimal, and an end of line
_STEP: Final = 1 << 20


class SealBroken(Exception):
    """The file is not as it was when it was sealed."""


def beside(path: Path) -> Path:
    """The file that holds the digest of ``path``."""
    return path.with_name(path.name + ".sha256")


def seal(path: Path, name: str) -> str:
    """Append the seal to ``path``, and return the line for the file beside it, which calls it ``name``."""
    whole = hashlib.sha256()
    with path.open("r+b") as file:
        while step := file.read(_STEP):
            whole.update(step)
        line = _MARK + whole.hexdigest().encode() + b"\n"
        file.write(line)
        whole.update(line)
        file.flush()
        os.fsync(file.fileno())
    return f"{whole.hexdigest()}  {name}\n"


def is_sealed(path: Path) -> bool:
    """Whether ``path`` ends in a seal, sound or broken."""
    with path.open("rb") as file:
        size = file.seek(0, os.SEEK_END)
        file.seek(max(0, size - _SEAL))
        return file.read(len(_MARK)) == _MARK


def unsealed(path: Path, target: Path) -> None:
    """Write what was sealed in ``path`` to ``target``; raise SealBroken when a bit of it changed.

    The file beside it is held against the whole, when it is there.
    """
    content, whole = hashlib.sha256(), hashlib.sha256()
    with path.open("rb") as file, target.open("wb") as out:
        left = path.stat().st_size - _SEAL
        if left < 0:
            raise SealBroken
        while left and (step := file.read(min(_STEP, left))):
            content.update(step)
            whole.update(step)
            out.write(step)
            left -= len(step)
        line = file.read()
    whole.update(line)
    if line != _MARK + content.hexdigest().encode() + b"\n":
        raise SealBroken
    if beside(path).exists() and beside(path).read_bytes()[:64] != whole.hexdigest().encode():
        raise SealBroken
