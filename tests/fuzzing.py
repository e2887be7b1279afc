"""Damaged inputs for every parser, in a process that may have 200 MB more than the program itself takes.

``python -m tests.fuzzing 1000000 1`` sends a million, drawn from the random numbers that 1 begins, and prints as JSON
what came of them: what a parser refuses in words is right; any other exception, more than a second of CPU, or more
memory is a failure.
"""

from __future__ import annotations

import base64
import csv
import io
import json
import random
import resource
import signal
import sys
import tempfile
import time
import traceback
import zipfile
from collections.abc import Callable
from importlib import resources
from pathlib import Path
from typing import Any

import openpyxl

from api.rest.shared import EXAMPLE_SPEC
from api.shared import list_import
from tagger import intake, list_columns, lists
from tagger.code import link, payload
from tagger.errors import TaggerError
from tagger.printing import template
from tagger.spec import AssemblySpec

MOST_MEMORY = 200_000_000  # bytes beside what the program itself takes
MOST_SECONDS = 1.0
NUMBER = "7K3MQ9XW2R1"
GOLDEN = Path(__file__).parent / "golden"
SHARES = {
    "payload": 0.45,
    "link": 0.25,
    "json": 0.15,
    "spec": 0.1,
    "csv": 0.03,
    "template": 0.017,
    "xlsx": 0.003,
}
"""How many of the inputs each parser gets: fewer where one costs more."""
NASTY = (
    *("", "\0", "\ud800", "\u202e", "\u0663", "\u00b2", "\uff11", "\ufeff", "\x1b", "\x85", "\n", "\r\n", '"', "'", "\\"),
    *("[", "]", "{", "}", "//", "http://[", "%00", "%", "%ff", "?", "#", "@", ":", "=1+1", "NaN", "-Infinity", "1e999"),
    *("0", "-1", "9" * 400, "0." + "1" * 300, "1/0", "1 1/0 in", "true", "null", "[" * 3000, '{"a":' * 3000, "a" * 70000),
    *("1e308", "-0.0", "2" + "0" * 30, "'''", '"""', "[[box]]", "= ", "\t", ",", ";", "(" * 500),
)  # fmt: skip


class Inputs:
    """Makes inputs for each parser out of right ones; the same for the same seed."""

    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)
        vectors = [
            v
            for name in ("payload_v1", "payload_v2")
            for v in json.loads((GOLDEN / f"{name}.json").read_text())
        ]
        self.digits = [vector["digits"] for vector in vectors]
        self.specs = [EXAMPLE_SPEC, *(vector["spec"] for vector in vectors)]
        self.links = [link.build("https://tags.example.com", NUMBER, d) for d in self.digits]
        self.links += [
            link.build("https://tags.example.com", NUMBER, d, gs1_prefix="952") for d in self.digits
        ]
        folder = resources.files("label_templates")
        self.templates = [f.read_text(encoding="utf-8") for f in folder.iterdir() if f.name.endswith(".toml")]
        self.rows = [list(lists.columns()), list_import.example_row()]

    def text(self, text: str) -> str:
        """The text with one to four slips: marks changed, left out, doubled, moved, or nasty ones put in."""
        for _ in range(self.random.randint(1, 4)):
            at = self.random.randint(0, len(text))
            to = min(len(text), at + int(self.random.expovariate(0.2)))
            match self.random.randrange(6):
                case 0:
                    text = (
                        text[:at]
                        + chr(
                            self.random.choice((self.random.randrange(128), self.random.randrange(0x11_0000)))
                        )
                        + text[at + 1 :]
                    )
                case 1:
                    text = text[:at] + text[to:]
                case 2:
                    text = text[:to] + text[at:]
                case 3:
                    text = text[:at] + self.random.choice(NASTY) + text[to:]
                case 4:
                    text = text[:at]
                case _:
                    text = (
                        text[at:] + text[:at]
                        if self.random.random() < 0.3
                        else text[:at] + text[at : at + 1] * 3 + text[to:]
                    )
        return text

    def value(self, value: Any) -> Any:
        """The JSON value with a slip somewhere in it."""
        if isinstance(value, dict) and value and self.random.random() < 0.9:
            name = self.random.choice(list(value))
            changed = {
                key: inner for key, inner in value.items() if key != name or self.random.random() < 0.9
            }
            changed[name if self.random.random() < 0.9 else self.text(name)] = self.value(value[name])
            return changed
        if isinstance(value, list) and value and self.random.random() < 0.7:
            return [*value[:-1], self.value(value[-1])]
        if isinstance(value, str) and self.random.random() < 0.5:
            return self.text(value)
        odd = (
            None,
            True,
            False,
            -1,
            0,
            10**40,
            1e308,
            float("nan"),
            float("inf"),
            1.5,
            [],
            {},
            [[]],
            {"a": {}},
        )
        return self.random.choice((*odd, *NASTY, [value] * 50))

    def payload(self) -> str:
        digits = self.random.choice(self.digits)
        if self.random.random() < 0.5:
            return self.text(digits)
        body = int(digits) >> 16  # its fields damaged, and a check that fits them
        for _ in range(self.random.randint(1, 8)):
            body ^= 1 << self.random.randrange(max(body.bit_length() - 6, 1))
        return str(body << 16 | payload._crc(body, body.bit_length()))

    def link(self) -> str:
        return self.text(self.random.choice(self.links))

    def json(self) -> bytes:
        text = self.text(json.dumps(self.random.choice(self.specs)))
        return text.encode(self.random.choice(("utf-8", "utf-8", "utf-16", "utf-32")), "surrogatepass")

    def spec(self) -> Any:
        spec = self.random.choice(self.specs)
        for _ in range(self.random.randint(1, 3)):
            spec = self.value(spec)
        return spec

    def _cells(self) -> list[list[object]]:
        rows = [list(row) for row in (*self.rows, self.rows[1])]
        for _ in range(self.random.randint(0, 5)):
            row = self.random.choice(rows)
            at = self.random.randrange(len(row))
            row[at] = self.text(str(row[at] or ""))
        return rows

    def csv(self) -> bytes:
        written = io.StringIO()
        csv.writer(written, delimiter=self.random.choice(",;\t")).writerows(self._cells())
        text = self.text(written.getvalue()) if self.random.random() < 0.7 else written.getvalue()
        return text.encode(self.random.choice(("utf-8", "utf-8-sig", "utf-16", "cp1252")), "ignore")

    def xlsx(self) -> bytes:
        book, whole = openpyxl.Workbook(), io.BytesIO()
        for row in self._cells():
            book.active.append(
                [str(cell).translate(_UNWRITABLE)[:30000] if cell is not None else None for cell in row]
            )
        book.save(whole)
        if self.random.random() < 0.4:
            return self.bytes(whole.getvalue())
        out = io.BytesIO()
        with zipfile.ZipFile(whole) as parts, zipfile.ZipFile(out, "w") as anew:
            chosen = self.random.choice(parts.namelist())
            for name in parts.namelist():
                data = parts.read(name)
                anew.writestr(name, self.bytes(data) if name == chosen else data)
        return out.getvalue()

    def bytes(self, data: bytes) -> bytes:
        changed = bytearray(data)
        for _ in range(self.random.randint(1, 6)):
            changed[self.random.randrange(len(changed))] = self.random.randrange(256)
        return bytes(
            changed[: self.random.randrange(len(changed))] if self.random.random() < 0.1 else changed
        )

    def template(self) -> bytes:
        return self.text(self.random.choice(self.templates)).encode("utf-8", "surrogatepass")


