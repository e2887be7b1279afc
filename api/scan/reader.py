"""What a phone keeps, to read any tag without a signal: scripts, tables, words, and a shell page."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib import resources
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, HTTPException, Request
from fastapi.responses import JSONResponse, Response

from api.scan import dims, fill, fit, pages
from api.scan.i18n import LANGUAGES, Reader, Translator, choose, messages
from api.security import content_policy
from tagger import words as plain
from tagger.code import payload
from tagger.spec import Connection
from tagger.trade.tables import Tables

router = APIRouter()
FOR_EVER = "public, max-age=31536000, immutable"
_SCRIPT = "text/javascript; charset=utf-8"


@router.get("/scan/{version}/{name}.js", include_in_schema=False)
def script(request: Request, version: str, name: str) -> Response:
    """One JavaScript module; its address changes with the content of any of them."""
    if f"{name}.js" not in pages.reader_files():
        raise HTTPException(404)
    return pages.kept(request, Response(pages.static(f"reader/{name}.js"), media_type=_SCRIPT), FOR_EVER)


@router.get("/scan-worker.js", include_in_schema=False)
def worker(request: Request) -> Response:
    """The service worker; the version in it makes a phone fetch the new files."""
    text = pages.static("scan-worker.js").decode()
    files = [pages.script(name) for name in pages.reader_files()]
    text = text.replace('"{{version}}"', f'"{pages.version()}"').replace(
        '["{{files}}"]', pages.json_text(files)
    )
    response = Response(text, media_type=_SCRIPT)
    response.headers["Content-Security-Policy"] = content_policy()
    return pages.kept(request, response, "no-cache")


@router.get("/scan.webmanifest", include_in_schema=False)
def manifest(request: Request) -> Response:
    """Lets a phone put the reader on its home screen."""
    t = Translator(choose(request))
    values = {
        "name": t("Hose tag reader"), "short_name": t("Hose tags"), "start_url": "/find", "scope": "/",
        "display": "browser", "background_color": "#ffffff", "theme_color": "#003e80",
        "icons": [{"src": "/static/scan-icon.svg", "sizes": "any", "type": "image/svg+xml"}],
    }  # fmt: skip
    return pages.kept(request, JSONResponse(values, media_type="application/manifest+json"))


@router.get("/scan/shell", include_in_schema=False)
def shell(request: Request) -> Response:
    """The page that a phone fills by itself when the network is gone."""
    lang = choose(request)
    t = Translator(lang)
    return pages.page(
        request,
        "shell.html",
        keep=True,
        title=t("Hose tag"),
        script=pages.script("offline.js"),
        tables=pages.script("tables.json"),
        words=pages.script(f"words-{lang}.json"),
        email=quote(request.app.state.settings.shop_email, safe="@"),
    )


@router.get("/scan/{version}/tables.json", include_in_schema=False)
def tables(request: Request, version: str) -> Response:
    """What every language shares: layouts, code points, dimensions."""
    return _kept(request, version, "shared", lambda: shared_tables(request.app.state.tables))


@router.get("/scan/{version}/words-{lang}.json", include_in_schema=False)
def words(request: Request, version: str, lang: str) -> Response:
    """Templates, names, sentences and fitting steps in one language."""
    if lang not in LANGUAGES:
        raise HTTPException(404)
    return _kept(request, version, lang, lambda: words_of(lang, request.app.state.tables))


def _kept(request: Request, version: str, name: str, make: Callable[[], dict[str, Any]]) -> Response:
    """JSON that is made once a process, and kept for ever by a phone under its version."""
    made: dict[str, dict[str, Any]] = request.app.state.__dict__.setdefault("scan_json", {})
    if name not in made:
        made[name] = make()
    return pages.kept(request, JSONResponse(made[name]), FOR_EVER if version == pages.version() else "")


def shared_tables(tables: Tables) -> dict[str, Any]:
    """Everything that is data and not language."""
    layouts = {"1": _layout(1)}
    named = {field["table"] for layout in layouts.values() for field in layout["fields"] if "table" in field}
    sources = _Numbered()
    rules = fit.rules(tables)
    rules["bends"] = {key: [mm, sources.place(source)] for key, (mm, source) in rules["bends"].items()}
    return {
        "layouts": layouts,
        "points": {
            table: {str(p): n for p, n in payload.names(table).items()}
            for table in sorted(named | {"thread"})
        },
        "sized_by": {c.value: c.sized_by.value for c in Connection},
        "mating": {
            key: [m.thread, m.across_mm, sources.place(m.source)] for key, m in dims.all_of(tables).items()
        },
        "fit": rules,
        "storage": {
            "life": tables.rule("assembly_life_years_din").value,
            "shelf": tables.rule("assembly_storage_years_iso").value,
        },
        "sources": sources.texts,
    }


class _Numbered:
    """Texts that many rows share, each kept once."""

    def __init__(self) -> None:
        self.texts: list[str] = []

    def place(self, text: str) -> int:
        if text not in self.texts:
            self.texts.append(text)
        return self.texts.index(text)


def words_of(lang: str, tables: Tables) -> dict[str, Any]:
    """One language, as the phone needs it. English needs no sentences: they are their own keys."""
    w = plain.Words(lang)
    names = {
        "connection": {key.value: w.t(text) for key, text in plain.CONNECTIONS.items()},
        "form": {key.value: w.t(text) for key, text in plain.FORMS.items()},
        "material": {key.value: w.t(text) for key, text in plain.MATERIALS.items()},
        "basis": {key.value: w.t(text) for key, text in plain.BASES.items()},
        "length_basis": {key.value: w.t(text) for key, text in plain.LENGTH_BASES.items()},
        "fluid": {key.value: w.t(text) for key, text in plain.FLUIDS.items()},
        "cover": {key.value: w.t(text) for key, text in plain.COVERS.items()},
    }
    used = _used_on_the_phone()
    return {
        "lang": lang,
        "templates": {name: fill.translated(name, lang) for name in fill.TEMPLATES},
        "names": names,
        "messages": {key: text for key, text in messages(lang).items() if key in used},
        "steps": fit.steps_of(Reader(lang, tables)),
    }


@cache
def _used_on_the_phone() -> frozenset[str]:
    """The strings that the scripts look up: t("...") in any module."""
    from api.scan.catalogue import in_scripts

    return frozenset(in_scripts())


@cache
def _layout(version: int) -> dict[str, Any]:
    import json

    file = resources.files("tagger.code").joinpath(f"data/payload_v{version}.json")
    layout: dict[str, Any] = json.loads(file.read_text(encoding="utf-8"))
    return {"fields": layout["fields"]}
