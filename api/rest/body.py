"""The JSON of a request, held to RFC 8259 before anything reads it."""

from __future__ import annotations

from fastapi import Request

from tagger.intake import json_value

_FORMS = ("multipart/form-data", "application/x-www-form-urlencoded")


async def well_formed(request: Request) -> None:
    """Raises SpecError for what Python's reader would let pass: a key twice, NaN, halves of characters."""
    if request.headers.get("content-type", "").lower().startswith(_FORMS):
        return
    if body := await request.body():
        json_value(body, "body")
