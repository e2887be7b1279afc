"""A command in a new Python says what the tests' commands say, which start in one that has loaded all."""

from __future__ import annotations

import subprocess
import sys

import pytest

from tests.cli.test_cli import Shell
from tests.cli.test_cli import tagger as tagger  # the fixture


@pytest.mark.parametrize(
    ("arguments", "code"),
    [
        (("check", "spec.json", "--json"), 0),
        (("--lang", "de", "check", "nowhere.json"), 1),
        (("print", "X"), 2),
        (("preflight", "7K3MQ-9XW2R1", "--template", "hang_tag"), 1),
    ],
)
def test_a_new_python_gives_the_same_output_errors_and_exit_code(
    tagger: Shell, arguments: tuple[str, ...], code: int
) -> None:
    command = [sys.executable, "-m", "tagger.cli", *arguments]
    fresh = subprocess.run(command, capture_output=True, text=True, cwd=tagger.folder, env=tagger.env)
    ours = tagger(*arguments, code=code)
    assert (fresh.stdout, fresh.stderr, fresh.returncode) == (ours.stdout, ours.stderr, code)


def test_an_environment_and_a_folder_are_those_of_one_command_alone(tagger: Shell) -> None:
    tagger("register", "spec.json")
    assert "Druck" in tagger("check", "spec.json", TAGGER_LANGUAGE="de").stdout
    assert "pressure" in tagger("check", "spec.json").stdout
    other = f"sqlite:///{tagger.folder}/other.sqlite3"
    [first] = tagger.json("register", "spec.json")["numbers"]
    assert first in tagger("show", first).stdout
    assert tagger("show", first, code=1, TAGGER_DATABASE_URL=other).stdout == ""
