"""Nothing that is read from outside can crash a parser, hold it up or fill the memory, however damaged it is."""

from __future__ import annotations

import json
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tagger import lists
from tagger.code import link
from tagger.errors import LinkError, SpecError, TemplateError
from tagger.printing import template
from tests.fuzzing import MOST_SECONDS, SHARES
from tests.volume import volume

SEEDS = volume((1,), (1, 2))  # a process each
INPUTS = volume(4_000, 500_000)


def test_damaged_inputs_are_read_or_refused_in_words() -> None:
    for seed in SEEDS:
        command = [sys.executable, "-m", "tests.fuzzing", str(INPUTS), str(seed)]
        done = subprocess.run(command, capture_output=True, text=True)
        assert done.returncode == 0, (done.returncode, done.stderr[-3000:])
        told = json.loads(done.stdout)
        assert told.keys() == SHARES.keys()
        for name, parser in told.items():
            assert parser["failures"] == [], (name, parser["failures"])
            assert parser["slowest"] <= MOST_SECONDS, (name, parser["slowest"])
            assert parser["refused"] > parser["sent"] / 10, name  # else they are hardly damaged
        assert sum(parser["sent"] for parser in told.values()) >= INPUTS * 0.99


def test_what_damaged_inputs_have_found_stays_mended(tmp_path: Path) -> None:
    begun = time.process_time()
    with pytest.raises(LinkError):
        link.parse("HTTPS://TAGS.EXAMPLE.COM/T/2892" + '{"a":' * 6000)
    assert time.process_time() - begun < 0.5
    with pytest.raises(SpecError):
        lists.read_rows([["end_a.shape"], ["\u00b2"]])
    file = tmp_path / "own.toml"
    file.write_text("media = " + "[" * 3000)
    with pytest.raises(TemplateError):
        template.read(file)
