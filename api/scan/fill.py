"""Fills the mustache templates, which the phone fills too when it is offline.

Text between ``{{#t}}`` and ``{{/t}}`` is translated before the template is parsed, so that
a phone gets its templates in one language and needs no translator for them.
"""

from __future__ import annotations

import re
from functools import cache
from html import escape
from importlib import resources
from typing import Any

import pystache
from pystache.parsed import ParsedTemplate

from api.scan.i18n import Translator

_BOTH = re.compile(r"((?:≤ )?[^\s(]+ (?:N·m|bar|mm|°C)) \(([^()]+ (?:lbf·ft|psi|in|°F))\)")
TEMPLATES = ("tag", "order", "end", "card", "assembly", "clocking", "nut", "refused")
_TEXT = re.compile(r"\{\{#t\}\}(.*?)\{\{/t\}\}", re.DOTALL)


@cache
def source(name: str) -> str:
    """One template as it is kept."""
    file = resources.files("api").joinpath("templates", "scan", f"{name}.mustache")
    return file.read_text(encoding="utf-8")


def texts(name: str) -> list[str]:
    """The English strings of one template."""
    return _TEXT.findall(source(name))


@cache
def translated(name: str, lang: str) -> str:
    """One template in one language."""
    t = Translator(lang)
    return _TEXT.sub(lambda match: escape(t(match[1]), quote=True), source(name))


@cache
def _parsed(name: str, lang: str) -> ParsedTemplate:
    return pystache.parse(translated(name, lang))


def fill(name: str, values: dict[str, Any], lang: str = "en") -> str:
    """The template with its values in it; values are escaped for HTML unless in triple braces."""
    text: str = pystache.Renderer(escape=lambda value: escape(value, quote=True)).render(
        _parsed(name, lang), values
    )
    return text


def both(text: str) -> str:
    """The text as HTML, every figure that stands in both systems ("1250 mm (49.21 in)") marked so
    that the page can put the visitor's first.
    """
    found = r'<span class="both"><span class="si">\1</span> <span class="us">\2</span></span>'
    return _BOTH.sub(found, escape(text, quote=True))
