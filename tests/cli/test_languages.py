"""Every command speaks German, Spanish and French, run as a user runs it."""

from __future__ import annotations

import argparse
import json
import re
from pathlib import Path

import pytest

from tagger.cli.language import translate_argparse
from tagger.cli.parser import make_parser
from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.messages import Message
from tests.cli.test_cli import SERVICE_RUN, Shell
from tests.cli.test_cli import tagger as tagger  # the fixture
from tests.i18n.test_catalogues import ALIKE, ENGLISH
from tests.test_spec import EXAMPLE

OTHERS = tuple(language for language in LANGUAGES if language != SOURCE)
BASE = "https://tags.example-hose-shop.com"
COMMANDS = tuple(
    name
    for action in make_parser(Translator())._actions
    if isinstance(action, argparse._SubParsersAction)
    for name in action.choices
)
KEYS = re.compile(r"\b(end_[ab]\.\w+|hose\.\w+|[\w-]+\.(json|csv|png|pdf|sqlite3)|--[\w-]+|https?://\S+)")
"""What stays as it is in every language: fields and files as somebody typed them, options, addresses."""


def _english_in(text: str, language: str, *known: str) -> set[str]:
    """English words of a text, apart from ``known`` texts: sources and what somebody typed."""
    for part in sorted(known, key=len, reverse=True):
        text = text.replace(part, " ")
    found = {word.lower() for word in ENGLISH.findall(KEYS.sub(" ", text))}
    return found - ALIKE.get(language, set())


def _sources(answer: object) -> set[str]:
    """Every source, note and printed figure of an answer: the words of others, as they are."""
    if isinstance(answer, dict):
        own = {str(answer[key]) for key in answer if "source" in key or key in ("note", "printed")}
        return own.union(*map(_sources, answer.values()))
    if isinstance(answer, list):
        return set().union(*map(_sources, answer))
    return set()


@pytest.fixture
def example(tagger: Shell) -> Shell:
    wrong = {**EXAMPLE, "length_mm": "long", "colour": "red"}
    (tagger.folder / "wrong.json").write_text(json.dumps(wrong), encoding="utf-8")
    return tagger


@pytest.mark.parametrize("language", OTHERS)
def test_check_is_said_whole_in_the_language(example: Shell, language: str) -> None:
    sources = _sources(example.json("check", "spec.json"))
    said = example("--lang", language, "check", "spec.json").stdout
    assert _english_in(said, language, *sources) == set()
    assert said == example("check", "spec.json", TAGGER_LANGUAGE=language).stdout


@pytest.mark.parametrize("language", OTHERS)
def test_identify_and_compare_are_said_whole_in_the_language(example: Shell, language: str) -> None:
    given = ("--form", "male", "--thread-od", "27", "--tpi", "12")
    assert _english_in(example("identify", "--lang", language, *given).stdout, language) == set()
    weaker = {**EXAMPLE, "hose": {"standard": "SAE 100R1", "dash": 12}, "length_mm": 900}
    (example.folder / "weaker.json").write_text(json.dumps(weaker), encoding="utf-8")
    sources = _sources(example.json("check", "spec.json")) | _sources(example.json("check", "weaker.json"))
    said = example("compare", "spec.json", "weaker.json", "--lang", language).stdout
    assert _english_in(said, language, *sources) == set()


@pytest.mark.parametrize("language", OTHERS)
def test_a_tag_is_registered_printed_shown_and_read_in_the_language(example: Shell, language: str) -> None:
    lang = ("--lang", language)
    registered = example("register", "spec.json", "--customer", "Brindlemere", *lang)
    made = registered.stdout.strip()
    sources = _sources(example.json("check", "spec.json"))
    assert _english_in(registered.stderr, language, *sources) == set()
    printed = example("print", made, "--out", "o.pdf", *lang)
    shown = example("show", made, *lang)
    read = example("read", f"{example.json('show', made)['link']}", *lang)
    scans = example("preflight", made, *lang)
    for done in (printed, shown, read, scans, example("templates", *lang)):
        assert _english_in(done.stdout + done.stderr, language, BASE) == set()
    t = Translator(language)
    assert t("cli-event-printed") in shown.stdout
    assert t("cli-recorded", caption=Message("words-record-customer"), value="Brindlemere") in shown.stdout


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize(
    "arguments",
    [
        ("check", "wrong.json"),
        ("check", "nowhere.json"),
        ("read", "7K3MQ-9XW2R2"),
        ("read", "7K3MQ-9XW2R1"),
        ("read", "nowhere.png"),
        ("read", "https://example.com/about/us"),
        ("run", SERVICE_RUN, "--out", "no/such/o.pdf"),
        ("show", "00000-000001"),
    ],
)
def test_refusals_are_said_whole_in_the_language(
    example: Shell, language: str, arguments: tuple[str | Path, ...]
) -> None:
    done = example("--lang", language, *arguments, code=1)
    assert done.stderr
    assert _english_in(done.stderr, language, "(value: long)") == set()


