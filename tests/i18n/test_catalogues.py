"""The catalogues are whole: every id in every language, every value used, no English in the others."""

from __future__ import annotations

import csv
import re
from functools import cache
from itertools import product

import pytest
from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from tagger.i18n import LANGUAGES, SOURCE, Translator
from tagger.i18n import values as fluent
from tagger.i18n.catalogue import rooms, source
from tagger.i18n.languages import folder
from tagger.messages import Message, length
from tests.i18n.messages_used import ROOMS, uses

OTHERS = tuple(language for language in LANGUAGES if language != SOURCE)
_AS_IS = "words-as-is"


class Reads(Visitor):  # type: ignore[misc]
    """What one entry of a catalogue reads: its values, how each is used, and the variants it names."""

    def __init__(self) -> None:
        self.values: set[str] = set()
        self.called: dict[str, str] = {}
        self.variants: dict[str, set[str]] = {}

    def visit_VariableReference(self, node: ast.VariableReference) -> None:
        self.values.add(node.id.name)

    def visit_FunctionReference(self, node: ast.FunctionReference) -> None:
        for argument in node.arguments.positional:
            if isinstance(argument, ast.VariableReference):
                self.called[argument.id.name] = node.id.name
        self.generic_visit(node)

    def visit_SelectExpression(self, node: ast.SelectExpression) -> None:
        if isinstance(node.selector, ast.VariableReference):
            keys = {
                v.key.name if isinstance(v.key, ast.Identifier) else str(v.key.value) for v in node.variants
            }
            self.variants.setdefault(node.selector.id.name, set()).update(keys)
        self.generic_visit(node)


@cache
def entries(language: str) -> dict[str, ast.Message]:
    """Every message of a language, by id; a junk line fails here."""
    found: dict[str, ast.Message] = {}
    for room in rooms(language):
        for entry in FluentParser().parse(source(language, room)).body:
            assert not isinstance(entry, ast.Junk), f"{language}/{room}.ftl: {entry.content}"
            if isinstance(entry, ast.Message):
                assert entry.id.name not in found, f"{language}/{room}.ftl has {entry.id.name} twice"
                assert entry.id.name.startswith(f"{room}-"), f"{entry.id.name} stands in {room}.ftl"
                found[entry.id.name] = entry
    return found


def reads(entry: ast.Message) -> Reads:
    visitor = Reads()
    visitor.visit(entry)
    visitor.values.discard("case")
    return visitor


@pytest.mark.parametrize("language", OTHERS)
def test_every_language_has_every_message(language: str) -> None:
    ours, theirs = entries(SOURCE), entries(language)
    assert sorted(set(ours) - set(theirs)) == []
    assert sorted(set(theirs) - set(ours)) == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_has_the_same_attributes_and_uses_the_same_values_in_every_language(language: str) -> None:
    off = {}
    for id, entry in entries(SOURCE).items():
        other = entries(language).get(id)
        if other is None:
            continue
        ours = ({a.id.name for a in entry.attributes}, reads(entry).values)
        theirs = ({a.id.name for a in other.attributes}, reads(other).values)
        if ours != theirs:
            off[id] = (ours, theirs)
    assert off == {}


def test_every_message_that_is_asked_for_is_there_and_every_one_there_is_asked_for() -> None:
    known, asked, missing = set(entries(SOURCE)), set(), []
    for use in uses():
        hits = {id for id in known if id.startswith(use.id)} if use.start else {use.id} & known
        asked |= hits
        if not hits:
            missing.append(f"{use.where}: {use.id}")
    assert missing == []
    assert sorted(id for id in known - asked if not id.startswith("language-")) == []


def test_every_message_is_given_the_values_it_uses_and_no_others() -> None:
    off = []
    for use in uses():
        entry = entries(SOURCE).get(use.id)
        if entry is not None and use.values is not None and use.values != reads(entry).values:
            off.append(f"{use.where}: {use.id} gets {sorted(use.values)}, uses {sorted(reads(entry).values)}")
    assert off == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_renders_with_sample_values(language: str) -> None:
    t = Translator(language)
    bundle = FluentBundle([language], functions={"SAY": fluent.say, "LIST": fluent.join}, use_isolating=False)
    for room in rooms(language):
        bundle.add_resource(FluentResource(source(language, room)))
    for id, entry in entries(language).items():
        read = reads(entry)
        for sample in _samples(read):
            given = {name: fluent.fluent_value(value, t, False) for name, value in sample.items()}
            compiled = bundle.get_message(id)
            for pattern in [compiled.value, *compiled.attributes.values()]:
                if pattern is not None:
                    text, errors = bundle.format_pattern(pattern, {"case": "", **given})
                    assert not errors, f"{language} {id}: {errors}"
                    assert (text.strip() and "{" not in text.replace("{ $", "")) or id == _AS_IS, (
                        f"{language} {id}: {text!r}"
                    )


