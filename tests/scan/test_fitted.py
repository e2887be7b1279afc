"""A report of fitting as a stranger sends it; the life by the sources; the calendar file."""

from __future__ import annotations

import re
from datetime import date
from io import BytesIO

import pytest
from fastapi.testclient import TestClient
from PIL import Image

from api.app import create_app
from api.scan import received
from api.scan.fitted import calendar_of
from api.settings import Settings
from tagger.code import number as tag_number
from tagger.i18n import LANGUAGES, Translator
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess
from tagger.trade.servicelife import ReplaceBy
from tests.scan.conftest import OTHER_SHOP, SPEC, path, text
from tests.scan.in_node import in_node

JSON = {"accept": "application/json"}


def made(store: Store, **record: object) -> str:
    spec = AssemblySpec.read(SPEC)
    return store.register(spec, assess(spec), **record)[0].number  # type: ignore[arg-type]


def test_a_report_is_kept_once_is_no_fact_until_the_shop_agrees_and_names_nobody(
    client: TestClient, store: Store
) -> None:
    number = made(store, built_on=date(2025, 1, 2))
    data = {
        "number": number, "fitted_on": "2026-03-04", "machine": "Loader 4", "machine_hours": "1 234,5",
        "fitted_by": "Anna Quarry", "key": "k1",
    }  # fmt: skip
    for _ in range(2):
        answer = client.post("/fitted", data=data, headers=JSON)
        assert answer.status_code == 201
        assert answer.json() == {"reference": tag_number.format(number), "page": f"/fitted/{number}"}
    (report,) = store.fitted_reports()
    assert (report.machine_hours, report.fitted_by) == (1234.5, "Anna Quarry")
    shown = text(client.get(f"/fitted/{number}").text)
    assert "Installed on 2026-03-04: reported, not yet confirmed by the shop" in shown
    assert "Replace by (guidance) 2031-01-02" in shown and "not a permission" in shown
    assert "Anna" not in shown and "Loader" not in shown
    assert "Installed on" not in text(client.get(f"/T/{number}").text)
    store.decide_fitted(report.id, agree=True)
    assert "confirmed by the shop" in text(client.get(f"/fitted/{number}").text)
    page = text(client.get(f"/T/{number}").text)
    assert "Installed on 2026-03-04" in page and "Replace by (guidance) 2031-01-02" in page


def test_whoever_reports_a_void_or_withdrawn_hose_is_told_not_to_use_it_and_the_shop_learns_of_it(
    store: Store,
) -> None:
    client = TestClient(create_app(Settings(shop_phone="+44 1632 960 000"), store=store))
    fine, void, withdrawn = (made(store, built_on=date(2025, 1, 2)) for _ in range(3))
    store.void(void, "typed twice")
    store.withdraw("burst low", tag=withdrawn)
    for number, said in ((void, "is void. Do not use"), (withdrawn, "Do not use this hose."), (fine, "")):
        data = {"number": number, "fitted_on": "2026-03-04"}
        answer = client.post("/fitted", data=data, headers=JSON)
        assert answer.status_code == 201
        assert said in answer.json().get("stop", "") and bool(said) == ("stop" in answer.json())
        sent = client.post("/fitted", data=data)  # as a browser, led to the page
        shown = text(sent.text)
        assert str(sent.url).endswith(f"/fitted/{number}") and said in shown and "+44 1632 960 000" in shown
        assert bool(said) == ("remove it" in shown) == ("Replace by" not in shown)
    assert store.count_fitted_waiting() == 6


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("fitted_on", "", "Installation date"),
        ("fitted_on", "2999-01-01", "Installation date"),
        ("machine_hours", "1,234", "Machine hours"),
        ("machine_hours", "1.234", "Machine hours"),
        ("machine_hours", "nan", "Machine hours"),
        ("machine_hours", "-5", "Machine hours"),
        ("machine", "x" * 121, "Machine"),
        ("fitted_by", "a\x00b", "Installed by"),
        ("number", OTHER_SHOP, "Tag number"),
        ("number", "7K3MQ9XWZR1", "Tag number"),
    ],
)
def test_a_wrong_report_is_refused_by_its_field_and_stands_in_the_form_again(
    client: TestClient, store: Store, field: str, value: str, said: str
) -> None:
    number = made(store)
    data = {"number": number, "fitted_on": "2026-03-04", "machine": "Loader 4"} | {field: value}
    answer = client.post("/fitted", data=data, headers=JSON)
    assert answer.status_code == 422
    assert answer.json()["problems"][0]["text"].startswith(said)
    assert store.fitted_reports() == []
    html = client.post("/fitted", data=data).text
    assert "Report not sent" in html
    if field not in ("number", "machine"):
        assert 'value="Loader 4"' in html and f'value="{number}"' in html


