"""The signed-in pages: build, prove, print, find, orders, withdrawals, lists, figures."""

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench import (
    build,
    figures,
    find,
    identify,
    lists,
    orders,
    prints,
    record,
    shop,
    sign_in,
    starts,
    withdraw,
)
from api.bench.page import go
from api.identity import Builder

router = APIRouter(include_in_schema=False)
for part in (sign_in, build, identify, starts, prints, record, find, orders, withdraw, shop, figures, lists):
    router.include_router(part.router)


@router.get("")
def bench(request: Request, me: Builder) -> Response:
    """The day begins on the build page."""
    return go("/bench/build")
