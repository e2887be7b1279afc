"""The description of the API (OpenAPI 3.1), completed with what the routes do not say themselves.

The framework makes it of the routes and leaves null out of every example; here each operation gets its
example as it was answered, its errors, and what it needs to be let in.
"""

from __future__ import annotations

from typing import Any

from fastapi import FastAPI

from api.rest import errors, examples
from api.rest.problem import BASE

TOKEN = "token"
_SCHEME = {
    "type": "http",
    "scheme": "bearer",
    "description": "A device's token: made on the bench, with POST /tokens, or by `tagger token`.",
}
_FILE = {"type": "string", "format": "binary"}


def describe(app: FastAPI, *, base_url: str) -> None:
    """From now on the description is complete. ``base_url``: where the shop's server is reached."""
    plain = app.openapi

    def openapi() -> dict[str, Any]:
        if app.openapi_schema is None:
            _complete(plain(), base_url.rstrip("/"))
        return plain()

    app.openapi = openapi  # type: ignore[method-assign]


def _complete(described: dict[str, Any], base_url: str) -> None:
    described["servers"] = [{"url": base_url}]
    described["components"]["securitySchemes"] = {TOKEN: _SCHEME}
    _name_files(described["components"]["schemas"])
    for path, verbs in described["paths"].items():
        for verb, operation in verbs.items():
            operation["security"] = [{TOKEN: []}]
            examples.put_into(f"{verb.upper()} {path.removeprefix(BASE)}", operation)
            errors.put_into(operation)
            for answer in operation["responses"].values():
                for media, content in answer.get("content", {}).items():
                    if media.partition("/")[0] in ("application", "image") and not media.endswith("json"):
                        content["schema"] = _FILE
    tags = {tag for verbs in described["paths"].values() for about in verbs.values() for tag in about["tags"]}
    described["tags"] = [{"name": tag} for tag in sorted(tags)]


def _name_files(schemas: dict[str, Any]) -> None:
    """Makes uploaded files binary in the words of OpenAPI 3.0 too, which generators of clients look for."""
    for schema in schemas.values():
        for member in schema.get("properties", {}).values():
            if member.get("contentMediaType") == "application/octet-stream":
                member["format"] = "binary"