def _samples(read: Reads) -> list[dict[str, object]]:
    """One set of values for each variant that the message names."""
    choices = []
    for name in sorted(read.values):
        keys = read.variants.get(name, set())
        if keys and keys <= {"zero", "one", "two", "few", "many", "other"} | {str(n) for n in range(10)}:
            choices.append([(name, value) for value in (*sorted(keys - {"zero"}), 1, 2)])
        elif keys:
            choices.append([(name, key) for key in sorted(keys)])
        elif read.called.get(name) == "SAY":
            choices.append([(name, Message("words-part-hose"))])
        elif read.called.get(name) == "LIST":
            choices.append([(name, ("-4", "-6", "-8"))])
        else:
            choices.append([(name, length(12.5))])
    return [dict(sample) for sample in product(*choices)][:200]


ENGLISH = re.compile(
    r"\b(the|this|that|these|those|is|are|was|were|be|of|and|or(?! |$)|not|with|without|from|for|must|which|"
    r"hose|hoses|fitting|maker|manufacturer|pressure|tag|tags|enter|choose|use|check|delete|end|ends|"
    r"thread|size|sizes|nut|working|record|recorded|known|given|your|you|only|than|has|have|does)\b",
    re.IGNORECASE,
)
ALIKE = {"de": {"was", "use", "war", "nut"}, "fr": {"use", "or", "tags"}, "es": {"use", "has"}}
"""Words that are the language's own as well."""


@pytest.mark.parametrize("language", OTHERS)
def test_no_english_stands_in_another_language(language: str) -> None:
    allowed = ALIKE.get(language, set())
    off = {}
    for id, entry in entries(language).items():
        text = " ".join(texts(entry))
        hits = {word.lower() for word in ENGLISH.findall(text)} - allowed
        if hits:
            off[id] = (sorted(hits), text)
    assert off == {}


def texts(entry: ast.Message) -> list[str]:
    found: list[str] = []

    class Texts(Visitor):  # type: ignore[misc]
        def visit_TextElement(self, node: ast.TextElement) -> None:
            found.append(node.value)

    Texts().visit(entry)
    return found


@pytest.mark.parametrize("language", OTHERS)
def test_a_longer_sentence_is_not_left_in_english(language: str) -> None:
    same = []
    for id, entry in entries(language).items():
        ours = texts(entries(SOURCE)[id]) if id in entries(SOURCE) else []
        words = re.findall(r"[A-Za-z]{3,}", " ".join(ours))
        if texts(entry) == ours and len(words) > 3:
            same.append(id)
    assert same == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_catalogue_keeps_to_its_glossary(language: str) -> None:
    """A word the glossary says to avoid stands in no message, unless the row names an exception."""
    file = folder(language).joinpath("glossary.csv")
    off = []
    for row in csv.DictReader(file.read_text(encoding="utf-8").splitlines()):
        for word in filter(None, (part.strip() for part in row.get("never", "").split(";"))):
            pattern = re.compile(rf"(?<![\w-]){re.escape(word)}(?![\w-])", re.IGNORECASE)
            off += [
                f"{id}: {word!r} ({row['english']})"
                for id, entry in entries(language).items()
                if pattern.search(" ".join(texts(entry)))
            ]
    assert off == []


def test_rooms_are_the_same_in_every_language() -> None:
    for language in OTHERS:
        assert set(rooms(language)) - {"language"} == set(ROOMS), language


def test_a_french_mark_never_begins_a_line_nor_stands_without_its_space() -> None:
    """Before ``: ; ? ! »`` and after ``«`` stands one no-break space: a line is never broken there."""
    wrong = {}
    for id, entry in entries("fr").items():
        for pattern in (entry.value, *(attribute.value for attribute in entry.attributes)):
            texts = _texts(pattern)
            if found := re.findall(r".{0,9}(?:[^\s:;?!][:;?!](?!\S)| [:;?!»]|« ).{0,3}", texts):
                wrong[id] = found
    assert wrong == {}


class _Texts(Visitor):  # type: ignore[misc]
    def __init__(self) -> None:
        self.parts: list[str] = []

    def visit_TextElement(self, node: ast.TextElement) -> None:
        self.parts.append(node.value)

    def visit_StringLiteral(self, node: ast.StringLiteral) -> None:
        self.parts.append(node.value)

    def visit_VariableReference(self, node: ast.VariableReference) -> None:
        self.parts.append("X")

    def visit_Variant(self, node: ast.Variant) -> None:
        self.parts.append("\n")
        self.generic_visit(node)


def _texts(pattern: ast.Pattern | None) -> str:
    """What a pattern says, each variant on a line, ``X`` for a value."""
    visitor = _Texts()
    if pattern is not None:
        visitor.visit(pattern)
    return "".join(visitor.parts)
