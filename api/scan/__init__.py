"""The public pages behind the symbol on a tag."""

from __future__ import annotations

from fastapi import APIRouter

from api.scan import (
    find,
    fitted,
    gauges,
    glossary,
    held,
    identify,
    machine_hoses,
    measure,
    orders,
    reader,
    tag_page,
)

router = APIRouter()
for part in (
    tag_page,
    orders,
    fitted,
    machine_hoses,
    find,
    gauges,
    glossary,
    held,
    identify,
    measure,
    reader,
):
    router.include_router(part.router)

__all__ = ["router"]
