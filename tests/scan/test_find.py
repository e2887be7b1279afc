"""Finding: a tag, an order by its number; after a slip every way to look again is still there."""

from __future__ import annotations

import re

import pytest
from fastapi.testclient import TestClient

from tagger.store import Assembly, Store
from tests.scan.conftest import text


@pytest.mark.parametrize("typed", ["{}", " {} ", "lower"])
def test_an_order_number_leads_to_what_became_of_it(
    client: TestClient, store: Store, assembly: Assembly, typed: str
) -> None:
    order = store.request_order(number=assembly.number, contact={"phone": "555 0101"})
    typed = order.reference.lower() if typed == "lower" else typed.format(order.reference)
    answer = client.get("/find", params={"q": typed})
    assert answer.url.path == f"/order/{order.reference}"
    assert "Status received" in text(answer.text)
    unknown = client.get("/find", params={"q": "R-0000000"})
    assert unknown.status_code == 404 and "There is no order" in text(unknown.text)


@pytest.mark.parametrize("slip", ["photo", "number", "nothing of ours"])
def test_after_a_slip_every_way_to_look_again_is_there(client: TestClient, slip: str) -> None:
    if slip == "photo":
        answer = client.post("/find", files={"image": ("x.png", b"no picture")})
    else:
        answer = client.get(
            "/find", params={"q": "7K3MQ9XW2R2" if slip == "number" else "https://example.com/"}
        )
    assert answer.status_code == 422
    assert 'class="notice danger"' in answer.text
    for wanted in (
        r'<form action="/find" method="get">',
        r'<form method="post" action="/find"',
        "data-camera-start",
    ):
        assert re.search(wanted, answer.text)
    long = client.get("/find", params={"q": "x" * 5000})
    assert long.status_code == 422 and "x" * 1001 not in long.text
