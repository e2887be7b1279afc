"""A public form as it arrives: its texts, and its photos written anew."""

from __future__ import annotations

from typing import Annotated, Any, Final

from fastapi import Depends, Request
from starlette.datastructures import UploadFile

from api.shared import pictures
from api.web.identity import BadForm, from_elsewhere
from api.web.limits import Limiter, asker
from api.web.state import store_of
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store import Allowance, Store

MOST_PHOTOS: Final = 2
AN_HOUR: Final = 40
"""How many photos one address may send in an hour."""
A_DAY: Final = 1000
"""How many all addresses together may send in a day, to whichever server: no disk is filled by strangers. One is
some 300 kB once it is written anew."""


class Received:
    """``texts`` as typed; ``photos`` are written anew when they are asked for."""

    def __init__(
        self, texts: dict[str, str], files: dict[str, bytes], limiter: Limiter, client: str, store: Store
    ) -> None:
        self.texts = texts
        self._files, self._limiter, self._client, self._store = files, limiter, client, store

    def photos(self, **names: str) -> dict[str, bytes]:
        """The photos of these fields by what they show. Raises StoreError naming the field."""
        found = {}
        for field, what in names.items():
            if data := self._files.get(field):
                if not self._limiter.allow(self._client):
                    raise StoreError(Problem(field, None, Message("guard-pictures-too-many")))
                found[what] = pictures.written_anew(data, field)
                if self._store.try_now({"photos of a day": Allowance(A_DAY, 24 * 3600)}):
                    raise StoreError(Problem(field, None, Message("guard-pictures-full")))
        return found


async def _received(request: Request) -> Received:
    if from_elsewhere(request):
        raise BadForm
    texts: dict[str, str] = {}
    files: dict[str, bytes] = {}
    async with request.form(max_files=MOST_PHOTOS, max_fields=40) as form:
        for name, value in form.multi_items():
            if isinstance(value, UploadFile):
                files[name] = await value.read(pictures.MOST_BYTES + 1)
            else:
                texts[name] = value
    state: Any = request.app.state
    if not hasattr(state, "photo_limit"):
        state.photo_limit = Limiter(AN_HOUR, 3600)
    return Received(texts, files, state.photo_limit, asker(request), store_of(request))


ReceivedForm = Annotated[Received, Depends(_received)]
