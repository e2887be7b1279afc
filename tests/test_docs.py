"""The documents keep up with the program; pages and settings of the web: tests/web/test_readme.py."""

from __future__ import annotations

import argparse
import re
import shlex
from functools import cache
from pathlib import Path

import pytest

from tagger import lists
from tagger.cli.parser import make_parser
from tagger.printing import template
from tagger.spec import AssemblySpec

ROOT = Path(__file__).parents[1]


def _text(name: str) -> str:
    return (ROOT / name).read_text(encoding="utf-8")


@cache
def _verbs() -> dict[str, argparse.ArgumentParser]:
    (verbs,) = (a for a in make_parser()._actions if isinstance(a, argparse._SubParsersAction))
    return dict(verbs.choices)


def _commands() -> list[str]:
    return list(_verbs())


@pytest.mark.parametrize("command", _commands())
def test_every_command_is_in_the_table_of_commands(command: str) -> None:
    table = _text("examples/README.md").split("## Every command")[1].split("## Every option")[0]
    assert f"`tagger {command}" in table


@pytest.mark.parametrize("page", ["README.md", "examples/README.md", "api/deploy/README.md"])
def test_every_command_that_is_named_exists(page: str) -> None:
    assert set(re.findall(r"`tagger ([a-z][\w-]+)", _text(page))) <= set(_commands())


CALLED = {
    line
    for page in ("README.md", "api/deploy/README.md", "examples/README.md")
    for line in re.findall(r"`tagger ([a-z][\w-]+ [^`]*)`", _text(page))
} | {
    line
    for file in ("README.md", "tagger.service", "tagger-backup.service")
    for line in re.findall(r"/opt/tagger/bin/tagger ([^\"\n]+)$", _text(f"api/deploy/{file}"), re.M)
}


@pytest.mark.parametrize("line", sorted(CALLED))
def test_every_command_is_called_as_the_documents_print_it(line: str) -> None:
    make_parser().parse_args(shlex.split(line.replace("...", "")))


def _options() -> list[tuple[str, str]]:
    return [
        (command, option)
        for command in _commands()
        for action in _verbs()[command]._actions
        for option in action.option_strings
        if option.startswith("--") and option not in ("--help", "--json", "--lang")
    ]


@pytest.mark.parametrize(("command", "option"), _options())
def test_every_option_is_in_the_table(command: str, option: str) -> None:
    """In a row that names its command; an empty first cell is that of the row above."""
    rows, named = re.findall(r"^\|([^|]*)\|([^|]*)\|.*\|$", _text("examples/README.md"), re.M), ""
    told = set()
    for commands, options in rows:
        named = commands.strip() or named
        told |= {
            (c, o) for c in re.findall(r"`([\w-]+)`", named) for o in re.findall(r"`(--[\w-]+)`", options)
        }
    assert (command, option) in told


def test_every_option_in_the_table_exists() -> None:
    table = _text("examples/README.md").split("## Every option")[1]
    assert set(re.findall(r"`(--[\w-]+)`", table)) - {"--json", "--lang"} == {
        option for _, option in _options()
    }


@pytest.mark.parametrize("name", template.names())
def test_every_template_is_in_the_templates_readme(name: str) -> None:
    assert f"`{name}`" in _text("label_templates/README.md")


def test_every_make_target_says_what_it_does() -> None:
    text = _text("Makefile")
    (phony,) = re.findall(r"^\.PHONY: (.*)$", text, re.M)
    assert set(phony.split()) == set(re.findall(r"^([a-z]+):.*## \S", text, re.M))


def test_make_prove_repeats_every_proof_by_volume() -> None:
    """A room that it does not name would be proved a few times, and never by volume."""
    makefile = _text("Makefile").replace("\\\n", "")
    [asked] = re.findall(r"TAGGER_TEST_VOLUME=full .*pytest (.*)$", makefile, re.M)
    proved = {one for word in asked.split() if word.startswith("tests/") for one in ROOT.glob(word)}
    for file in (ROOT / "tests").rglob("*.py"):
        if "from tests.volume import" in file.read_text(encoding="utf-8"):
            assert proved & {file, *file.parents}, f"{file.relative_to(ROOT)} is not in make prove"


@pytest.mark.parametrize("page", sorted(set(re.findall(r"`([\w/]+\.md)`", _text("README.md")))))
def test_every_page_named_in_the_readme_is_there(page: str) -> None:
    assert (ROOT / page).is_file()


@pytest.mark.parametrize(
    "page", sorted(ROOT.glob("**/README.md")), ids=lambda path: str(path.relative_to(ROOT))
)
def test_every_picture_shown_is_there(page: Path) -> None:
    if any(part.startswith(".") for part in page.relative_to(ROOT).parts):
        return
    for picture in re.findall(r"!\[[^]]*]\(([^)]+)\)", page.read_text(encoding="utf-8")):
        assert (page.parent / picture).is_file(), picture


@pytest.mark.parametrize("file", sorted((ROOT / "examples/week").glob("*.json")), ids=lambda path: path.stem)
def test_every_example_spec_reads(file: Path) -> None:
    AssemblySpec.read(file.read_text(encoding="utf-8"))


def test_the_example_list_reads() -> None:
    assert sum(row.quantity for row in lists.read_list(ROOT / "examples/week/service_run.csv")) == 11