def test_the_calendar_file_is_one_event_on_the_day_in_the_language_of_the_page(
    client: TestClient, store: Store
) -> None:
    number = made(store, built_on=date(2025, 1, 2))
    answer = client.get(f"/calendar/{number}.ics", headers={"accept-language": "de"})
    assert answer.headers["content-type"] == "text/calendar; charset=utf-8"
    assert "DTSTART;VALUE=DATE:20310102\r\n" in answer.text
    assert f"SUMMARY:Schlauchleitung {tag_number.format(number)} ersetzen\r\n" in answer.text
    foreign = path(store.assembly(made(store, built_on=date(2025, 1, 2))))
    assert client.get(f"/calendar/{foreign[3:]}.ics").status_code == 200
    assert client.get(f"/calendar/{made(store)}.ics").status_code in (200, 404)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_calendar_file_holds_to_its_format_whatever_the_source_says(language: str) -> None:
    """RFC 5545: lines of at most 75 octets ended by CRLF; comma, semicolon, backslash and line end escaped."""
    life = ReplaceBy(date(2031, 1, 2), "x")
    source = "table 3; rows 1, 2\nC:\\papers é" * 4
    text = calendar_of(
        "7K3MQ9XW2R1", life, "https://tags.example.com/T/7K3MQ9XW2R1", Translator(language), source
    )
    lines = text.split("\r\n")
    assert lines[-1] == "" and max(len(line.encode()) for line in lines) <= 75
    whole = re.sub(r"\r\n ", "", text)
    (description,) = re.findall(r"^DESCRIPTION:(.*?)\r\n", whole, re.M)[:1]
    plain = re.sub(r"\\(.)", lambda m: "\n" if m[1] == "n" else m[1], description)
    assert source in plain
    assert re.search(r"(?<!\\)[,;]", description) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_phone_without_a_signal_makes_the_same_calendar_file(language: str) -> None:
    t, url = Translator(language), "https://tags.example.com/T/7K3MQ9XW2R1/123456789"
    files, given = [], []
    for day, source in (
        (date(2031, 1, 2), "table 3; rows 1, 2\nC:\\papers é" * 4),
        (date(2028, 2, 29), "ISO 8331 😀" * 9),
        (date(2030, 12, 31), ""),
    ):
        files.append(calendar_of("7K3MQ9XW2R1", ReplaceBy(day, "x"), url, t, source))
        summary = t("fitted-event", number="7K3MQ-9XW2R1")
        said = t("fitted-event-description", source=source, address=url)
        event = {
            "number": "7K3MQ9XW2R1",
            "day": day.isoformat(),
            "summary": summary,
            "said": said,
            "url": url,
        }
        given.append(event)
    code = "answer(given.map((each) => calendarOf(each, new Date())));"
    made = in_node({"calendar.js": "calendarOf"}, code, given)
    stamped = re.compile(r"DTSTAMP:\d{8}T\d{6}Z\r\n")
    assert [stamped.sub("", text) for text in made] == [stamped.sub("", text) for text in files]
    assert all(stamped.search(text) for text in made)