_UNWRITABLE = dict.fromkeys([*range(9), 11, 12, *range(14, 32), *range(0xD800, 0xE000), 0xFFFE, 0xFFFF])
"""What the writer of spreadsheets itself refuses."""


def parsers(folder: Path) -> dict[str, Callable[[Any], object]]:
    """What reads each kind of input, as the program does. ``folder``: for those that read files."""

    def read_list(data: bytes) -> object:
        table = list_import.read("list.csv", data)
        ours = list_columns.guess(table[0])
        return lists.read_rows([list(ours), *table[1:]])

    def read_template(data: bytes) -> object:
        file = folder / "own.toml"
        file.write_bytes(data)
        return template.read(file)

    return {
        "payload": payload.decode,
        "link": link.parse,
        "json": intake.json_value,
        "spec": AssemblySpec.read,
        "csv": read_list,
        "xlsx": read_list,
        "template": read_template,
    }


def send(count: int, seed: int) -> dict[str, dict[str, Any]]:
    """``count`` inputs in all, by their shares: by parser how many, how many refused, the slowest in s, what failed."""
    inputs, told = Inputs(seed), {}
    with tempfile.TemporaryDirectory() as folder:
        taken = int(Path("/proc/self/statm").read_text().split()[0]) * resource.getpagesize()
        resource.setrlimit(resource.RLIMIT_AS, (taken + MOST_MEMORY,) * 2)
        for name, read in parsers(Path(folder)).items():
            make = getattr(inputs, name)
            told[name] = _each(read, make, max(int(count * SHARES[name]), 1))
    return told


def _each(read: Callable[[Any], object], make: Callable[[], Any], count: int) -> dict[str, Any]:
    refused, slowest, failures = 0, 0.0, []
    for _ in range(count):
        given = make()
        signal.alarm(120)  # ends the process: whoever started it says so
        begun = time.process_time()
        failed = ""
        try:
            read(given)
        except TaggerError:
            refused += 1
        except Exception:
            failed = traceback.format_exc()[-1500:]
        took = time.process_time() - begun
        slowest = max(slowest, took)
        if failed or took > MOST_SECONDS:
            shown = base64.b64encode(given).decode() if isinstance(given, bytes) else ascii(given)
            failures.append(f"{took:.2f} s {shown[:2000]}\n{failed}")
        if len(failures) == 5:
            break
    signal.alarm(0)
    return {"sent": count, "refused": refused, "slowest": round(slowest, 3), "failures": failures}


if __name__ == "__main__":
    json.dump(send(int(sys.argv[1]), int(sys.argv[2])), sys.stdout)
