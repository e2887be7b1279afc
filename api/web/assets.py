"""Static files at addresses that change with their content, so that caches may keep them for ever."""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

from starlette.responses import Response
from starlette.staticfiles import StaticFiles
from starlette.types import Scope

FOLDER = Path(__file__).parents[1] / "static"
FOR_EVER = "public, max-age=31536000, immutable"
SHORT = "public, max-age=60"


def url(name: str) -> str:
    """The address of ``api/static/<name>``: it changes when the file does."""
    path = FOLDER / name
    return f"/static/{name}?v={_hash(path, path.stat().st_mtime_ns)}"


@cache
def _hash(path: Path, _changed: int) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()[:12]


class Static(StaticFiles):
    """Serves the folder; only an address with the right hash may be kept for ever."""

    async def get_response(self, path: str, scope: Scope) -> Response:
        response = await super().get_response(path, scope)
        file = FOLDER / path
        if file.is_file():
            right = f"v={_hash(file, file.stat().st_mtime_ns)}".encode()
            response.headers["Cache-Control"] = FOR_EVER if scope["query_string"] == right else SHORT
        return response
