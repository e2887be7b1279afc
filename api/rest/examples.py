"""One example for every operation, put into the description of the API.

examples.json holds them by method and path: what is sent (``sends``), what is answered
(``answers``), and the media types where they are not JSON.
"""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

from fastapi import APIRouter
from fastapi.routing import APIRoute

JSON = "application/json"
EXAMPLES: dict[str, dict[str, Any]] = json.loads(
    resources.files("api.rest").joinpath("examples.json").read_text(encoding="utf-8")
)


def add_to(router: APIRouter) -> None:
    """Gives each route of the router its example, where there is one."""
    for route in router.routes:
        if isinstance(route, APIRoute) and route.include_in_schema:
            for method in route.methods or ():
                if example := EXAMPLES.get(f"{method} {route.path}"):
                    route.openapi_extra = _described(example, str(route.status_code or 200))


def answer_of(operation: str) -> Any:
    """What an operation answered when the examples were recorded; None before that."""
    return EXAMPLES.get(operation, {}).get("answers")


def _described(example: dict[str, Any], status: str) -> dict[str, Any]:
    answer = {example.get("answers_as", JSON): {"example": example["answers"]}}
    found: dict[str, Any] = {"responses": {status: {"content": answer}}}
    if "sends" in example:
        found["requestBody"] = {"content": {example.get("sends_as", JSON): {"example": example["sends"]}}}
    return found
