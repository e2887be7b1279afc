"""The JSON API, versioned: everything the bench does, for devices and programs."""

from fastapi import APIRouter

from api.rest import assemblies, exports, orders

router = APIRouter()
for part in (assemblies, orders, exports):
    router.include_router(part.router)
