"""Fills the mustache templates, which the phone fills too when it is offline.

The message id between ``{{#t}}`` and ``{{/t}}`` is replaced by its text before the template is parsed,
so that a phone gets its templates in one language.
"""

from __future__ import annotations

import re
from functools import cache
from html import escape
from importlib import resources
from typing import Any

import pystache
from pystache.parsed import ParsedTemplate

from tagger.i18n import Translator

TEMPLATES = ("tag", "order", "end", "fitting", "card", "assembly", "clocking", "nut", "refused", "fitted")
_ID = re.compile(r"\{\{#t\}\}(.*?)\{\{/t\}\}")


@cache
def source(name: str) -> str:
    """One template as it is kept."""
    file = resources.files("api").joinpath("templates", "scan", f"{name}.mustache")
    return file.read_text(encoding="utf-8")


@cache
def translated(name: str, lang: str) -> str:
    """One template in one language."""
    t = Translator(lang)
    return _ID.sub(lambda match: escape(t(match[1]), quote=True), source(name))


@cache
def _parsed(name: str, lang: str) -> ParsedTemplate:
    return pystache.parse(translated(name, lang))


def fill(name: str, values: dict[str, Any], lang: str = "en") -> str:
    """The template with its values in it; values are escaped for HTML unless in triple braces."""
    text: str = pystache.Renderer(escape=lambda value: escape(value, quote=True)).render(
        _parsed(name, lang), values
    )
    return text
