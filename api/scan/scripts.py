"""The scripts of the public pages, by the name in their address: ``page.js``, ``fluent/bundle.js``.

Our own lie in ``static/reader``, those of others in ``static/vendor/<name>``.
"""

from __future__ import annotations

import re
from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable
from typing import Final

VENDORED: Final = ("fluent", "ed25519")
IDENTIFYING: Final = ("guided.js", "identify.js", "looking.js", "marks.js", "measures.js", "ranker.js")
"""What only identifying without a signal asks for."""
APART: Final = (*IDENTIFYING, "calendar.js")
"""What a phone keeps after all that reads a tag."""
LIBRARY: Final = "ed25519/index.js"  # kept by a phone whose browser does not know the signatures of tags
_IMPORTED: Final = re.compile(r'^import (?:[^"]* from )?"\./([\w.-]+)";', re.MULTILINE)

_TRAILING: Final = re.compile(r"\s+// [^\"'`]*$")
"""A comment that ends a line; where a quote follows it may stand in a string, and stays."""


def _static(*names: str) -> Traversable:
    return resources.files("api").joinpath("static", *names)


@cache
def names() -> tuple[str, ...]:
    """Every JavaScript module that a page or a phone may ask for."""
    own = [file.name for file in _static("reader").iterdir()]
    others = [f"{vendor}/{file.name}" for vendor in VENDORED for file in _static("vendor", vendor).iterdir()]
    return tuple(sorted(name for name in (*own, *others) if name.endswith(".js")))


@cache
def small(name: str) -> str:
    """A script without the comments and indentation that only we read."""
    folder = ("vendor",) if name.partition("/")[0] in VENDORED else ("reader",)
    return without_comments(_static(*folder, *name.split("/")).read_text(encoding="utf-8"))


@cache
def worker() -> str:
    """The service worker, as ``small``; the order queue stands in it, because it imports nothing."""
    called = 'importScripts("{{queue}}");'
    text = without_comments(_static("scan-worker.js").read_text(encoding="utf-8"))
    return text.replace(called, small("queue.js")).replace("{{page}}", " ".join(of_the_page()))


@cache
def of_the_page() -> tuple[str, ...]:
    """What every page loads by itself: ``page.js`` and all that it imports, which the browser has already."""
    found: dict[str, None] = {}
    waiting = ["page.js"]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found[name] = None
            waiting += _IMPORTED.findall(small(name))
    return tuple(sorted(found))


def without_comments(text: str) -> str:
    """Lines that say something to the machine, without their indentation; "/*!" is a licence's line, and stays.

    >>> without_comments("/**\\n * Adds.\\n */\\nadd(\\n  1); // one")
    'add(\\n1);\\n'
    >>> without_comments('const at = "https://a // b"; // it is "c"')
    'const at = "https://a // b"; // it is "c"\\n'
    """
    said, inside = [], False
    for line in map(str.strip, text.splitlines()):
        comment = inside or (line.startswith("/*") and not line.startswith("/*!"))
        inside = comment and "*/" not in line
        if line and not comment and not line.startswith("//"):
            said.append(_TRAILING.sub("", line))
    return "\n".join(said) + "\n"
