"""What a phone keeps, to read any tag without a signal: scripts, tables, words, and a shell page."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from fastapi import APIRouter, HTTPException, Request
from fastapi.responses import JSONResponse, Response

from api.scan import glossary, identify, identify_kit, pages, scripts
from api.scan.kit import tables_and_keys, words_of
from api.web.headers import content_policy
from api.web.language import translator_of
from api.web.state import keys_of, tables_of
from tagger.code.signature import SIGNED_TEXT
from tagger.i18n import LANGUAGES
from tagger.signing import WELL_KNOWN

router = APIRouter()
FOR_EVER = "public, max-age=31536000, immutable"
_SCRIPT = "text/javascript; charset=utf-8"


@router.get("/scan/{version}/{name:path}.js", include_in_schema=False)
def script(request: Request, version: str, name: str) -> Response:
    """One JavaScript module; its address changes with the content of any of them."""
    if f"{name}.js" not in scripts.names():
        raise HTTPException(404)
    return pages.kept(request, Response(scripts.small(f"{name}.js"), media_type=_SCRIPT), FOR_EVER)


@router.get("/scan-worker.js", include_in_schema=False)
def worker(request: Request) -> Response:
    """The service worker; the version in it makes a phone fetch the new files."""
    text = scripts.worker().replace("{{version}}", pages.version(request))
    text = text.replace("{{signs}}", "yes" if keys_of(request).keys else "")
    response = Response(text, media_type=_SCRIPT)
    response.headers["Content-Security-Policy"] = content_policy()
    return pages.kept(request, response, "no-cache")


@router.get("/scan/{version}/kit.json", include_in_schema=False)
def kit(request: Request, version: str) -> Response:
    """The tables, and the scripts that no page loads by itself, as one answer: few round trips on a bad line."""

    keys = keys_of(request)

    def make() -> dict[str, Any]:
        found = {
            pages.script(request, name): _file(_SCRIPT, scripts.small(name))
            for name in scripts.names()
            if name not in scripts.of_the_page()  # the browser has them
            and name not in (*scripts.APART, scripts.LIBRARY)
        }
        shared = tables_and_keys(tables_of(request), keys)
        return found | {pages.script(request, "tables.json"): _file("application/json", shared)}

    return _kept(request, version, "kit", make)


@router.get("/scan/{version}/identify.json", include_in_schema=False)
def identify_shared(request: Request, version: str) -> Response:
    """What identifies an end without a signal, and other scripts that reading a tag does not ask for."""

    def make() -> dict[str, Any]:
        found = {pages.script(request, name): _file(_SCRIPT, scripts.small(name)) for name in scripts.APART}
        rows = identify_kit.candidates(tables_of(request))
        return found | {pages.script(request, "candidates.json"): _file("application/json", rows)}

    return _kept(request, version, "identify", make)


@router.get("/scan/{version}/identify-{lang}.json", include_in_schema=False)
def identify_in(request: Request, version: str, lang: str) -> Response:
    """Its page and its words in one language."""
    if lang not in LANGUAGES:
        raise HTTPException(404)

    def make() -> dict[str, Any]:
        words = identify_kit.words_of(lang, tables_of(request))
        return {
            pages.script(request, f"more-{lang}.json"): _file("application/json", words),
            f"/scan/identify?lang={lang}": _page(identify.kept_page(request, lang, pages.version(request))),
        }

    return _kept(request, version, f"identify-{lang}", make)


@router.get("/scan/{version}/glossary-{lang}.json", include_in_schema=False)
def glossary_in(request: Request, version: str, lang: str) -> Response:
    """The trade's words in one language."""
    if lang not in LANGUAGES:
        raise HTTPException(404)

    def make() -> dict[str, Any]:
        return {f"/scan/glossary?lang={lang}": _page(glossary.kept_page(request, lang))}

    return _kept(request, version, f"glossary-{lang}", make)


@router.get("/scan/{version}/kit-{lang}.json", include_in_schema=False)
def kit_of(request: Request, version: str, lang: str) -> Response:
    """One language's words and shell page as one answer."""
    if lang not in LANGUAGES:
        raise HTTPException(404)

    def make() -> dict[str, Any]:
        words = words_of(lang, tables_of(request))
        page = _page(pages.shell(request, lang, pages.version(request)))
        return {
            pages.script(request, f"words-{lang}.json"): _file("application/json", words),
            f"/scan/shell?lang={lang}": page,
        }

    return _kept(request, version, f"kit-{lang}", make)


def _file(kind: str, text: object) -> dict[str, Any]:
    """``text``: of JSON its value, which packs smaller than JSON within JSON."""
    return {"type": kind, "text": text}


def _page(text: str) -> dict[str, Any]:
    return _file("text/html; charset=utf-8", text) | {"policy": pages.policy()}


@router.get(WELL_KNOWN, include_in_schema=False)
def public_keys(request: Request) -> Response:
    """The keys by which anybody verifies the shop's signed tags; none where it does not sign."""
    values = {
        "about": "Public keys of hose assembly tags: the last one signs, the others did until their last day.",
        "algorithm": "Ed25519 (RFC 8032)",
        "signed_text": SIGNED_TEXT,
        "keys": keys_of(request).as_published(),
    }
    return pages.kept(request, JSONResponse(values))


@router.get("/scan.webmanifest", include_in_schema=False)
def manifest(request: Request) -> Response:
    """Lets a phone put the reader on its home screen."""
    t = translator_of(request)
    values = {
        "name": t("scan-app-name"),
        "short_name": t("scan-app-short_name"),
        "start_url": "/find",
        "scope": "/",
        "display": "browser",
        "background_color": "#ffffff",
        "theme_color": "#003e80",
        "icons": [{"src": "/static/scan-icon.svg", "sizes": "any", "type": "image/svg+xml"}],
    }
    return pages.kept(request, JSONResponse(values, media_type="application/manifest+json"))


def _kept(request: Request, version: str, name: str, make: Callable[[], dict[str, Any]]) -> Response:
    """JSON that is made once for a version, and kept for ever by a phone under it."""
    made: dict[str, tuple[str, dict[str, Any]]] = request.app.state.__dict__.setdefault("scan_json", {})
    now = pages.version(request)
    of, values = made.get(name, ("", {}))
    if of != now:  # made anew where the shop's keys or its tables have changed
        values = make()
        made[name] = now, values
    return pages.kept(request, JSONResponse(values), FOR_EVER if version == now else "")