def photo(exif: bool = True, size: tuple[int, int] = (2400, 1600)) -> bytes:
    image = Image.new("RGB", size, "red")
    image.paste("blue", (0, 0, size[0] // 2, size[1]))
    data = Image.Exif()
    data[0x010F] = "A camera of Anna"  # maker
    data[0x0112] = 6  # turned by 90 degrees
    out = BytesIO()
    image.save(out, "JPEG", exif=data if exif else b"", comment=b"taken at the pit")
    return out.getvalue()


def test_a_photo_is_kept_small_upright_and_without_what_the_camera_wrote(
    client: TestClient, store: Store
) -> None:
    number = made(store)
    sent = photo()
    assert b"Anna" in sent and b"the pit" in sent
    files = {"photo_hose": ("a.jpg", sent, "image/jpeg"), "photo_routing": ("b.jpg", sent, "image/jpeg")}
    client.post("/order", data={"number": number, "phone": "555 0101"}, files=files)
    (order,) = store.orders()
    kept = store.order_photos(order.reference)
    assert [one.what for one in kept] == ["hose", "routing"]
    image = store.photo(kept[0].id)
    assert b"Anna" not in image and b"the pit" not in image and b"Exif" not in image
    opened = Image.open(BytesIO(image))
    assert opened.format == "JPEG" and opened.size == (853, 1280)
    red, _, blue = opened.convert("RGB").getpixel((400, 100))  # type: ignore[misc]
    assert blue > 200 and red < 60, "turned upright"
    client.post(
        "/fitted", data={"number": number, "fitted_on": "2026-03-04"}, files={"photo_fitted": ("a.jpg", sent)}
    )
    assert store.fitted_reports()[0].photo is not None


def test_what_is_no_photo_or_too_large_refuses_the_order_by_its_field(
    client: TestClient, store: Store
) -> None:
    data = {"number": made(store), "phone": "555 0101"}
    bomb = BytesIO()
    Image.new("1", (20_000, 20_000)).save(bomb, "PNG")  # 400 million pixels in some 50 kB
    gif = BytesIO()
    Image.new("L", (9, 9)).save(gif, "GIF")
    for wrong in (
        b"no picture",
        bomb.getvalue(),
        gif.getvalue(),
        photo()[:2000],
        b"\xff\xd8" + b"x" * 9_000_001,
    ):
        answer = client.post("/order", data=data, files={"photo_hose": ("a.jpg", wrong)}, headers=JSON)
        assert answer.status_code == 422
        assert answer.json()["problems"][0]["field"] == "photo_hose"
    many = [("photo_hose", (f"{n}.jpg", photo(), "image/jpeg")) for n in range(3)]
    assert client.post("/order", data=data, files=many).status_code == 400
    assert store.orders() == []


def test_one_address_sends_so_many_photos_an_hour_and_orders_without_them_all_the_same(
    client: TestClient, store: Store
) -> None:
    data, small = {"number": made(store), "phone": "555 0101"}, photo(size=(8, 8))
    statuses = [
        client.post(
            "/order",
            data=data | {"key": f"k{n}"},
            files={"photo_hose": ("a.jpg", small), "photo_routing": ("b.jpg", small)},
            headers=JSON,
        ).status_code
        for n in range(22)
    ]
    assert statuses == [201] * 20 + [422] * 2, "two photos each"
    assert client.post("/order", data=data | {"key": "k50"}, headers=JSON).status_code == 201


def test_strangers_together_send_so_many_photos_a_day_and_orders_without_them_all_the_same(
    client: TestClient, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(received, "A_DAY", 3)
    data, small = {"number": made(store), "phone": "555 0101"}, photo(size=(8, 8))
    for n, status in enumerate((201, 201, 201, 422)):
        files = {"photo_hose": ("a.jpg", small)}
        answer = client.post("/order", data=data | {"key": f"k{n}"}, files=files, headers=JSON)
        assert answer.status_code == status, n
    assert "no more photos today" in answer.text and len(store.orders()) == 3
    assert client.post("/order", data=data | {"key": "k9"}, headers=JSON).status_code == 201
