"""Answering with a page: language, headers, caching. Every public page goes through here."""

from __future__ import annotations

import gzip
import hashlib
import json
import re
from functools import cache
from importlib import resources
from typing import Any
from urllib.parse import quote, urlencode

from fastapi import Request
from fastapi.responses import HTMLResponse, JSONResponse, Response
from markupsafe import Markup

from api.scan import identify_kit, kit, scripts
from api.scan.captions import caption, in_words
from api.web.headers import content_policy
from api.web.language import language_of, translator_of
from api.web.limits import TooMany
from api.web.state import keys_of, settings_of, tables_of, templates_of
from tagger.errors import LinkError, Problem, StoreError, TaggerError
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.store.trouble import Trouble

UNITS = ("metric", "inch")
_YEAR = 365 * 24 * 3600
_CHOSEN = ("lang", "units")  # by a visitor, on any page
NOTHING = "default-src 'none'"  # for what is no page
VARY = "Accept, Accept-Encoding, Accept-Language, Cookie"


@cache
def css() -> str:
    """The style sheet as it stands in the page, without comments and needless blanks."""
    text = static("scan.css").decode()
    text = re.sub(r"/\*.*?\*/", "", text, flags=re.DOTALL)
    return re.sub(r"\s+", " ", text).replace("; ", ";").replace(" { ", "{").replace(" } ", "}").strip()


@cache
def policy() -> str:
    """Own files only; the one inline style by its hash, so that a kept page stays valid."""
    return content_policy(styles=[css()])


def version(request: Request) -> str:
    """Changes whenever anything that a phone keeps changes: scripts, style, words, tables, public
    keys, the shop's name and addresses in the shell page.
    """
    from api.scan.identify import kept_page  # a page itself: it stands on this module

    state, keys, tables = request.app.state, keys_of(request), tables_of(request)
    known, version = getattr(state, "scan_version", ((None, None), ""))
    if known[0] is not keys or known[1] is not tables:  # the shop may change both while the server runs
        found = hashlib.sha256(css().encode())
        for text in (scripts.worker(), *(scripts.small(name) for name in scripts.names())):
            found.update(text.encode())
        shells = [shown(request, lang, "") for shown in (shell, kept_page) for lang in LANGUAGES]
        found.update("".join(shells).encode())
        kept: list[object] = [
            kit.tables_and_keys(tables, keys),
            *(kit.words_of(lang, tables) for lang in LANGUAGES),
        ]
        kept += [
            identify_kit.candidates(tables),
            *(identify_kit.words_of(lang, tables) for lang in LANGUAGES),
        ]
        found.update(json.dumps(kept, sort_keys=True).encode())
        version = found.hexdigest()[:12]
        state.scan_version = (keys, tables), version
    return str(version)


def script(request: Request, name: str) -> str:
    """The address of one of our scripts; the version in it lets a browser keep it for ever."""
    return _script(version(request), name)


def _script(version: str, name: str) -> str:
    return f"/scan/{version}/{name}"


def static(name: str) -> bytes:
    return resources.files("api").joinpath("static", *name.split("/")).read_bytes()


def units_of(request: Request) -> str:
    """Which system the visitor wants first."""
    for wanted in (request.query_params.get("units"), request.cookies.get("units")):
        if wanted in UNITS:
            return str(wanted)
    return "metric"


def render(request: Request, name: str, lang: str, units: str = "metric", **values: Any) -> str:
    """One page as HTML text."""
    common = {
        "lang": lang,
        "units": units,
        "languages": LANGUAGES,
        "t": Translator(lang),
        "caption": caption,
        "css": Markup(css()),
        "number": None,
        "json_ld": None,
        "links": (),
        "body": "",
        "asked_too": "",
    }
    if "script" not in values:
        common["script"] = script(request, "page.js")
    text: str = templates_of(request).env.get_template(f"scan/{name}").render(common | values)
    return text


def shell(request: Request, lang: str, version: str) -> str:
    """The page that a phone fills by itself when the network is gone."""
    t = Translator(lang)
    return render(
        request,
        "shell.html",
        lang,
        title=t("scan-shell-title"),
        script=_script(version, "offline.js"),
        tables=_script(version, "tables.json"),
        words=_script(version, f"words-{lang}.json"),
        typed="",
        email=quote(settings_of(request).shop_email, safe="@"),
    )


_LONGEST_ASKED = 2000


def page(
    request: Request, name: str = "base.html", *, status: int = 200, keep: bool = False, **values: Any
) -> Response:
    """The page as an answer to this request, or 304 where the phone has it already.

    ``keep``: whether caches may hold it (and ask again each time); forms and answers are not kept.
    """
    lang, units = language_of(request), units_of(request)
    if not keep:  # what was asked for stays when the language is changed
        items = [(key, text) for key, text in request.query_params.multi_items() if key not in _CHOSEN]
        asked = f"{urlencode(items)}&" if items else ""
        values["asked_too"] = asked if len(asked) <= _LONGEST_ASKED else ""  # nothing we ask for is as long
    response = HTMLResponse(render(request, name, lang, units, **values), status_code=status)
    response.headers["Content-Security-Policy"] = policy()
    response.headers["Content-Language"] = lang
    response.headers["Referrer-Policy"] = "no-referrer"
    for key in _CHOSEN:
        if key in request.query_params:
            response.set_cookie(key, lang if key == "lang" else units, max_age=_YEAR, samesite="lax")
    return kept(request, response) if keep else _not_kept(request, response)


