"""A client that a generator made of the description alone works: nobody has to read our code to use the API."""

from __future__ import annotations

import importlib
import io
import json
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import httpx
import pytest

from api.rest.shared import EXAMPLE_SPEC
from tagger.store import Role, Store
from tests.rest.examples import LIST

NAME = "a_strangers_client"
FILES = ("application/pdf", "image/png", "image/svg+xml", "image/vnd.dxf", "image/jpeg", "application/zip",
         "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")  # fmt: skip
"""The generator knows a file by one media type alone, and takes others for it where it is told to."""


@pytest.fixture
def made(
    api: httpx.Client, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Callable[[str], Any]]:
    """Gives a module of the package that the generator has made."""
    described, config = tmp_path / "openapi.json", tmp_path / "config.json"
    described.write_text(api.get("/openapi.json").text, encoding="utf-8")
    overrides = dict.fromkeys(FILES, "application/octet-stream")
    config.write_text(json.dumps({"content_type_overrides": overrides, "post_hooks": []}), encoding="utf-8")
    command = [sys.executable, "-m", "openapi_python_client", "generate", "--meta", "none", "--path", str(described),
               "--config", str(config), "--output-path", str(tmp_path / NAME), "--fail-on-warning"]  # fmt: skip
    done = subprocess.run(command, capture_output=True, text=True)
    assert done.returncode == 0 and "WARNING" not in done.stdout, done.stdout + done.stderr
    monkeypatch.syspath_prepend(str(tmp_path))
    yield lambda name: importlib.import_module(f"{NAME}.{name}")
    for name in [name for name in sys.modules if name.split(".")[0] == NAME]:
        del sys.modules[name]


def test_a_generated_client_registers_prints_guides_and_orders(
    made: Callable[[str], Any], api: httpx.Client, store: Store, url: str, tmp_path: Path
) -> None:
    described = api.get("/openapi.json").json()
    modules = [file for file in (tmp_path / NAME / "api").glob("*/*.py") if file.name != "__init__.py"]
    operations = {about["operationId"] for verbs in described["paths"].values() for about in verbs.values()}
    assert len({file.stem for file in modules}) == len(operations)

    models, types = made("models"), made("types")
    _, secret = store.make_token("a stranger's program", Role.COUNTER)
    client = made("client").AuthenticatedClient(url, secret)

    register = made("api.assemblies.register_api_v1_assemblies_post")
    spec = models.RegisterInSpec.from_dict(EXAMPLE_SPEC)
    registered = register.sync(
        client=client, body=models.RegisterIn(spec=spec, count=2, customer="Quarry North")
    )
    first, second = registered.numbers
    assert [store.assembly(number).customer for number in (first, second)] == ["Quarry North"] * 2

    prints = made("api.assemblies.print_tags_api_v1_prints_post")
    printed = prints.sync_detailed(client=client, body=models.PrintIn(numbers=[first, second]))
    assert printed.parsed.payload.read().startswith(b"%PDF-")
    refused = prints.sync(client=client, body=models.PrintIn(numbers=[first]))
    assert (refused.status, refused.problems[0].id) == (409, "rest-printed-already")

    guide = made("api.tags.fit_steps_api_v1_fit_steps_get").sync(client=client, tag=first)
    assert guide.number == first and guide.end_a and guide.end_b

    contact = models.Contact(name="Mara", phone="555 0100")
    wanted = models.OrderIn(number=first, quantity=3, contact=contact)
    order = made("api.orders.add_api_v1_orders_post").sync(client=client, body=wanted)
    assert (order.number, order.quantity, order.needed_by) == (first, 3, None)

    file = types.File(payload=io.BytesIO(LIST.encode()), file_name="list.csv", mime_type="text/csv")
    body = models.BodyDryRunApiV1ListsDryRunPost(file=file)
    dry = made("api.lists.dry_run_api_v1_lists_dry_run_post").sync(client=client, body=body)
    assert (dry.rows, dry.pieces, dry.problems) == (1, 2, [])

    nobody = made("client").AuthenticatedClient(url, "tag_of_nobody")
    answer = made("api.tags.label_templates_api_v1_templates_get").sync(client=nobody)
    assert (answer.status, answer.id) == (401, "rest-no-token")
