"""The JSON API, versioned: everything the bench does, for devices and programs."""

from fastapi import APIRouter, Depends

from api.rest import (
    assemblies,
    batches,
    cards,
    customers,
    exports,
    fitted,
    fittings,
    hoses,
    lists,
    machine,
    orders,
    people,
    printers,
    record,
    scans,
    shop,
    shop_values,
    tags,
    trade,
    withdrawals,
)
from api.rest.body import well_formed
from api.rest.description import describe

router = APIRouter(dependencies=[Depends(well_formed)])
for part in (
    trade,
    scans,
    assemblies,
    record,
    batches,
    tags,
    cards,
    printers,
    machine,
    lists,
    orders,
    customers,
    fitted,
    withdrawals,
    shop,
    fittings,
    hoses,
    shop_values,
    people,
    exports,
):
    router.include_router(part.router)

__all__ = ["describe", "router"]
