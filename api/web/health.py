"""For whoever watches the server: does it live, and can it do its work. Nothing is told of the shop."""

from __future__ import annotations

import asyncio
import time
from concurrent.futures import Future
from threading import Lock, Thread

from fastapi import APIRouter, Request
from starlette.responses import JSONResponse

from api.web.state import store_of
from tagger.store.database import Database
from tagger.store.readiness import NOTHING, readiness

PATHS = ("/health", "/ready")
_FRESH_S, WITHIN_S = 1.0, 1.5
GIVEN_UP_S = 5.0
"""How long one question may take. A connection whose other end is gone without a word never answers."""
router = APIRouter(include_in_schema=False)


class Ready:
    """What was last found, so that being asked often is no load.

    The database is asked by one thread of its own: where it hangs, nobody who watches waits for it, and none of the
    threads that answer requests is held.
    """

    def __init__(self) -> None:
        self._lock, self._at, self._since = Lock(), float("-inf"), float("-inf")
        self._asked: Future[dict[str, bool]] | None = None

    async def of(self, database: Database) -> dict[str, bool]:
        """By name what holds, at most a second old; nothing of a database that has not answered in time."""
        asked = asyncio.wrap_future(self._ask(database))
        try:
            found = await asyncio.wait_for(asyncio.shield(asked), WITHIN_S)
        except TimeoutError:
            found = NOTHING
        return dict(found)

    def _ask(self, database: Database) -> Future[dict[str, bool]]:
        """What was found a moment ago, is being asked, or is asked from now on.

        A question that is given up is asked anew, and every request after it, over new connections.
        """
        with self._lock:
            now = time.monotonic()
            given_up = self._asked is not None and not self._asked.done() and now - self._since > GIVEN_UP_S
            if given_up:
                database.connect_anew()
            if self._asked is None or given_up or (self._asked.done() and now - self._at > _FRESH_S):
                self._asked, self._since = Future(), now
                Thread(target=self._find, args=(database, self._asked), daemon=True).start()
            return self._asked

    def _find(self, database: Database, asked: Future[dict[str, bool]]) -> None:
        try:
            found = readiness(database)
        except BaseException as error:
            self._at = time.monotonic()
            asked.set_exception(error)
        else:
            self._at = time.monotonic()
            asked.set_result(found)


@router.get("/health")
async def health() -> JSONResponse:
    """200 as long as the process answers; it asks nothing and waits for nobody."""
    return JSONResponse({"ok": True}, headers={"Cache-Control": "no-store"})


@router.get("/ready")
async def ready(request: Request) -> JSONResponse:
    """200 where requests can be answered and kept, else 503 with what does not hold; within two seconds."""
    found: dict[str, bool] = await request.app.state.ready.of(store_of(request).database)
    whole = all(found.values())
    headers = {"Cache-Control": "no-store"} | ({} if whole else {"Retry-After": "5"})
    return JSONResponse({"ok": whole, **found}, 200 if whole else 503, headers)
