"""For whoever watches the server: does it live, and can it do its work. Nothing is told of the shop."""

from __future__ import annotations

import time
from threading import Lock

from fastapi import APIRouter, Request
from starlette.responses import JSONResponse

from api.web.state import store_of
from tagger.store.readiness import readiness

PATHS = ("/health", "/ready")
_FRESH_S = 1.0
router = APIRouter(include_in_schema=False)


class Ready:
    """What was last found, so that being asked often is no load."""

    def __init__(self) -> None:
        self._lock, self._at = Lock(), float("-inf")
        self._found: dict[str, bool] = {}

    def of(self, request: Request) -> dict[str, bool]:
        """By name what holds, at most a second old."""
        with self._lock:
            if time.monotonic() - self._at > _FRESH_S:
                self._found, self._at = readiness(store_of(request).database), time.monotonic()
            return dict(self._found)


@router.get("/health")
async def health() -> JSONResponse:
    """200 as long as the process answers; it asks nothing and waits for nobody."""
    return JSONResponse({"ok": True}, headers={"Cache-Control": "no-store"})


@router.get("/ready")
def ready(request: Request) -> JSONResponse:
    """200 where requests can be answered and kept, else 503 with what does not hold."""
    found: dict[str, bool] = request.app.state.ready.of(request)
    whole = all(found.values())
    headers = {"Cache-Control": "no-store"} | ({} if whole else {"Retry-After": "5"})
    return JSONResponse({"ok": whole, **found}, 200 if whole else 503, headers)
