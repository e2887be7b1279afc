"""The JSON API, versioned: everything the bench does, for devices and programs."""

from fastapi import APIRouter

from api.rest import assemblies, examples, exports, lists, orders, printers, shop, tags, trade

router = APIRouter()
for part in (trade, assemblies, tags, printers, lists, orders, shop, exports):
    examples.add_to(part.router)
    router.include_router(part.router)
