"""The signed-in pages: build, prove, print, find, orders, withdrawals, lists, figures."""

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench import (
    batch,
    build,
    cards,
    crimp_cards,
    customers,
    figures,
    find,
    fitted,
    flushing,
    gauges,
    hoses,
    identify,
    lists,
    management,
    measure,
    orders,
    overrated,
    own_account,
    papers,
    print_jobs,
    printers,
    printing,
    record,
    second_factor,
    sign_in,
    starts,
    stock,
    templates,
    top,
    withdraw,
)
from api.bench.page import go
from api.web.identity import Builder

router = APIRouter(include_in_schema=False)
for part in (
    sign_in,
    second_factor,
    own_account,
    build,
    identify,
    measure,
    gauges,
    starts,
    top,
    printing,
    batch,
    flushing,
    print_jobs,
    templates,
    record,
    cards,
    papers,
    find,
    fitted,
    hoses,
    crimp_cards,
    customers,
    orders,
    overrated,
    withdraw,
    management,
    printers,
    figures,
    lists,
    stock,
):
    router.include_router(part.router)


@router.get("")
def bench(request: Request, me: Builder) -> Response:
    """The day begins on the build page."""
    return go("/bench/build")
