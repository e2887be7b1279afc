"""Order requests as a stranger sends them: what is kept, what is refused, and in which words."""

from __future__ import annotations

import hashlib
import json
import re
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from email import message_from_bytes, policy
from html import unescape
from itertools import count

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan.orders import AN_HOUR
from api.settings import Settings
from api.web.limits import CALM, WORK_BITS
from api.workers.outbox import letter
from tagger.code import link
from tagger.store import Allowance, Assembly, Store, Target
from tagger.store.orders import MAIL_TO_ONE
from tests.scan.conftest import OTHER_SHOP, path, text

PRESSURE = {"value_bar": 100, "source": "a stranger's own"}


@pytest.mark.parametrize("spec", ["[" * 100_000, '{"length_mm": 1, "length_mm": 2}', "{hose: 1}"])
def test_a_spec_that_is_none_is_refused(client: TestClient, spec: str) -> None:
    answer = client.post("/order", data={"spec": spec, "phone": "1"}, follow_redirects=False)
    assert answer.status_code == 422
    assert "Order not sent" in text(answer.text)


def test_a_refused_order_is_headed_for_an_order_in_every_language(client: TestClient) -> None:
    for lang, title in (("en", "Order not sent"), ("de", "Bestellung nicht gesendet")):
        answer = client.post("/order", data={"phone": "1"}, headers={"accept-language": lang})
        assert f"<h1>{title}</h1>" in answer.text
        assert "This tag cannot be read" not in answer.text
    assert "<h1>Order not found</h1>" in client.get("/order/R-0000000").text


def test_a_day_in_the_past_is_refused_and_today_is_taken(client: TestClient, assembly: Assembly) -> None:
    def status(day: date, asked_on: str = "") -> int:
        data = {"number": assembly.number, "phone": "1", "needed_by": day.isoformat(), "asked_on": asked_on}
        return int(client.post("/order", data=data, follow_redirects=False).status_code)

    today = datetime.now(UTC).date()
    assert status(today - timedelta(days=2)) == 422
    assert (status(today), status(today + timedelta(days=30))) == (303, 303)
    waited = (today - timedelta(days=5)).isoformat()
    assert status(today - timedelta(days=4), waited) == 303, "it waited on the phone for a signal"
    assert status(today - timedelta(days=9), waited) == 422
    assert status(today - timedelta(days=2), "2999-01-01") == 422


@pytest.mark.parametrize("sign", ["\r\n", "\n", "\r", "\x00", "\x0b", "\u2028", "\x1b"])
@pytest.mark.parametrize("field", ["name", "company", "phone", "email", "reference"])
def test_a_line_that_would_begin_another_is_refused(
    client: TestClient, store: Store, assembly: Assembly, field: str, sign: str
) -> None:
    data = {"number": assembly.number, "phone": "1", field: f"a@example.com{sign}Bcc: b@example.com"}
    answer = client.post("/order", data=data, headers={"accept": "application/json"})
    assert answer.status_code == 422
    assert field in answer.json()["problems"][0]["field"]
    assert store.orders() == []


@pytest.mark.parametrize(
    "email", ["a@b.example, c@d.example", "a@b.example;c@d.example", "A <a@b.example>", "a@b@c"]
)
def test_an_email_field_holds_one_address(client: TestClient, assembly: Assembly, email: str) -> None:
    answer = client.post("/order", data={"number": assembly.number, "email": email})
    assert answer.status_code == 422
    assert "is not an email address" in text(answer.text)


def test_no_header_can_be_put_into_the_mail_that_follows(store: Store, assembly: Assembly) -> None:
    """What an order says stands in the body alone; an address with a line break makes no mail at all."""
    settings = Settings(base_url="https://tags.example.com", shop_email="shop@example.com")
    store.announce = (Target("email", "shop@example.com"),)
    store.mail_customers = True
    injected = "Bcc: eve@example.com"
    store.request_order(
        number=assembly.number, contact={"name": injected, "email": "anna@example.com"},
        changes=f"longer\r\n{injected}\r\n\r\nSubject: hello", reference=injected,
    )  # fmt: skip
    messages = list(iter(store.claim, None))
    assert {message.target for message in messages} == {"shop@example.com", "anna@example.com"}
    for message in messages:
        sent = message_from_bytes(bytes(letter(message, settings)), policy=policy.SMTP)
        assert sorted(sent.keys()) == sorted(
            [
                "Subject",
                "From",
                "To",
                "Message-ID",
                "Content-Language",
                "Content-Type",
                "Content-Transfer-Encoding",
                "MIME-Version",
            ]
        )
        assert sent["To"] == message.target
        assert re.fullmatch(
            r"(Order|We have received your order request) R-\w{7}(: received)?", sent["Subject"]
        )
        assert (injected in sent.get_content()) == (message.target == "shop@example.com")
    with pytest.raises(ValueError, match="linefeed or carriage return"):
        letter(replace(messages[0], target=f"a@example.com\r\n{injected}"), settings)


