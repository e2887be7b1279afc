"""HTML_CodeSniffer, accessibility rules (WCAG 2 AA) that others wrote, independent of axe, run in a page."""

from __future__ import annotations

import subprocess
import sys
from functools import cache
from pathlib import Path

from playwright.sync_api import Page

_ERRORS = """() => new Promise((done) => HTMLCS.process("WCAG2AA", document, () => done(
  HTMLCS.getMessages().filter((m) => m.type === HTMLCS.ERROR).map((m) => `${m.code}: ${m.msg} ${(m.element.outerHTML || "").slice(0, 160)}`)
)))"""


@cache
def _rules() -> str:
    """The engine as it is published; `make test` installs it, and so does the first test that needs it."""
    script = Path(__file__).parents[1] / "node-packages.sh"
    made = subprocess.run(["sh", str(script), sys.prefix], capture_output=True, text=True)
    assert made.returncode == 0, made.stdout + made.stderr
    file = Path(sys.prefix, "node", "node_modules", "html_codesniffer", "build", "HTMLCS.js")
    return file.read_text(encoding="utf-8")


def errors(page: Page) -> list[str]:
    """What it calls an error in the page as it stands."""
    page.evaluate(_rules())
    found: list[str] = page.evaluate(_ERRORS)
    return found
