"""The page of assemblies that were rated higher than the tables of today allow."""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import render
from api.web.identity import Builder
from api.web.state import store_of, tables_of
from tagger.messages import Message
from tagger.store.overrated import every_overrated

router = APIRouter()


@router.get("/overrated")
def overrated_page(request: Request, me: Builder) -> Response:
    return render(
        request,
        "overrated.html",
        title=Message("bench-overrated"),
        rows=list(every_overrated(store_of(request), tables_of(request))),
    )
