"""QR and Code 128 symbols as matrices of modules. They know nothing of paper, dots or printers.

The QR codewords, the function patterns and the places of the data bits come from the ``qrcode``
library; here they are put together with array operations, and the mask is chosen by the penalty
rules of ISO/IEC 18004 (any of the eight masks is legal, every reader reads them all).
Code 128 (ISO/IEC 15417) comes from ``python-barcode``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import barcode
import numpy as np
import numpy.typing as npt
from qrcode import base, constants, util
from qrcode.main import QRCode

from tagger.errors import Problem, SymbolError

Modules = npt.NDArray[np.bool_]

LEVELS = "LMQH"  # from the least to the most error correction
RECOVERS = {"L": 0.07, "M": 0.15, "Q": 0.25, "H": 0.30}  # share of codewords, ISO/IEC 18004
QR_QUIET = 4  # modules of quiet zone on each side, ISO/IEC 18004
CODE128_QUIET = 10  # modules at each end, ISO/IEC 15417

_LEVEL = {
    "L": constants.ERROR_CORRECT_L,
    "M": constants.ERROR_CORRECT_M,
    "Q": constants.ERROR_CORRECT_Q,
    "H": constants.ERROR_CORRECT_H,
}
_SWITCH_AT = 14  # digits in a row from which a change to numeric mode pays at every version


@dataclass(frozen=True, eq=False)
class Symbol:
    """A finished symbol: ``modules`` is True where it is dark, without the quiet zone.

    A Code 128 symbol has one row; its bars are as tall as the paper allows.
    """

    kind: str  # "qr" or "code128"
    text: str
    modules: Modules
    quiet: int
    version: int = 0
    level: str = ""
    mask: int = 0

    @property
    def size(self) -> int:
        """Modules across, without the quiet zone."""
        return int(self.modules.shape[1])

    @property
    def full_size(self) -> int:
        """Modules across, with the quiet zone on both sides."""
        return self.size + 2 * self.quiet


def qr(text: str, level: str = "H", *, version: int | None = None, mask: int | None = None) -> Symbol:
    """A QR Code symbol of ``text`` at error-correction ``level`` (L, M, Q or H).

    ``version`` is the smallest that holds the text unless given; ``mask`` is the one with the
    least penalty unless given. Runs of digits go in numeric mode, upper case in alphanumeric
    mode. Raises SymbolError where the text does not fit.

    >>> qr("HTTPS://EXAMPLE.COM/T/7K3MQ9XW2R4/" + "123" * 30, "M").version
    5
    """
    least = version_for(text, level)
    if version is not None and version < least:
        raise SymbolError(
            Problem("version", version, f"is too small for this text at level {level}", f"Use {least}.")
        )
    version = version or least
    masked = _masked_blanks(version, level)
    codewords = np.array(util.create_data(version, _LEVEL[level], _segments(text)), dtype=np.uint8)
    bits = np.append(np.unpackbits(codewords), np.zeros(8, dtype=np.uint8)).astype(np.bool_)
    data = bits[_places(version)]
    if mask is None:
        candidates = masked ^ data
        mask = int(np.argmin(_penalties(candidates)))
        modules = candidates[mask]
    else:
        modules = masked[mask] ^ data
    return Symbol("qr", text, modules, QR_QUIET, version, level, mask)


def code128(text: str) -> Symbol:
    """A Code 128 symbol of ``text`` (printable ASCII), as one row of modules.

    >>> code128("7K3MQ9XW2R4").size
    156
    """
    if not text or not all(32 <= ord(letter) < 127 for letter in text):
        raise SymbolError(Problem("text", text, "cannot be put in Code 128", "Use printable ASCII letters."))
    pattern = barcode.Code128(text).build()[0]
    return Symbol("code128", text, np.array([[letter == "1" for letter in pattern]]), CODE128_QUIET)


def version_for(text: str, level: str) -> int:
    """The smallest QR version that holds ``text`` at ``level``.

    >>> version_for("8" * 41, "L"), version_for("8" * 42, "L")
    (1, 2)
    """
    if level not in _LEVEL:
        raise SymbolError(Problem("level", level, "is not a level of QR", "Use L, M, Q or H."))
    segments = _segments(text)
    for version in range(1, 41):
        if _bits(segments, version) <= capacity_bits(version, level):
            return version
    raise SymbolError(Problem("text", len(text), "is longer than a QR symbol holds", "Shorten the link."))


@lru_cache(maxsize=160)
def capacity_bits(version: int, level: str) -> int:
    """Data bits of a symbol, mode and length indicators among them."""
    return 8 * sum(int(block.data_count) for block in base.rs_blocks(version, _LEVEL[level]))


def codeword_of_module(version: int) -> npt.NDArray[np.int32]:
    """For every module the index of the codeword it belongs to, -1 for function patterns."""
    places = _places(version)
    count = sum(block.total_count for block in base.rs_blocks(version, _LEVEL["L"]))
    codewords = np.where(places >= 0, places // 8, -1)
    return np.where(codewords < count, codewords, -1)


@lru_cache(maxsize=160)
def codeword_blocks(version: int, level: str) -> tuple[npt.NDArray[np.int64], npt.NDArray[np.int64]]:
    """(block of every codeword in the order they are placed, wrong codewords each block restores)."""
    blocks = base.rs_blocks(version, _LEVEL[level])
    data = [block.data_count for block in blocks]
    check = [block.total_count - block.data_count for block in blocks]
    order = [k for counts in (data, check) for i in range(max(counts)) for k, n in enumerate(counts) if i < n]
    return np.array(order), np.array([count // 2 for count in check])


def _segments(text: str) -> list[util.QRData]:
    return list(util.optimal_data_chunks(text.encode(), minimum=_SWITCH_AT))


def _bits(segments: list[util.QRData], version: int) -> int:
    total = 0
    for segment in segments:
        count = len(segment)
        total += 4 + util.length_in_bits(segment.mode, version)
        if segment.mode == util.MODE_NUMBER:
            total += 10 * (count // 3) + (0, 4, 7)[count % 3]
        elif segment.mode == util.MODE_ALPHA_NUM:
            total += 11 * (count // 2) + 6 * (count % 2)
        else:
            total += 8 * count
    return total


def _drawn(version: int, level: str, mask: int, codewords: list[int]) -> Modules:
    """The library's own drawing of the given codewords."""
    code = QRCode(version=version, error_correction=_LEVEL[level])
    code.data_cache = codewords
    code.makeImpl(False, mask)
    return np.array(code.modules, dtype=np.bool_)


