"""QR and Code 128 symbols as matrices of modules. They know nothing of paper, dots or printers.

QR comes from the ``qrcode`` library: its segments, block structure, check polynomials, function
patterns and places of the data bits are asked for once and kept as arrays, and a symbol is put
together from them with array operations; a test compares module by module with the library's own
drawing. The mask is chosen by the penalty rules of ISO/IEC 18004 (any of the eight masks is legal,
every reader reads them all). Code 128 (ISO/IEC 15417) comes from ``python-barcode``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import barcode
import numpy as np
import numpy.typing as npt
from qrcode import base, constants, util
from qrcode.main import QRCode

from tagger.errors import Problem, SymbolError
from tagger.messages import Message

Modules = npt.NDArray[np.bool_]

QR_QUIET = 4  # modules of quiet zone on each side, ISO/IEC 18004
CODE128_QUIET = 10  # modules at each end, ISO/IEC 15417

_LEVEL = {
    "L": constants.ERROR_CORRECT_L,
    "M": constants.ERROR_CORRECT_M,
    "Q": constants.ERROR_CORRECT_Q,
    "H": constants.ERROR_CORRECT_H,
}
_ALIKE = (range(1, 10), range(10, 27), range(27, 41))  # versions whose length indicators are as long
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
        too_small = Message("code-symbol-version", level=level, version=least)
        raise SymbolError(Problem("version", version, too_small))
    version = version or least
    masked = _masked_blanks(version, level)
    bits = np.unpackbits(np.append(_codewords(text, version, level), np.uint8(0))).astype(np.bool_)
    data = bits[_places(version)]
    if mask is None:
        candidates = masked ^ data
        mask = int(np.argmin(_penalties(candidates)))
        modules = candidates[mask]
    else:
        modules = masked[mask] ^ data
    return Symbol("qr", text, modules, QR_QUIET, version, level, mask)


class _Code128(barcode.Code128):  # type: ignore[misc]
    """The library's, but for texts that begin with 99: it takes those digits for a change of code set."""

    def _try_to_optimize(self, encoded: list[int]) -> list[int]:
        if self.code[:2].isdigit():  # begun in code set C, which they stay in
            return encoded
        optimised: list[int] = super()._try_to_optimize(encoded)
        return optimised


def whole(symbol: Symbol) -> bool:
    """Whether a QR symbol is without one wrong module: its error correction is all left for the hose's life.

    Function patterns, format and version are the library's own, and every block is a word of its code
    (all syndromes are zero, ISO/IEC 18004 annex B).
    """
    blank = _masked_blanks(symbol.version, symbol.level)[symbol.mask]
    if symbol.modules.shape != blank.shape:
        return False
    data = symbol.modules ^ blank
    places = _places(symbol.version)
    if data[places < 0].any():
        return False
    order, shares = _syndrome_shares(symbol.version, symbol.level)
    bits = data.reshape(-1)[_module_of_bit(symbol.version)]
    sums = np.bitwise_xor.reduceat(_times(np.packbits(bits)[order], shares[0]), shares[1], axis=0)
    return not sums.any()


def code128(text: str) -> Symbol:
    """A Code 128 symbol of ``text`` (printable ASCII), as one row of modules.

    >>> code128("7K3MQ9XW2R4").size
    156
    """
    if not text or not all(32 <= ord(letter) < 127 for letter in text):
        raise SymbolError(Problem("text", text, Message("code-symbol-letters")))
    [pattern] = _Code128(text).build()
    modules = np.frombuffer(pattern.encode(), dtype=np.uint8)[None] == ord("1")
    return Symbol("code128", text, modules, CODE128_QUIET)


def version_for(text: str, level: str) -> int:
    """The smallest QR version that holds ``text`` at ``level``.

    >>> version_for("8" * 41, "L"), version_for("8" * 42, "L")
    (1, 2)
    """
    if level not in _LEVEL:
        raise SymbolError(Problem("level", level, Message("code-symbol-level")))
    segments = _segments(text)
    for versions in _ALIKE:
        needed = _bits(segments, versions[0])
        for version in versions:
            if needed <= capacity_bits(version, level):
                return version
    raise SymbolError(Problem("text", len(text), Message("code-symbol-too-long")))


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