def test_a_row_of_a_list_is_named_in_the_language(example: Shell) -> None:
    lines = SERVICE_RUN.read_text(encoding="utf-8").splitlines()
    lines[3] = lines[3].replace("din24_light,,15", "din24_light,12,15", 1)
    (example.folder / "list.csv").write_text("\n".join(lines), encoding="utf-8")
    done = example("run", "list.csv", "--out", "o.pdf", "--lang", "fr", code=1)
    assert done.stderr.startswith("ligne 4, end_a.dash\u00a0: ")


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize(
    "arguments",
    [
        ("check",),
        ("print", "X"),
        ("frobnicate",),
        ("print", "X", "--out", "o.pdf", "--dpi", "9"),
        ("check", "--x", "y"),
    ],
)
def test_wrong_usage_is_said_whole_in_the_language(
    example: Shell, language: str, arguments: tuple[str, ...]
) -> None:
    said = example("--lang", language, *arguments, code=2).stderr.splitlines()[-1]
    assert (
        _english_in(said, language, *(f"'{command}'" for command in COMMANDS), f"tagger {arguments[0]}")
        == set()
    )


def test_the_help_names_every_command_in_every_language() -> None:
    """What a help says of 100 % is no format."""
    for language in LANGUAGES:
        parser = make_parser(Translator(language))
        (verbs,) = (a for a in parser._actions if isinstance(a, argparse._SubParsersAction))
        said = parser.format_help().split()
        for name, one in verbs.choices.items():
            assert name in said and name in one.format_help(), (language, name)


@pytest.mark.parametrize("language", OTHERS)
def test_the_help_of_every_command_is_said_whole_in_the_language(
    monkeypatch: pytest.MonkeyPatch, language: str
) -> None:
    monkeypatch.setattr(argparse, "_", argparse._)  # type: ignore[attr-defined]
    translate_argparse(Translator(language))
    (verbs,) = (
        a for a in make_parser(Translator(language))._actions if a.dest == "==SUPPRESS==" and a.choices
    )
    for name, one in verbs.choices.items():  # type: ignore[union-attr]
        said = one.description + " ".join(a.help or "" for a in one._actions)
        keys = ("female_swivel", "female_fixed", "flange_head", "HOST")
        assert _english_in(said.split("TAGGER_")[0], language, *keys) == set(), name


def test_an_answer_as_json_carries_id_values_and_text_in_the_language(example: Shell) -> None:
    done = example("--lang", "fr", "check", "wrong.json", "--json", code=1)
    (one, *_) = [p for p in json.loads(done.stdout)["refused"] if p["field"] == "colour"]
    assert one["id"] == "spec-unknown-field"
    assert one["values"] == {}
    assert one["why"] == "Ce champ est inconnu."
    warning = json.loads(example("--lang", "fr", "check", "spec.json", "--json").stdout)["warnings"][0]
    assert {"code", "field", "severity", "id", "values", "text"} <= set(warning)
    assert _english_in(warning["text"], "fr") == set()


def test_a_language_that_is_not_there_is_wrong_usage_or_a_wrong_setting(example: Shell) -> None:
    assert "'xx'" in example("--lang", "xx", "check", "spec.json", code=2).stderr
    refused = example("check", "spec.json", code=1, TAGGER_LANGUAGE="xx").stderr
    assert refused.startswith("TAGGER_LANGUAGE: This language is not available.")
