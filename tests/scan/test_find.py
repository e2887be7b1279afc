"""Finding: a tag, an order by its number; after a slip every way to look again is still there."""

from __future__ import annotations

import io
import re

import pytest
from fastapi.testclient import TestClient
from PIL import Image

from tagger.code import link, number
from tagger.code.symbol import code128, qr
from tagger.store import Assembly, Store
from tests.scan.conftest import OTHER_SHOP, path, register, text


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


def _photo(modules: list[list[bool]], scale: int = 6, tall: int = 1) -> bytes:
    rows = [row for row in modules for _ in range(tall)]
    image = Image.new("L", (len(rows[0]) + 8, len(rows) + 8), 255)
    for y, row in enumerate(rows):
        for x, dark in enumerate(row):
            image.putpixel((x + 4, y + 4), 0 if dark else 255)
    image = image.resize((image.width * scale, image.height * scale), Image.Resampling.NEAREST).rotate(
        7, expand=True, fillcolor=255
    )
    out = io.BytesIO()
    image.convert("RGB").save(out, "JPEG", quality=80)
    return out.getvalue()


def test_a_photo_of_the_qr_code_opens_the_tag(client: TestClient, assembly: Assembly) -> None:
    address = link.build("https://other.example.org", assembly.number, assembly.digits)
    modules = qr(address).modules
    photo = _photo([[bool(cell) for cell in row] for row in modules])
    answer = client.post("/find", files={"image": ("tag.jpg", photo, "image/jpeg")}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, path(assembly))


def test_a_photo_of_the_bar_code_opens_the_number(client: TestClient, assembly: Assembly) -> None:
    bars = code128(assembly.number).modules
    photo = _photo([[bool(cell) for cell in bars[0]]], scale=4, tall=40)
    answer = client.post("/find", files={"image": ("tag.jpg", photo, "image/jpeg")}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, f"/T/{assembly.number}")


def test_a_photo_without_a_tag_is_refused_with_words(client: TestClient) -> None:
    blank = io.BytesIO()
    Image.new("RGB", (300, 200), "white").save(blank, "PNG")
    for data, said in (
        (blank.getvalue(), "shows no readable code"),
        (b"no picture", "is not a readable image"),
    ):
        answer = client.post("/find", files={"image": ("x.png", data, "image/png")})
        assert answer.status_code == 422
        assert said in text(answer.text)


def test_a_photo_of_two_tags_is_refused_with_both_numbers(client: TestClient, store: Store) -> None:
    made = [register(store), register(store)]
    picture = Image.new("L", (1200, 600), 255)
    for place, one in enumerate(made):
        modules = qr(link.build("https://tags.example.com", one.number, one.digits)).modules
        file = io.BytesIO(_photo([[bool(cell) for cell in row] for row in modules], scale=4))
        picture.paste(Image.open(file).convert("L").resize((560, 560)), (place * 600 + 20, 20))
    data = io.BytesIO()
    picture.save(data, "PNG")
    answer = client.post(
        "/find", files={"image": ("x.png", data.getvalue())}, headers={"accept-language": "de"}
    )
    assert answer.status_code == 422
    assert all(number.format(one.number) in answer.text for one in made)


def test_a_typed_link_of_any_shop_opens_here(client: TestClient, assembly: Assembly) -> None:
    typed = f"HTTPS://ANOTHER.EXAMPLE/T/{assembly.number}/{assembly.digits}"
    answer = client.get("/find", params={"q": typed}, follow_redirects=False)
    assert answer.headers["location"] == path(assembly)


def test_the_address_alone_leads_to_finding_a_tag(client: TestClient) -> None:
    answer = client.get("/", follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, "/find")
    for typed in ("x" * 5000, f"https://tags.example.com/T/7K3MQ9XW2R1/{'7' * 5000}"):
        page = client.get("/find", params={"q": typed}, headers={"accept": "text/html"})
        assert page.status_code == 422 and "???" not in page.text


@pytest.mark.parametrize("address", ["/T/", "/nosuch", f"/T/{OTHER_SHOP}/123/extra"])
def test_an_address_that_holds_nothing_is_told_in_the_readers_language(
    client: TestClient, address: str
) -> None:
    page = client.get(address, headers={"accept": "text/html", "accept-language": "de"})
    assert page.status_code == 404
    assert "<h1>Seite nicht gefunden</h1>" in page.text and 'action="/find"' in page.text
    assert client.get(address, headers={"accept": "application/json"}).json()["problems"][0]["mend"]