@lru_cache(maxsize=40)
def _module_of_bit(version: int) -> npt.NDArray[np.int64]:
    """The other way round of ``_places``: for each data bit the index of the module that shows it."""
    places = _places(version).reshape(-1)
    modules = np.flatnonzero(places >= 0)
    found = np.empty(modules.size, dtype=np.int64)
    found[places[modules]] = modules
    count = sum(block.total_count for block in base.rs_blocks(version, _LEVEL["L"]))
    return found[: 8 * count]


@lru_cache(maxsize=160)
def _syndrome_shares(
    version: int, level: str
) -> tuple[npt.NDArray[np.int64], tuple[npt.NDArray[np.uint8], npt.NDArray[np.int64]]]:
    """(codewords block by block, (what each is multiplied by in each syndrome, where each block starts))."""
    of_codeword, _ = codeword_blocks(version, level)
    blocks = base.rs_blocks(version, _LEVEL[level])
    order = np.argsort(of_codeword, kind="stable")
    checks = min(block.total_count - block.data_count for block in blocks)
    powers = [
        [base.gexp(step * (block.total_count - 1 - place) % 255) for step in range(checks)]
        for block in blocks
        for place in range(block.total_count)
    ]
    starts = np.cumsum([0, *(block.total_count for block in blocks[:-1])])
    return order, (np.array(powers, dtype=np.uint8), starts)


@lru_cache(maxsize=8)
def _segments(text: str) -> tuple[util.QRData, ...]:
    return tuple(util.optimal_data_chunks(text.encode(), minimum=_SWITCH_AT))


def _bits(segments: Sequence[util.QRData], version: int) -> int:
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


