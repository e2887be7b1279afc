"""Every string that must be translated, taken from where it stands.

Two catalogues: ``tagger`` (words.py, and the texts and citations of the fitting steps) and
``api`` (pages, templates, scripts). ``python -m api.scan.catalogue`` brings the .po files up to
date; a test does the same in memory and names what a language is missing.
"""

from __future__ import annotations

import ast
import re
import sys
from functools import cache
from importlib import resources
from pathlib import Path
from typing import Final

from babel.messages.catalog import Catalog
from babel.messages.pofile import write_po

from api.scan import fill
from api.scan.i18n import LANGUAGES
from tagger.spec import BASIS_WORDS
from tagger.trade.tables import tables
from tagger.words import messages

ROOT: Final = Path(str(resources.files("api"))).parent
_PROBLEMS: Final = {"Problem": 2, "_wrong": 2, "SpecValueError": 2, "_refusal": 0, "refuse": 0}
_NAMES: Final = {"why", "mend", "text", "reason"}
_TABLES: Final = {"_INSTEAD"}
# Whose refusals and warnings a visitor of the public pages can meet.
_SPEAKING: Final = (
    *(f"tagger/code/{name}.py" for name in ("number", "link", "payload", "photo")),
    *(
        f"tagger/trade/{name}.py"
        for name in (
            "assess",
            "compatibility",
            "geometry",
            "identifying/identify",
            "identifying/readings",
            "rating",
            "temperature",
            "tightening",
        )
    ),
    *(f"tagger/store/{name}.py" for name in ("orders", "texts", "values")),
    *(f"tagger/{name}.py" for name in ("spec", "errors", "intake", "units")),
)


def strings(domain: str) -> frozenset[str]:
    """Every English string of one catalogue."""
    return _of_tagger() if domain == "tagger" else _of_api() - _of_tagger()


@cache
def _of_tagger() -> frozenset[str]:
    steps = {row.text for row in tables().steps} | {row.source for row in tables().steps}
    steps |= {row.text for row in tables().look_alikes}
    said = {text for name in _SPEAKING for text in spoken(ROOT / name)}
    return frozenset(_extracted("tagger/words.py") | set(BASIS_WORDS.values()) | steps | said)


@cache
def _of_api() -> frozenset[str]:
    found: set[str] = set()
    shared = [ROOT / "api" / "shared" / name for name in ("known_tag.py", "photos.py")]
    for file in [*sorted((ROOT / "api" / "scan").glob("*.py")), *shared]:
        found |= _extracted(str(file.relative_to(ROOT))) | spoken(file)
    for file in sorted((ROOT / "api" / "templates" / "scan").glob("*.html")):
        found |= _in_jinja(file.read_text(encoding="utf-8"))
    for name in fill.TEMPLATES:
        found |= set(fill.texts(name))
    return frozenset(found | in_scripts())


@cache
def in_scripts() -> frozenset[str]:
    """The strings that the phone's scripts look up."""
    found: set[str] = set()
    for file in sorted((ROOT / "api" / "static" / "reader").glob("*.js")):
        found |= _in_script(file)
    return frozenset(found)


def _extracted(name: str) -> set[str]:
    """The strings that a Python module marks with N_ or looks up with t, also inside f-strings."""
    found: set[str] = set()
    for node in ast.walk(ast.parse((ROOT / name).read_text(encoding="utf-8"))):
        if isinstance(node, ast.Call) and node.args and isinstance(node.args[0], ast.Constant):
            called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            if called in ("t", "N_") and isinstance(node.args[0].value, str):
                found.add(node.args[0].value)
    return found


def _in_script(file: Path) -> set[str]:
    """t("...") or N_("...") in a JavaScript module, also inside template strings; ids are not for here."""
    found = re.findall(r'\b(?:t|N_)\("([^"]*)"', file.read_text(encoding="utf-8"))
    return {text for text in found if not text.startswith(("words-", "fit-", "scan-", "code-"))}


def _in_jinja(text: str) -> set[str]:
    """t("...") or t('...') inside a template."""
    return {match[2] for match in re.finditer(r"\bt\((['\"])(.*?)\1", text)}


def spoken(file: Path) -> set[str]:
    """The sentences a module puts into a Problem or a Warning_, places of figures numbered.

    They are written as arguments (why, mend, text) or first given such a name.
    """
    found: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        for value in _sentences(node):
            text = _pattern(value)
            if text and re.search(r"[a-z]{2}", re.sub(r"\{\d\}", "", text)):
                found.add(text)
    return found


def _sentences(node: ast.AST) -> list[ast.expr]:
    if isinstance(node, ast.Call):
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        start = _PROBLEMS.get(name)
        spoken_by_place = [] if start is None else node.args[start : start + 2]
        return [*spoken_by_place, *(k.value for k in node.keywords if k.arg in _NAMES)]
    if (
        isinstance(node, ast.Assign)
        and isinstance(node.targets[0], ast.Name)
        and node.targets[0].id in _NAMES
    ):
        return [node.value]
    if (
        isinstance(node, ast.Assign)
        and isinstance(node.targets[0], ast.Name)
        and node.targets[0].id in _TABLES
    ):
        return list(node.value.values) if isinstance(node.value, ast.Dict) else []
    return []


def _pattern(value: ast.expr) -> str:
    """A constant as it is, an f-string with its places numbered, nothing else."""
    if isinstance(value, ast.Constant) and isinstance(value.value, str):
        return value.value
    if isinstance(value, ast.JoinedStr):
        places = iter(range(len(value.values)))
        return "".join(
            str(part.value) if isinstance(part, ast.Constant) else f"{{{next(places)}}}"
            for part in value.values
        )
    return ""


def po_file(domain: str, lang: str) -> Path:
    """Where a catalogue is kept."""
    return ROOT / domain / "locales" / lang / "LC_MESSAGES" / f"{domain}.po"


def translations(domain: str, lang: str) -> dict[str, str]:
    """What a catalogue holds now."""
    return messages(domain, lang, domain)


def update(domain: str, lang: str) -> list[str]:
    """Writes the catalogue with every string of today, keeping its translations; says what is missing."""
    known = translations(domain, lang)
    catalog = Catalog(
        locale=lang, domain=domain, header_comment=f"# {domain}: {LANGUAGES[lang]}", fuzzy=False
    )
    wanted = sorted(strings(domain))
    for text in wanted:
        catalog.add(text, known.get(text, ""))
    file = po_file(domain, lang)
    file.parent.mkdir(parents=True, exist_ok=True)
    with file.open("wb") as stream:
        write_po(stream, catalog, width=0, omit_header=False, sort_output=True)
    return [text for text in wanted if not known.get(text)]


if __name__ == "__main__":
    for _lang in [lang for lang in LANGUAGES if lang != "en"]:
        for _domain in ("tagger", "api"):
            for _text in update(_domain, _lang):
                sys.stdout.write(f"{_lang} {_domain}: {_text}\n")