@lru_cache(maxsize=64)
def _masked_blanks(version: int, level: str) -> Modules:
    """The eight symbols of all-zero codewords, one a mask: shape (8, size, size)."""
    return np.stack([_drawn(version, level, mask, []) for mask in range(8)])


@lru_cache(maxsize=40)
def _places(version: int) -> npt.NDArray[np.int32]:
    """For every module the index of the data bit it shows; -1 (the bit after the last) if none.

    Asked of the library itself: a symbol whose data bit i is bit k of the number i shows
    bit k of every module's index, so a dozen drawings tell all the indices.
    """
    count = 8 * sum(block.total_count for block in base.rs_blocks(version, _LEVEL["L"]))
    numbers = np.arange(1, count + 1)
    blank = _drawn(version, "L", 0, [])
    found = np.zeros(blank.shape, dtype=np.int32)
    for k in range(int(count).bit_length()):
        bits = ((numbers >> k) & 1).astype(np.uint8)
        found |= (_drawn(version, "L", 0, np.packbits(bits).tolist()) ^ blank).astype(np.int32) << k
    return found - 1


def _penalties(symbols: Modules) -> npt.NDArray[np.int64]:
    """The penalty of each symbol, ISO/IEC 18004 section 7.8.3; ``symbols``: (count, size, size)."""
    along_both = np.stack([symbols, symbols.transpose(0, 2, 1)])
    same = along_both[..., 1:] == along_both[..., :-1]
    five = same[..., :-3] & same[..., 1:-2] & same[..., 2:-1] & same[..., 3:]
    runs = five.sum(axis=(0, 2, 3)) + 2 * (
        five[..., 0].sum(axis=(0, 2)) + (five[..., 1:] & ~five[..., :-1]).sum(axis=(0, 2, 3))
    )
    across = same[0]
    squares = (across[:, 1:] & across[:, :-1] & same[1].transpose(0, 2, 1)[..., :-1]).sum(axis=(1, 2))
    finders = _finder_likes(along_both)
    dark = symbols.mean(axis=(1, 2))
    balance = (np.abs(dark - 0.5) * 20).astype(np.int64)
    total: npt.NDArray[np.int64] = runs + 3 * squares + 40 * finders + 10 * balance
    return total


def _finder_likes(lines: Modules) -> npt.NDArray[np.int64]:
    """How often 1:1:3:1:1 beside four light modules occurs in each symbol."""
    width = lines.shape[-1] - 10
    seen = np.zeros((*lines.shape[:-1], width), dtype=np.uint16)
    for step in range(11):
        seen = (seen << 1) | lines[..., step : step + width]
    count: npt.NDArray[np.int64] = ((seen == 0b10111010000) | (seen == 0b00001011101)).sum(axis=(0, 2, 3))
    return count
