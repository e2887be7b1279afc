"""Tags for the benches: a shop's ordinary mix, the same for the same seed, every one different."""

from __future__ import annotations

import csv
import random
import secrets
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

from stdnum.iso7064 import mod_37_36

from tagger.code import link, number, payload, signature
from tagger.printing.content import Tag
from tagger.spec import AssemblySpec, TagContent, Tightening

ADDRESS = "https://tags.example-hose-shop.com"
HOSES = ("SAE 100R1", "SAE 100R2", "SAE 100R12", "EN 856 4SP", "EN 857 2SC")


def tags(count: int, seed: int = 1) -> Iterator[Tag]:
    """``count`` tags, no two alike in number, spec and payload."""
    chance = random.Random(seed)
    for _ in range(count):
        yield _tag(chance)


def write_list(file: Path, count: int, seed: int = 1) -> None:
    """The specs of ``tags`` as a list for ``tagger run``."""
    rows = [dict(_cells(tag.spec.as_dict())) for tag in tags(count, seed)]
    heading = sorted({name for row in rows for name in row})
    with file.open("w", encoding="utf-8", newline="") as out:
        writer = csv.DictWriter(out, heading)
        writer.writeheader()
        writer.writerows(rows)


def _cells(values: dict[str, Any], prefix: str = "") -> Iterator[tuple[str, object]]:
    for name, value in values.items():
        if isinstance(value, dict):
            yield from _cells(value, f"{prefix}{name}.")
        elif value not in (None, []):
            yield prefix + name, value


def two_elbows(seed: int = 1) -> Tag:
    """A tag with everything on it: two elbows, clocking and all figures."""
    chance = random.Random(seed)
    while True:
        tag = _tag(chance)
        if tag.spec.clocking_deg is not None:
            return tag


def signed(tag: Tag) -> Tag:
    """The same tag of a shop that signs, with a key that is made for it."""
    digits = link.parse(tag.link).digits
    assert digits is not None
    return replace(
        tag,
        signed_link=tag.link.replace(
            digits, signature.sealed(tag.number, digits, 1, secrets.token_bytes(32))
        ),
    )


def _tag(chance: random.Random) -> Tag:
    dash = chance.choice((4, 6, 8, 12, 16))
    ends: list[dict[str, Any]] = [_end(chance, dash), _end(chance, dash)]
    elbows = all("shape" in end for end in ends)
    standard = chance.choice(HOSES)
    if (standard, dash) == ("SAE 100R12", 4):  # which it has not
        standard = "SAE 100R2"
    spec = AssemblySpec.read(
        {
            "hose": {"standard": standard, "dash": dash},
            "end_a": ends[0],
            "end_b": ends[1],
            "length_mm": chance.randrange(300, 6000),
            "clocking_deg": chance.randrange(360) if elbows else None,
            "max_temperature_c": 100,
            "fluid": "mineral_oil",
        }
    )
    low = chance.randrange(20, 150)
    figures = Tightening(
        torque_min_nm=low, torque_max_nm=low * 1.1, flats_min=1, flats_max=1.25, flats_basis="finger_tight"
    )
    content = TagContent(
        spec=spec,
        working_pressure_bar=chance.choice((103.4, 206.8, 275.8, 413.7)),
        tighten_a=figures,
        tighten_b=figures,
        built_on=date(2026, chance.randrange(1, 13), chance.randrange(1, 29)),
    )
    body = "".join(chance.choice(number.ALPHABET) for _ in range(10))
    whole = body + mod_37_36.calc_check_digit(body, number.ALPHABET)
    return Tag(whole, link.build(ADDRESS, whole, payload.encode(content)), content)


def _end(chance: random.Random, dash: int) -> dict[str, Any]:
    end: dict[str, Any] = {
        "connection": chance.choice(("sae_37_flare", "orfs")),
        "dash": dash,
        "form": "female_swivel",
    }
    if chance.random() < 0.6:
        end["shape"] = chance.choice(("elbow_45", "elbow_90"))
        end["drop_mm"] = chance.randrange(25, 120)
    return end
