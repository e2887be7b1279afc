"""The JSON API, versioned."""

from fastapi import APIRouter

router = APIRouter()
