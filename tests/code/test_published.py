"""The published format is enough: two readers that know it alone, in two languages, read every tag."""

from __future__ import annotations

import json
import random
import subprocess
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from pydantic import ValidationError

from tagger.code import payload
from tagger.code.published import published
from tagger.errors import TaggerError
from tagger.spec import (
    AssemblySpec,
    Connection,
    Cover,
    Danger,
    Fluid,
    Material,
    Sizing,
    TagContent,
    pipe_of_dash,
)
from tagger.trade.tables import tables
from tests.code.signed_examples import vectors
from tests.code.stranger.decode import Stranger
from tests.code.test_payload import EVERY
from tests.volume import volume

FORMAT = Path(payload.__file__).with_name("format.json")
STRANGER = Path(__file__).with_name("stranger")


def _pruned(value: Any) -> Any:
    """Without what is absent: None, empty lists, and objects of nothing else."""
    if not isinstance(value, dict):
        return value
    left = {key: _pruned(one) for key, one in value.items()}
    return {key: one for key, one in left.items() if one is not None and one != [] and one != {}}


def _end(chance: random.Random) -> dict[str, Any]:
    family = chance.choice(list(Connection))
    end: dict[str, Any] = {
        "connection": family,
        "form": chance.choice(tables().families[family].forms),
        "material": chance.choice(list(Material)),
    }
    if family == "other":
        end["description"] = (
            "".join(chance.choice("Block M20x1.5 ~!") for _ in range(chance.randint(1, 24))).strip() or "x"
        )
    elif family.sized_by is Sizing.DASH:
        end["dash"] = chance.randint(1, 63)
    elif family.sized_by is Sizing.PIPE:
        end["size"] = pipe_of_dash(chance.randint(1, 63))
    elif family.sized_by is Sizing.TUBE:
        end["size"] = str(chance.randint(1, 63))
    else:
        end["size"] = chance.choice(list(payload.points(family.sized_by)))
    if chance.random() < 0.5:
        end["shape"] = chance.choice(("elbow_45", "elbow_90", chance.randint(1, 180)))
        end["drop_mm"] = chance.choice((None, chance.randint(1, 4000) / 10))
    if family in ("sae_orb", "metric_orb"):
        end["series"] = chance.choice((None, *payload.points("series")))
    return end


def _tightening(chance: random.Random) -> dict[str, Any] | None:
    if chance.random() < 0.3:
        return None
    told: dict[str, Any] = {}
    if chance.random() < 0.7:
        low = chance.randint(1, 15000) / 10
        told |= {
            "torque_min_nm": chance.choice((None, low)),
            "torque_max_nm": low + chance.randint(0, 1000) / 10,
        }
        told["lubrication"] = chance.choice((None, *payload.points("lubrication")))
        told["screw"] = chance.choice((None, *payload.points("screw")))
    if chance.random() < 0.7:
        least = chance.randint(0, 200)
        told |= {
            "flats_min": least / 12,
            "flats_max": (least + chance.randint(0, 100)) / 12,
            "flats_basis": chance.choice(list(payload.points("basis"))),
        }
    return told or None


def _some(chance: random.Random, names: Any) -> tuple[Any, ...]:
    return tuple(name for name in names if chance.random() < 0.3)


