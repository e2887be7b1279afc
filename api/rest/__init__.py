"""The JSON API, versioned: everything the bench does, for devices and programs."""

from fastapi import APIRouter

from api.rest import (
    assemblies,
    examples,
    exports,
    lists,
    machine,
    orders,
    people,
    record,
    scans,
    shop,
    tags,
    trade,
    withdrawals,
)
from api.rest.errors import describe

router = APIRouter()
for part in (
    trade, scans, assemblies, record, tags, machine, lists, orders, withdrawals, shop, people, exports,
):  # fmt: skip
    examples.add_to(part.router)
    router.include_router(part.router)

__all__ = ["describe", "router"]
