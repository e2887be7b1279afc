"""A reader of the digits that knows tagger/code/format.json and nothing else of the program."""

from __future__ import annotations

import json
from datetime import date, timedelta
from fractions import Fraction
from pathlib import Path
from typing import Any

Read = dict[str, Any]


class Stranger:
    """``decode`` answers the content as plain JSON values, without what is absent."""

    def __init__(self, file: Path) -> None:
        self.format: dict[str, Any] = json.loads(file.read_text(encoding="utf-8"))

    def decode(self, digits: str) -> Read:
        """With a signature behind it or without: only one of the two fits."""
        bits, seal = (
            f"{int(digits):b}",
            self.format["seal"]["key_id_bits"] + self.format["seal"]["signature_bits"],
        )
        try:
            return self._payload(bits)
        except (ValueError, KeyError, IndexError):
            return self._payload(bits[:-seal])

    def _payload(self, bits: str) -> Read:
        check = self.format["check"]["bits"]
        body, sent = bits[:-check], int(bits[-check:], 2)
        if self._crc(body) != sent:
            raise ValueError("damaged")
        bits, at = body[1:], self.format["version_bits"]
        version = str(int(bits[:at], 2))
        read, number = {}, dict[str, int]()
        for field in self.format["layouts"][version]:
            there, at = self._there(field, read, bits, at)
            if there:
                found, at = self._value(field, read, number, bits, at)
                if found is not None:
                    read[field["name"]] = found
        if at != len(bits):
            raise ValueError("bits left over")
        return self._content(version, read)

    def _crc(self, bits: str) -> int:
        padded = bits.zfill(-(-len(bits) // 8) * 8)
        crc = self.format["check"]["start"]
        for bit in padded:
            over = (crc >> 15) ^ int(bit)
            crc = (crc << 1 & 0xFFFF) ^ (self.format["check"]["polynomial"] if over else 0)
        return int(crc)

    def _holds(self, test: Read, read: Read) -> bool:
        value = read.get(test.get("field", ""))
        if "sized_by" in test:
            value = self.format["sized_by"][read[test["sized_by"]]]
        return value in test["in"] if "in" in test else value not in test["not_in"]

    def _there(self, field: Read, read: Read, bits: str, at: int) -> tuple[bool, int]:
        if "only_with" in field and field["only_with"] not in read:
            return False, at
        if "only_if_zero" in field and read[field["only_if_zero"]] != self.format["points"]["hose"]["0"]:
            return False, at
        if not all(self._holds(test, read) for test in field.get("when", ())):
            return False, at
        if field.get("optional"):
            return bits[at] == "1", at + 1
        return True, at

    def _value(self, field: Read, read: Read, number: dict[str, int], bits: str, at: int) -> tuple[Any, int]:
        kind, width, sizing = field["kind"], field["bits"], ""
        if kind == "size":
            sizing = self.format["sized_by"][read[field["name"].replace("size", "connection")]]
            width = width[sizing] if isinstance(width, dict) else width
        raw, at = int(bits[at : at + width], 2), at + width
        if raw == field.get("absent"):
            return None, at
        if kind == "text":
            letters = [bits[at + 7 * i : at + 7 * i + 7] for i in range(raw)]
            return "".join(chr(int(letter, 2)) for letter in letters), at + 7 * raw
        if kind == "int":
            return self._figure(field, raw, number), at
        if kind == "date":
            return (date.fromisoformat(field["from"]) + timedelta(raw)).isoformat(), at
        if kind == "size":
            return self._size(sizing, raw), at
        points = self.format["points"][field["table"]]
        if kind == "flags":
            return [name for point, name in points.items() if raw >> int(point) & 1], at
        return points[str(raw)], at

    def _size(self, sizing: str, raw: int) -> Any:
        how = self.format["sizes"][sizing]
        if how == "points":
            return self.format["points"][sizing][str(raw)]
        return how[str(raw)] if isinstance(how, dict) else str(raw) if how == "text" else raw

    def _figure(self, field: Read, raw: int, number: dict[str, int]) -> float:
        if "below" in field:
            raw = number[field["below"]] - raw
        if "above" in field:
            raw += number[field["above"]]
        raw += field.get("offset", 0)
        number[field["name"]] = raw
        return round(float(raw * Fraction(str(field.get("step", 1)))), 4)

    def _content(self, version: str, read: Read) -> Read:
        content: Read = {}
        for field in self.format["layouts"][version]:
            if "at" in field and field["name"] in read:
                _put(content, field["at"], read[field["name"]])
        for rule in self.format["content"][version]:
            told = read.get(rule["field"], rule.get("otherwise"))
            if told is None or not all(self._holds(test, read) for test in rule.get("when", ())):
                continue
            if "map" in rule:
                told = rule["map"].get(f"{told:g}", told)
            if "part" in rule:
                sign, place = rule["part"]
                told = [*told.split(sign), ""][place]
            if told != "":
                _put(content, rule["to"], told)
        return content


def _put(content: Read, path: str, told: Any) -> None:
    *above, last = path.split(".")
    for name in above:
        content = content.setdefault(name, {})
    content[last] = told