def _content(chance: random.Random) -> TagContent:
    """Any content; raises where the dice make one that there cannot be."""
    key = chance.choice([*payload.points("hose"), "Own hose|7", "Own hose"])
    standard, _, edition = key.partition("|")
    hose_dash = chance.randint(1, 63)
    ends = [_end(chance), _end(chance)]
    for end in ends:
        if chance.random() < 0.3:
            end["hose_dash"] = hose_dash
    bar, elbows = chance.choice((None, chance.randint(1, 30000) / 10)), all("shape" in end for end in ends)
    given = None
    if bar is not None and chance.random() < 0.4:
        given = {
            "value_bar": bar,
            "source": chance.choice(list(payload.points("pressure_source"))),
        }
        if chance.random() < 0.5:
            given |= {"fluid": chance.choice(list(Fluid)), "max_temperature_c": chance.randint(-50, 200)}
    spec = {
        "hose": {"standard": standard, "edition": edition or None, "dash": hose_dash},
        "end_a": ends[0],
        "end_b": ends[1],
        "length_mm": chance.randint(100, 1_000_000) / 10,
        "length_basis": chance.choice(("sealing_face", "thread_end", "elbow_centreline")),
        "clocking_deg": chance.randrange(360) if elbows else None,
        "max_temperature_c": chance.choice((None, chance.randint(-60, 250))),
        "fluid": chance.choice((None, *Fluid)),
        "covers": _some(chance, Cover),
        "vacuum_bar": chance.choice((None, chance.randint(1, 100) / 100)),
        "working_pressure": given,
    }  # fmt: skip
    rated: dict[str, Any] = {"working_pressure_bar": bar}
    if bar is None:
        rated = {
            "at_most_bar": chance.choice((None, chance.randint(1, 30000) / 10)),
            "unknown_parts": _some(chance, payload.points("part")),
        }
    return TagContent.model_validate(
        {
            "spec": AssemblySpec.read({key: value for key, value in spec.items() if value is not None}),
            **rated,
            "unverified_parts": _some(chance, payload.points("part")),
            "dangers": _some(chance, Danger),
            "tighten_a": _tightening(chance),
            "tighten_b": _tightening(chance),
            "built_on": chance.choice((None, date(2010, 1, 1) + timedelta(chance.randrange(16000)))),
            "key_id": chance.choice((None, chance.randrange(256))),
        }
    )


@pytest.fixture(scope="module")
def tags() -> list[tuple[str, Any]]:
    """Digits, and the content that the library says they hold: the golden vectors, and random ones."""
    found = [(str(vector["digits"]), {"spec": vector["spec"], **vector["content"]}) for vector in EVERY]
    found += [
        (vector["digits"], payload.decode(vector["payload"]).model_dump(mode="json")) for vector in vectors()
    ]
    chance = random.Random(5)
    named = len(found)
    while len(found) < named + volume(1000, 20000):
        try:
            digits = payload.encode(_content(chance))
        except (TaggerError, ValidationError):
            continue  # the dice made what there cannot be
        found.append((digits, payload.decode(digits).model_dump(mode="json")))
    return [(digits, _pruned(content)) for digits, content in found]


def test_the_published_format_is_that_of_the_data() -> None:
    assert json.loads(FORMAT.read_text(encoding="utf-8")) == published(), (
        "make it anew: python -m tagger.code.published > tagger/code/format.json"
    )


def test_the_random_tags_use_every_field_and_every_family(tags: list[tuple[str, Any]]) -> None:
    used: set[str] = set()
    for digits, _ in tags:
        flat, version = payload._read_flat(payload.unsealed(digits)[0])
        used |= {f"{version} {name}" for name in flat}
    fields = {f"{v} {field['name']}" for v in (2,) for field in payload.layout_as_written(v)["fields"]}
    assert fields <= used
    assert {content["spec"]["end_a"]["connection"] for _, content in tags} == set(Connection)


def test_a_stranger_reads_every_tag_from_the_published_format_alone(tags: list[tuple[str, Any]]) -> None:
    stranger = Stranger(FORMAT)
    for digits, content in tags:
        assert _pruned(stranger.decode(digits)) == content


def test_a_stranger_in_another_language_reads_them_too(tags: list[tuple[str, Any]]) -> None:
    asked = "\n".join(digits for digits, _ in tags)
    command = ["node", str(STRANGER / "decode.js"), str(FORMAT)]
    done = subprocess.run(command, input=asked, capture_output=True, text=True, check=True, timeout=60)
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    assert len(answers) == len(tags)
    for (_, content), answer in zip(tags, answers, strict=True):
        assert _pruned(answer) == content


def test_the_readme_names_the_coding_of_every_family() -> None:
    rows = [
        line.split("|") for line in FORMAT.with_name("README.md").read_text(encoding="utf-8").splitlines()
    ]
    told = {
        row[1].strip(" `"): set(row[4].replace("`", "").replace(",", " ").split())
        for row in rows
        if len(row) == 6
    }
    for sizing in Sizing:
        assert told[sizing] == {family for family in Connection if family.sized_by is sizing}
