"""Identifying a hose whose tag is lost."""

from __future__ import annotations

from fastapi import APIRouter

router = APIRouter()
