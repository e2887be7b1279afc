"""The signed-in pages: build, print, find, orders, withdrawals."""

from fastapi import APIRouter

router = APIRouter()
