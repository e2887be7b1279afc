"""Requests that a stranger's program makes up from the description of the API alone, sent to a real server.

``schemathesis`` reads openapi.json and sends what it allows and what it forbids. Nothing may fail (5xx), every
answer has the status, media type, headers and shape that the description gives it, and what it forbids is refused.
"""

from __future__ import annotations

import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import httpx
from sqlalchemy import update

from api.settings import Settings
from tagger.store import Role, Store
from tagger.store.models import TokenRow
from tests.bench.served import serving
from tests.databases import fresh_sqlite
from tests.rest.examples import record

CHECKS = (
    "not_a_server_error",
    "status_code_conformance",
    "content_type_conformance",
    "response_headers_conformance",
    "response_schema_conformance",
    "negative_data_rejection",
    "missing_required_header",
    "unsupported_method",
    "ignored_auth",
)
OWN_TOKEN = 1_234_567_891
"""The id of the token that the requests carry: no number that is made up meets it, so none revokes it."""
WITHOUT_END = 1_000_000_000


@dataclass(frozen=True)
class Run:
    """What came of it; ``cases``: requests that were made up, ``output``: in words, with how to send each failure again."""

    right: bool
    cases: int
    operations: int
    output: str


def run(folder: Path, *options: str, filled: bool) -> Run:
    """Every operation of a shop. ``options``: of ``schemathesis run``; ``filled``: it has something of everything."""
    with Store.open(fresh_sqlite(folder)) as store:
        device, secret = store.make_token("a stranger's program", Role.MANAGER)
        with store.writing() as session:
            session.execute(update(TokenRow).where(TokenRow.id == device.id).values(id=OWN_TOKEN))
        settings = Settings(
            base_url="https://tags.example.com",
            public_requests_per_minute=WITHOUT_END,
            signed_in_requests_per_minute=WITHOUT_END,
        )
        with serving(settings, store) as served:
            base, bearer = f"{served.url}/api/v1", f"Authorization: Bearer {secret}"
            if filled:
                headers = {"Authorization": f"Bearer {secret}"}
                with httpx.Client(base_url=base, headers=headers, timeout=60) as api:
                    record(api, store)
            described = folder / "openapi.json"  # the program waits 10 s for it, which is not always enough
            described.write_bytes(httpx.get(f"{base}/openapi.json", timeout=None).content)
            return _sent(folder, str(described), served.url, bearer, options)


def _sent(folder: Path, schema: str, url: str, bearer: str, options: tuple[str, ...]) -> Run:
    command = [
        *(sys.executable, "-m", "schemathesis.cli", "run", schema, "--url", url, "--header", bearer),
        *("--checks", ",".join(CHECKS), "--seed", "1", "--generation-database", "none", "--no-color"),
        *("--suppress-health-check", "all", "--warnings", "off", "--continue-on-failure"),
        *("--request-timeout", "60", *options),
    ]
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True)
    output = done.stdout + done.stderr
    return Run(
        done.returncode == 0, _number(r"(\d+) generated", output), _number(r"Tested: (\d+)", output), output
    )


def _number(pattern: str, output: str) -> int:
    found = re.search(pattern, output)
    return int(found[1]) if found else 0