def _codewords(text: str, version: int, level: str) -> npt.NDArray[np.uint8]:
    """Data and check codewords in the order they are placed."""
    bits = "".join(_segment_bits(segment, version) for segment in _segments(text))
    room = capacity_bits(version, level)
    bits += "0" * min(4, room - len(bits))  # the terminator
    bits += "0" * (-len(bits) % 8)
    data = int(bits, 2).to_bytes(len(bits) // 8, "big")
    data += (b"\xec\x11" * (room // 8))[: room // 8 - len(data)]  # pad codewords
    whole = np.frombuffer(data, dtype=np.uint8)
    starts, order, rows = _data_order(version, level)
    checks = np.bitwise_xor.reduceat(_times(whole, rows), starts, axis=0)
    return np.concatenate([whole[order], checks.T.reshape(-1)])


def _segment_bits(segment: util.QRData, version: int) -> str:
    count, data = len(segment), segment.data
    head = f"{segment.mode:04b}{count:0{util.length_in_bits(segment.mode, version)}b}"
    if segment.mode == util.MODE_NUMBER:
        return head + "".join([_numeric(data[at : at + 3]) for at in range(0, count, 3)])
    if segment.mode == util.MODE_ALPHA_NUM:
        return head + "".join([_alphanumeric(data[at : at + 2]) for at in range(0, count, 2)])
    return head + "".join(f"{byte:08b}" for byte in data)


@lru_cache(maxsize=1_110)  # all there are
def _numeric(digits: bytes) -> str:
    """The bits of up to three digits."""
    return f"{int(digits):0{(0, 4, 7, 10)[len(digits)]}b}"


@lru_cache(maxsize=2_070)  # all there are
def _alphanumeric(letters: bytes) -> str:
    """The bits of one or two letters."""
    values = [util.ALPHA_NUM.index(letter) for letter in letters]
    return f"{values[0]:06b}" if len(values) == 1 else f"{45 * values[0] + values[1]:011b}"


@lru_cache(maxsize=160)
def _data_order(
    version: int, level: str
) -> tuple[npt.NDArray[np.int64], npt.NDArray[np.int64], npt.NDArray[np.uint8]]:
    """(start of each block's data, data codewords in the order they are placed, the check row of each)."""
    lengths = [int(block.data_count) for block in base.rs_blocks(version, _LEVEL[level])]
    starts = [sum(lengths[:k]) for k in range(len(lengths))]
    order = [
        start + step
        for step in range(max(lengths))
        for start, length in zip(starts, lengths, strict=True)
        if step < length
    ]
    rows = np.concatenate([_check_rows(length, version, level) for length in lengths])
    return np.array(starts), np.array(order), rows


@lru_cache(maxsize=320)
def _check_rows(length: int, version: int, level: str) -> npt.NDArray[np.uint8]:
    """Check codewords of the blocks that are 1 at one place and 0 elsewhere: (length, checks).

    Any block's check codewords are the sum of these rows, each multiplied by its data codeword.
    """
    blocks = base.rs_blocks(version, _LEVEL[level])
    block = next(one for one in blocks if one.data_count == length)
    rows = []
    for place in range(length):
        unit = util.BitBuffer()
        unit.buffer = [int(step == place) for step in range(length)]
        rows.append(util.create_bytes(unit, [block])[length:])
    return np.array(rows, dtype=np.uint8)


def _times(codewords: npt.NDArray[np.uint8], rows: npt.NDArray[np.uint8]) -> npt.NDArray[np.uint8]:
    """Each row multiplied by its codeword."""
    return _products().reshape(-1).take((codewords.astype(np.intp) << 8)[:, None] + rows)


@lru_cache(maxsize=1)
def _products() -> npt.NDArray[np.uint8]:
    """The multiplication table of the field of 256 that QR uses, from the library's logarithms."""
    table = np.zeros((256, 256), dtype=np.uint8)
    logs = np.array([base.glog(value) for value in range(1, 256)])
    powers = np.array([base.gexp(power) for power in range(255)], dtype=np.uint8)
    table[1:, 1:] = powers[(logs[:, None] + logs[None, :]) % 255]
    return table


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
    size = symbols.shape[-1]
    lines = [_as_one_number(symbols), _as_one_number(symbols.transpose(0, 2, 1))]
    dark = np.array([modules.bit_count() for modules in lines[0]]) / size**2
    total: npt.NDArray[np.int64] = 10 * (np.abs(dark - 0.5) * 20).astype(np.int64)
    for place, (across, down) in enumerate(zip(*lines, strict=True)):
        total[place] += _squares(across, size) * 3
        total[place] += _along(across, size) + _along(down, size)
    return total


def _as_one_number(symbols: Modules) -> list[int]:
    """Each symbol's modules, row after row, as the bits of one number, the first the least."""
    flat = symbols.reshape(len(symbols), -1)
    return [int.from_bytes(row.tobytes(), "little") for row in np.packbits(flat, axis=1, bitorder="little")]


@lru_cache(maxsize=256)
def _columns(size: int, count: int) -> int:
    """The bits of the first ``count`` columns."""
    row = (1 << count) - 1
    return sum(row << size * step for step in range(size))


def _along(modules: int, size: int) -> int:
    """The penalty of what stands along the rows.

    Runs of five and more modules of one colour: 3 each, and 1 for each module beyond five. 1:1:3:1:1 beside four
    light modules, as in a finder pattern: 40 each.
    """
    beside = modules >> 1
    same = ~(modules ^ beside) & _columns(size, size - 1)
    three = same & same >> 1
    five = three & three >> 2 & _columns(size, size - 4)
    light = ~modules
    light_two = light & ~beside
    light_four = light_two & light_two >> 2
    finder = modules & light >> 1 & (modules & beside) >> 2 & modules >> 4 & light >> 5 & modules >> 6
    before, behind = light_four & finder >> 4, finder & light_four >> 7
    inside = _columns(size, size - 10)
    likes = (behind & inside).bit_count() + (before & inside).bit_count()
    return five.bit_count() + 2 * (five & ~(five << 1)).bit_count() + 40 * likes


def _squares(modules: int, size: int) -> int:
    """How many blocks of two by two modules have one colour."""
    same = ~(modules ^ modules >> 1) & _columns(size, size - 1)
    below = ~(modules ^ modules >> size)
    return (same & same >> size & below).bit_count()