def test_nothing_that_a_stranger_typed_goes_to_an_address_that_has_not_confirmed_itself(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    settings = Settings(base_url="https://tags.example.com", shop_email="shop@example.com")
    store.announce, store.mail_customers = (Target("email", "shop@example.com"),), True
    lure = "win at lure.example"
    own = {"standard": lure, "dash": 12}
    odd = {"connection": "other", "description": "go lure.example", "form": "male"}
    plain = {name: value for name, value in assembly.spec.as_dict().items() if name != "clocking_deg"}
    typed = {"spec": {**assembly.spec.as_dict(), "hose": own, "working_pressure": PRESSURE}}
    other = {"spec": {**plain, "end_b": odd, "working_pressure": PRESSURE}}
    words = {"name": lure, "company": lure, "reference": lure, "change_other": lure, "change_length": lure}
    for data in ({"number": assembly.number}, *({"spec": json.dumps(one["spec"])} for one in (typed, other))):
        sent = client.post("/order", data={**data, **words, "email": "victim@example.com"})
        assert sent.status_code == 200, text(sent.text)
    letters = [(m.target, letter(m, settings).get_content()) for m in iter(store.claim, None)]
    assert [to for to, _ in letters].count("victim@example.com") == 3
    for to, said in letters:
        assert ("lure.example" in said) == (to == "shop@example.com")
    assert any("SAE 100R2" in said for to, said in letters if to == "victim@example.com"), "the record's own"


def test_one_address_is_not_flooded_with_mail_and_no_order_is_lost(store: Store, assembly: Assembly) -> None:
    store.mail_customers = True
    for place in range(MAIL_TO_ONE + 3):
        address = "Victim@example.com" if place % 2 else "victim@example.com"
        order = store.request_order(number=assembly.number, contact={"email": address}, key=f"{place}")
    assert len(store.undelivered()) == MAIL_TO_ONE and len(store.orders()) == MAIL_TO_ONE + 3
    store.set_order_state(order.reference, "accepted")
    assert len(store.undelivered()) == MAIL_TO_ONE + 1, "what the shop answers is always told"


def test_a_form_of_another_sites_page_is_not_taken(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    data = {"number": assembly.number, "phone": "1"}
    for address in ("/order", "/fitted"):
        for headers in (
            {"origin": "https://evil.example"},
            {"origin": "null"},
            {"sec-fetch-site": "cross-site"},
            {"sec-fetch-site": "same-site"},
        ):
            answer = client.post(address, data=data, headers=headers)
            assert answer.status_code == 403 and "sent by another website" in text(answer.text)
    assert store.orders() == []
    own = {"origin": "https://tags.example.com", "sec-fetch-site": "same-origin"}
    assert client.post("/order", data=data, headers=own).status_code == 200


def test_a_flood_of_orders_for_one_tag_is_refused_with_the_shops_telephone(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    data = {"number": assembly.number, "phone": "1"}
    statuses = [
        client.post("/order", data={**data, "key": str(place)}, follow_redirects=False).status_code
        for place in range(AN_HOUR + 2)
    ]
    assert statuses == [303] * AN_HOUR + [429] * 2
    late = client.post("/order", data={**data, "key": "late"}, headers={"accept": "application/json"})
    assert late.status_code == 429 and "Call the shop" in late.json()["problems"][0]["text"]
    assert len(store.orders()) == AN_HOUR


def test_in_a_flood_from_everywhere_each_order_and_report_carries_its_browsers_work(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    for what in ("order", "report"):
        for _ in range(CALM):  # from other addresses, of other tags
            assert not store.try_now({f"{what} of all": Allowance(CALM, 3600)})
    order = {"number": assembly.number, "phone": "1", "key": "a" * 32}
    report = {"number": assembly.number, "fitted_on": "2026-03-02", "machine": "M 1", "key": "b" * 32}
    for address, data in (("/order", order), ("/fitted", report)):
        work = next(str(tried) for tried in count() if _zero_bits(f"{data['key']}:{tried}") >= WORK_BITS)
        for none in ("", "0", str(int(work) + 1), work + " "):
            answer = client.post(address, data={**data, "work": none}, headers={"accept": "application/json"})
            assert answer.status_code == 429 and answer.headers["tag-work"] == str(WORK_BITS)
            assert "Call the shop" in answer.json()["problems"][0]["text"]
        other = client.post(address, data={**data, "key": "c" * 32, "work": work}, follow_redirects=False)
        assert other.status_code == 429, "work done for one is not good for another"
        page = client.post(address, data=data)
        assert page.status_code == 429 and "without the check that a browser makes" in page.text
        sent = client.post(address, data={**data, "work": work}, follow_redirects=False)
        assert sent.status_code == 303, "those refused before it are no tries of its sender"
    assert len(store.orders()) == 1


def _zero_bits(text: str) -> int:
    return 256 - int.from_bytes(hashlib.sha256(text.encode()).digest()).bit_length()


def test_an_order_names_what_must_be_different(client: TestClient, store: Store, assembly: Assembly) -> None:
    answer = client.post(
        "/order",
        data={
            "number": assembly.number, "digits": assembly.digits, "quantity": "3", "needed_by": "2031-02-03",
            "reference": "WO 77", "email": "pit@example.com", "change_end_b": "straight", "change_cover": "fire sleeve",
        },
    )  # fmt: skip
    (order,) = store.orders()
    assert order.reference in answer.url.path
    assert order.changes == "End B: straight\nSleeves and guards: fire sleeve"
    assert (order.quantity, str(order.needed_by), order.number) == (3, "2031-02-03", assembly.number)
    assert "pit@example.com" not in answer.text
    store.set_order_state(order.reference, "asked", note="Which way does <b>the elbow point?")
    asked = client.get(f"/order/{order.reference}").text
    assert "Message from the shop" in asked and "Which way does &lt;b&gt;the elbow point?" in asked


def test_an_order_from_another_shops_tag_carries_its_spec(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    client.post("/order", data={"number": OTHER_SHOP, "digits": assembly.digits, "phone": "1"})
    (order,) = store.orders()
    assert order.number == OTHER_SHOP
    assert order.spec == assembly.spec.carried()


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("phone", "", "Phone: A phone number or an email address is required"),
        ("quantity", "0", "Quantity: 0 is not a valid quantity"),
        ("quantity", "two", "Quantity: two is not a whole number."),
        ("needed_by", "soon", "Needed by: soon is not a date."),
        ("email", "nobody", "Email: nobody is not an email address"),
        ("number", "7K3MQ9XWZR1", "Tag number: The check character is wrong"),
    ],
)
def test_a_wrong_order_is_refused_by_field(
    client: TestClient, store: Store, assembly: Assembly, field: str, value: str, said: str
) -> None:
    data = {"number": assembly.number, "digits": "", "quantity": "1", "phone": "1"} | {field: value}
    answer = client.post("/order", data=data, headers={"accept": "application/json"})
    assert answer.status_code == 422
    assert any(problem["text"].startswith(said) for problem in answer.json()["problems"])
    assert store.orders() == []


def test_the_order_lines_alone_are_enough_for_any_shop(client: TestClient, assembly: Assembly) -> None:
    html = client.get(path(assembly)).text
    lines = unescape(re.search(r'<pre[^>]*id="order-lines"[^>]*>(.*?)</pre>', html, re.DOTALL)[1])  # type: ignore[index]
    for wanted in ("Hose: SAE 100R2 -12", "End A: -12 37° flare (JIC), female swivel, 45° elbow", "Length: 1250 mm",
                   "Clocking angle: 135°", "Max. working pressure:", "Fluid: mineral oil"):  # fmt: skip
        assert wanted in lines
    assert link.parse(lines.rsplit("Link: ", 1)[1]).digits == assembly.digits
    assert 'href="mailto:orders@example.com?subject=' in html


def test_an_order_keeps_the_language_of_the_page_it_came_from(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    data = {"number": assembly.number, "email": "bela@site.example"}
    client.post("/order", data=data, headers={"accept-language": "es"}, follow_redirects=False)
    assert [order.language for order in store.orders()] == ["es"]


@pytest.mark.parametrize("phone", ["abc", "call Bob", "@", "ext 5", "12 34 abcdefghijklmnop 5", "+"])
def test_what_is_no_phone_number_is_refused_by_its_field(
    client: TestClient, store: Store, assembly: Assembly, phone: str
) -> None:
    data = {"number": assembly.number, "phone": phone}
    answer = client.post("/order", data=data, headers={"accept": "application/json"})
    assert answer.status_code == 422
    assert answer.json()["problems"][0]["text"].startswith(f"Phone: {phone} is not a phone number.")
    assert store.orders() == []


@pytest.mark.parametrize(
    "phone", ["+44 1632 960 111", "(01) 632/960-111", "555-0100 ext. 12", "01632 960111, poste 4"]
)
def test_a_phone_number_may_be_written_as_people_write_it(
    client: TestClient, store: Store, assembly: Assembly, phone: str
) -> None:
    client.post("/order", data={"number": assembly.number, "phone": phone})
    assert [order.contact.phone for order in store.orders()] == [phone]


def test_without_scripts_a_refused_order_keeps_what_was_typed_and_the_way_back(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    typed = {
        "quantity": "7", "needed_by": "2031-02-03", "reference": 'WO "77"', "name": "Bela", "phone": "abc",
        "company": "Pit & Sons", "change_length": "1300 mm", "change_other": "blue\nsleeve",
    }  # fmt: skip
    answer = client.post("/order", data={"number": assembly.number, "digits": assembly.digits, **typed})
    assert answer.status_code == 422
    assert "<h1>Order not sent</h1>" in answer.text
    assert f'href="{path(assembly)}"' in answer.text
    form = re.search(r"<form method=\"post\" action=\"/order\".*?</form>", answer.text, re.DOTALL)
    assert form
    for name, value in typed.items():
        field = re.search(
            rf'name="{name}"[^>]*?value="([^"]*)"|name="{name}"[^>]*>([^<]*)</textarea>', form[0]
        )
        assert field and unescape(field[1] or field[2]) == value, name
    fields = dict(re.findall(r'type="hidden" name="(\w+)" value="([^"]*)"', form[0]))
    mended = {**{k: unescape(v) for k, v in fields.items()}, **typed, "phone": "+44 1632 960 111"}
    assert client.post("/order", data=mended).status_code == 200
    assert [order.quantity for order in store.orders()] == [7]


def test_the_confirmation_says_what_was_ordered_by_when_the_shop_answers_and_the_number_to_quote(
    store: Store, assembly: Assembly
) -> None:
    settings = Settings(base_url="https://tags.example.com", answer_days=2, shop_phone="+44 1632 960 111")
    client = TestClient(create_app(settings, store=store), base_url="https://tags.example.com")
    answer = client.post(
        "/order", data={"number": assembly.number, "phone": "+44 1632 960 222", "quantity": "3"}
    )
    said = text(answer.text)
    assert "We have received your order request" in said
    assert "has arrived" not in said
    assert store.orders()[0].reference in said
    assert "What you ordered Quantity 3" in said
    assert "SAE 100R2 -12" in said
    assert "The shop answers within 2 working days." in said
    assert 'href="tel:+44 1632 960 111"' in answer.text


def test_the_order_form_of_a_withdrawn_tag_says_that_it_is_built_anew(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    for lang, said in (("en", "tag of a withdrawn hose"), ("de", "Schild einer gesperrten")):
        asked = {"accept-language": lang}
        assert said not in text(client.get(path(assembly), headers=asked).text)
        withdrawal = store.withdraw("burst low", tag=assembly.number)
        html = client.get(path(assembly), headers=asked).text
        form = text(html[html.index('id="order"') :])
        assert said in form and form.index(said) < form.index("1"), "before anything is typed"
        store.lift(withdrawal.id, "retested")
