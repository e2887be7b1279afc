"""Ed25519 against RFC 8032: its test vectors, in Python and in both ways of a phone; and the points that no key may be."""

from __future__ import annotations

from pathlib import Path

from tagger.code import signature
from tests.code.phone import Phone
from tests.outside.published import rows

VECTORS = rows("ed25519_rfc8032.csv")
FIELD = 2**255 - 19
D = -121665 * pow(121666, -1, FIELD) % FIELD  # RFC 8032, 5.1

Point = tuple[int, int]


def test_keys_and_signatures_are_those_of_rfc_8032() -> None:
    for row in VECTORS:
        secret, public, message, said = (
            bytes.fromhex(row[name]) for name in ("secret", "public", "message", "signature")
        )
        assert signature.public_of(secret) == public, row["test"]
        assert signature.signed(message, secret) == said, row["test"]
        assert signature.verified(message, said, public), row["test"]
        assert not signature.verified(message + b"x", said, public), row["test"]
        assert not signature.verified(message, said[:-1] + bytes([said[-1] ^ 1]), public), row["test"]


def test_a_phone_verifies_them_by_its_browser_and_by_the_library(tmp_path: Path) -> None:
    """Both ways refuse what RFC 8032 refuses: another message, another key, S that is not below the order."""
    order = 2**252 + 27742317777372353535851937790883648493
    cases: list[list[str]] = []
    for row in VECTORS:
        text, said, key = row["message"], row["signature"], row["public"]
        greater = int.from_bytes(bytes.fromhex(said[64:]), "little") + order
        cases += [
            [text, said, key],
            [text + "00", said, key],
            [text, said, VECTORS[VECTORS.index(row) - 1]["public"]],
            [text, said[:64] + greater.to_bytes(32, "little").hex(), key],
            [text, said[:-2], key],
        ]
    script = """
import { byLibrary, fromHex, verified } from "./scripts/seal.js";
const cases = asked, answers = [];
for (const how of [verified, byLibrary]) for (const each of cases) answers.push(await how(...each.map(fromHex)));
console.log(JSON.stringify(answers));
"""
    answers = Phone(tmp_path).run(script, cases)
    assert answers == [True, False, False, False, False] * (2 * len(VECTORS))


def test_the_points_that_no_key_may_be_are_all_of_small_order() -> None:
    """Worked out by the formulas of RFC 8032 alone: the eight points whose order divides 8."""
    found = {(0, 1)}
    point = _of_order_8()
    at = point
    while at != (0, 1):
        found.add(at)
        at = _add(at, point)
    assert len(found) == 8
    for x, y in found:
        for spelled in (y, y + FIELD):  # one number, and where it has room the same one again
            if spelled < 2**255:
                for sign in {x & 1, 1 - (x & 1)}:
                    key = (spelled | sign << 255).to_bytes(32, "little")
                    assert not signature.is_sound(key)
                    assert not signature.verified(b"anything", key + bytes(32), key)
    assert all(signature.is_sound(bytes.fromhex(row["public"])) for row in VECTORS)
    assert not signature.is_sound(bytes(31))


def _add(one: Point, other: Point) -> Point:
    (x1, y1), (x2, y2) = one, other
    k = D * x1 * x2 * y1 * y2 % FIELD
    x3 = (x1 * y2 + x2 * y1) * pow(1 + k, -1, FIELD)
    y3 = (y1 * y2 + x1 * x2) * pow(1 - k, -1, FIELD)
    return x3 % FIELD, y3 % FIELD


def _of_order_8() -> Point:
    """A point times the prime order leaves its part of small order; the first that is of order 8."""
    order = 2**252 + 27742317777372353535851937790883648493
    for y in range(2, 100):
        root = _root((y * y - 1) * pow(D * y * y + 1, -1, FIELD) % FIELD)
        if root is not None:
            small = _times(order, (root, y))
            if _times(4, small) != (0, 1):
                return small
    raise AssertionError("no point of order 8")


def _times(count: int, point: Point) -> Point:
    total: Point = (0, 1)
    while count:
        if count & 1:
            total = _add(total, point)
        point, count = _add(point, point), count >> 1
    return total


def _root(square: int) -> int | None:
    root = pow(square, (FIELD + 3) // 8, FIELD)
    if (root * root - square) % FIELD:
        root = root * pow(2, (FIELD - 1) // 4, FIELD) % FIELD
    return root if (root * root - square) % FIELD == 0 else None
