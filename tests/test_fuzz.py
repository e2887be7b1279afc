"""Nothing that is read from outside can crash a parser, hold it up or fill the memory, however damaged it is."""

from __future__ import annotations

import json
import subprocess
import sys

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
