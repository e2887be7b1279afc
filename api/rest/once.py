"""Idempotency-Key on every POST that writes: the same request again has the same answer, nothing twice.

What was answered is kept in the transaction of what was done (``Store.once``). The fingerprint of a
request is keyed by the device's own token, which is kept nowhere in clear: so a password in a
request cannot be guessed from its fingerprint.
"""

from __future__ import annotations

import hashlib
import hmac
import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any, TypeVar

from fastapi import Depends, Header, Request
from pydantic import TypeAdapter
from starlette.datastructures import UploadFile

from api.rest.problem import NoToken
from api.web.identity import bearer, device
from api.web.state import store_of
from tagger.store import Store

MAX_KEY = 80
Key = Annotated[
    str | None,
    Header(
        alias="Idempotency-Key",
        min_length=1,
        max_length=MAX_KEY,
        description="Your own text for this request, for example a random UUID. Repeating the request with the "
        "same key has the same answer, and nothing is done twice; another request with it is refused with 409. "
        "Keys are each device's own, and are kept for ever.",
    ),
]


T = TypeVar("T")
P = TypeVar("P")


@dataclass(frozen=True)
class Once:
    """Does an act once for the key that came with a request; without a key, each time it is asked for."""

    store: Store
    key: str | None
    fingerprint: str

    def __call__(self, answer: type[T], act: Callable[[], T]) -> T:
        """What ``act`` answers, or answered before; all that it writes is one transaction."""
        if self.key is None:
            return self.store.act(lambda _: act())
        shape: TypeAdapter[T] = TypeAdapter(answer)

        def kept() -> dict[str, Any]:
            return {"is": shape.dump_python(act(), mode="json")}

        return shape.validate_python(self.store.once(self.key, self.fingerprint, kept)["is"])

    def prepared(self, answer: type[T], prepare: Callable[[], P], act: Callable[[P], T]) -> T:
        """The same with what takes long done first, while others may write; for a repeat not at all."""
        if self.key is not None:
            before = self.store.answered(self.key, self.fingerprint)
            if before is not None:
                return TypeAdapter(answer).validate_python(before["is"])
        ready = prepare()
        return self(answer, lambda: act(ready))


async def _sent(request: Request) -> str:
    """What was sent, alike for alike requests: order of JSON's members and a form's boundary aside."""
    if request.headers.get("content-type", "").startswith("multipart/"):
        parts: list[Any] = []
        for name, value in (await request.form()).multi_items():
            if isinstance(value, UploadFile):
                digest = hashlib.sha256(await value.read()).hexdigest()
                await value.seek(0)
                parts.append([name, value.filename, digest])
            else:
                parts.append([name, value])
        return json.dumps(parts)
    body = await request.body()
    try:
        return json.dumps(json.loads(body), sort_keys=True)
    except ValueError:  # none, or no JSON: whoever reads it says so
        return body.hex()


def _once(request: Request, sent: Annotated[str, Depends(_sent)], key: Key = None) -> Once:
    token = device(request)
    if token is None:
        raise NoToken
    mark = hmac.new(bearer(request).encode(), digestmod=hashlib.sha256)
    for part in (request.method, request.url.path, request.url.query, sent):
        mark.update(f"{len(part)} {part}".encode())
    own = f"api {token.id} {key}" if key else None  # two devices may choose the same key
    return Once(store_of(request), own, mark.hexdigest())


DoOnce = Annotated[Once, Depends(_once)]