def kept(request: Request, response: Response, cache_control: str = "") -> Response:
    """The response with its ETag; 304 without a body where the request names that ETag.

    By default it may be shown again for as long as the settings say, then it is asked about:
    the hose may have been withdrawn.
    """
    seconds = settings_of(request).page_cache_seconds
    tag = f'W/"{hashlib.sha256(bytes(response.body)).hexdigest()[:20]}"'
    response.headers["ETag"] = tag
    response.headers["Cache-Control"] = cache_control or f"public, max-age={seconds}, must-revalidate"
    response.headers["Vary"] = VARY
    response.headers.setdefault("Content-Security-Policy", NOTHING)
    asked = request.headers.get("if-none-match", "")
    if tag in [part.strip() for part in asked.split(",")]:
        headers = {
            key: value
            for key, value in response.headers.items()
            if key not in ("content-length", "content-type")
        }
        return Response(status_code=304, headers=headers)
    return _packed(request, response)


def _not_kept(request: Request, response: Response) -> Response:
    response.headers["Cache-Control"] = "no-store"
    response.headers["Vary"] = VARY
    return _packed(request, response)


def _packed(request: Request, response: Response) -> Response:
    """The response gzipped where the browser takes it. Public pages hold no secret beside what a
    visitor sends, so packing gives nothing away; signed-in pages are not packed.
    """
    if "gzip" in request.headers.get("accept-encoding", ""):
        response.body = gzip.compress(bytes(response.body), mtime=0)
        response.headers["Content-Encoding"] = "gzip"
        response.headers["Content-Length"] = str(len(response.body))
    return response


def wants(request: Request, *offered: str) -> str:
    """Which of the offered media types the request likes best (RFC 9110, 12.5.1); the first by default."""
    ranges = []
    for part in request.headers.get("accept", "*/*").split(","):
        kind, *parameters = [piece.strip() for piece in part.split(";")]
        weight = next((p[2:] for p in parameters if p.startswith("q=")), "1")
        try:
            ranges.append((kind.lower(), float(weight)))
        except ValueError:
            continue

    def liking(offer: str) -> float:
        fitting = [(len(kind.replace("*", "")), weight) for kind, weight in ranges if _covers(kind, offer)]
        return max(fitting)[1] if fitting else 0.0

    return max(offered, key=lambda offer: (liking(offer), -offered.index(offer)))


def _covers(kind: str, offer: str) -> bool:
    return kind in ("*/*", offer) or (kind.endswith("/*") and offer.startswith(kind[:-1]))


def refused(
    request: Request,
    error: TaggerError,
    *,
    status: int,
    typed: str = "",
    also: tuple[tuple[str, str], ...] = (),
    title: str = "",
) -> Response:
    """A refusal in words: what is wrong, and the mend; ``also``: (address, words) of what may be meant.

    ``title``: what did not happen, in the visitor's language; by default that a tag was not read.
    """
    t = translator_of(request)
    if wants(request, "text/html", "application/json") == "application/json":
        problems = [problem.as_dict(t) | {"text": in_words(problem, t)} for problem in error.problems]
        return _not_kept(request, JSONResponse({"problems": problems}, status_code=status))
    return page(
        request,
        "refused.html",
        status=status,
        title=title or t("scan-refused-title"),
        problems=error.problems,
        typed=typed,
        also=also,
    )


def held_off(request: Request, error: TooMany, title: str) -> Response:
    """For an order or a report too many; a phone reads in it how much work lets it through."""
    answer = refused(request, error, status=429, title=title)
    if error.work_bits:
        answer.headers["Tag-Work"] = str(error.work_bits)
    return answer


def foreign(request: Request) -> Response:
    """For a form that a page of another site sent."""
    wrong = Problem("form", None, Message("guard-form-elsewhere"))
    title = translator_of(request)("guard-form-expired-title")
    return refused(request, StoreError(wrong), status=403, title=title)


def not_there(request: Request) -> Response:
    """For an address that no page has."""
    nothing = Problem("address", request.url.path[:100], Message("scan-not_there"))
    title = translator_of(request)("scan-not_there-title")
    return refused(request, LinkError(nothing), status=404, title=title)


def in_trouble(request: Request, trouble: Trouble, title: Message) -> Response:
    """The server cannot answer for now; a phone that sends an order keeps it and sends it again."""
    return refused(request, StoreError(trouble.problem), status=503, title=translator_of(request)(title))


def json_text(value: Any) -> Markup:
    """JSON that may stand inside a script element."""
    return Markup(json.dumps(value, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c"))
