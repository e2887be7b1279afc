"""What others are told: a real HTTP server and a real SMTP server, away for a while."""

from __future__ import annotations

import email
import hashlib
import hmac
import json
import ssl
import subprocess
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest
from aiosmtpd.controller import Controller
from aiosmtpd.smtp import SMTP, AuthResult, Envelope, Session

from api.settings import Settings
from api.web.identity import hash_password
from api.workers import outbox
from tagger.store import OrderState, Role, Store
from tagger.store.outbox import LEASE
from tests.bench.served import PASSWORD, Bench, serving
from tests.databases import fresh_sqlite
from tests.ports import free_port
from tests.store.samples import spec

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)


class Hook:
    """A web address that answers with a status of our choice and keeps what it got."""

    def __init__(self) -> None:
        self.status, self.got = 200, []
        self.meanwhile: Callable[[], object] = lambda: None
        hook = self

        class Handler(BaseHTTPRequestHandler):
            def do_POST(self) -> None:
                body = self.rfile.read(int(self.headers["Content-Length"]))
                hook.got.append((dict(self.headers), body))
                hook.meanwhile()
                self.send_response(hook.status)
                self.end_headers()

            def log_message(self, *_: Any) -> None:
                pass

        self.server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self.url = f"http://127.0.0.1:{self.server.server_address[1]}/orders"
        threading.Thread(target=self.server.serve_forever, daemon=True).start()


@pytest.fixture
def hook() -> Iterator[Hook]:
    made = Hook()
    yield made
    made.server.shutdown()
    made.server.server_close()


@contextmanager
def _post_office(
    port: int, *, certificate: Path | None = None, wraps: bool = False
) -> Iterator[list[Envelope]]:
    """An SMTP server; with a certificate it asks for STARTTLS, or (``wraps``) speaks TLS at once."""
    kept: list[Envelope] = []
    context = None
    if certificate is not None:
        context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
        context.load_cert_chain(certificate)

    class Keeper:
        async def handle_DATA(self, server: SMTP, session: Session, envelope: Envelope) -> str:
            kept.append(envelope)
            return "250 OK"

    controller = Controller(
        Keeper(), hostname="127.0.0.1", port=port, ssl_context=context if wraps else None,
        tls_context=None if wraps else context, authenticator=lambda *_: AuthResult(success=True), auth_require_tls=not wraps,
        ready_timeout=60,
    )  # fmt: skip
    controller.start()
    try:
        yield kept
    finally:
        controller.stop()


class Clock:
    def __init__(self) -> None:
        self.at = NOW

    def __call__(self) -> datetime:
        return self.at


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def store(tmp_path: Path, clock: Clock) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path), now=clock) as opened:
        yield opened


def test_a_webhook_gets_the_order_signed(store: Store, hook: Hook) -> None:
    settings = Settings(webhook_url=hook.url, webhook_secret="s3cret")
    store.announce = outbox.targets(settings)
    order = store.request_order(spec=spec(), quantity=2, contact={"phone": "1"})
    assert outbox.deliver_due(store, settings) == 1
    [(headers, body)] = hook.got
    told = json.loads(body)
    assert (told["reference"], told["state"], told["quantity"]) == (order.reference, "received", 2)
    assert told["spec"] == spec().as_dict()
    wanted = hmac.new(b"s3cret", body, hashlib.sha256).hexdigest()
    assert headers["Tagger-Signature"] == f"sha256={wanted}"
    assert store.undelivered() == []
    assert outbox.deliver_due(store, settings) == 0, "it is told once"


def test_a_webhook_that_is_away_is_tried_again_later_and_later(
    store: Store, hook: Hook, clock: Clock
) -> None:
    settings = Settings(webhook_url=hook.url)
    store.announce = outbox.targets(settings)
    store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    hook.status = 503
    waits = []
    for _ in range(4):
        assert outbox.deliver_due(store, settings) == 0
        [waiting] = store.undelivered()
        assert waiting.last_error is not None and "503" in waiting.last_error
        waits.append(waiting.next_at - clock.at)
        assert outbox.deliver_due(store, settings) == 0, "not before its time"
        clock.at = waiting.next_at
    assert waits == sorted(waits) and waits[0] < waits[-1]
    hook.status = 200
    assert outbox.deliver_due(store, settings) == 1
    assert store.undelivered() == []


def test_a_message_whose_deliverer_died_comes_back(store: Store, hook: Hook, clock: Clock) -> None:
    settings = Settings(webhook_url=hook.url)
    store.announce = outbox.targets(settings)
    store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    assert store.claim() is not None  # taken, and then the process ends
    assert store.claim() is None, "nobody else takes it meanwhile"
    clock.at += LEASE
    assert outbox.deliver_due(store, settings) == 1


def test_a_slow_server_is_not_told_twice(store: Store, hook: Hook, clock: Clock) -> None:
    settings = Settings(webhook_url=hook.url)
    store.announce = outbox.targets(settings)
    for _ in range(6):
        store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    elsewhere = []

    def meanwhile() -> None:
        clock.at += LEASE * 0.7
        if len(hook.got) % 2 == 0:
            taken = store.claim()
            if taken is not None:
                elsewhere.append(taken.id)
                store.delivered(taken.id)

    hook.meanwhile = meanwhile
    outbox.deliver_due(store, settings)
    told = [json.loads(body)["id"] for _, body in hook.got] + elsewhere
    assert len(told) == 6
    assert sorted(told) == sorted(set(told))


def test_an_order_refused_leaves_no_message(store: Store) -> None:
    store.announce = outbox.targets(Settings(webhook_url="http://127.0.0.1:1/x"))
    with pytest.raises(Exception, match="quantity"):
        store.request_order(spec=spec(), quantity=0, contact={"phone": "1"})
    assert store.undelivered() == []


def test_shop_and_customer_get_e_mail_of_each_step(store: Store) -> None:
    port = free_port()
    settings = Settings(
        smtp_url=f"smtp://127.0.0.1:{port}", mail_to="orders@shop.example", mail_from="tags@shop.example",
        base_url="https://tags.example.com",
    )  # fmt: skip
    store.announce, store.mail_customers = outbox.targets(settings), True
    order = store.request_order(spec=spec(), quantity=1, contact={"email": "bela@site.example"})
    store.set_order_state(order.reference, OrderState.ASKED, note="Which side is the drop on? Ünicode too.")
    assert outbox.deliver_due(store, settings) == 0, "no post office yet"
    assert len(store.undelivered()) == 4
    with _post_office(port) as kept:
        store.now = lambda: NOW + timedelta(minutes=1)
        assert outbox.deliver_due(store, settings) == 4
    assert sorted(e.rcpt_tos[0] for e in kept) == ["bela@site.example"] * 2 + ["orders@shop.example"] * 2
    letters = [email.message_from_bytes(e.content or b"", policy=email.policy.default) for e in kept]  # type: ignore[arg-type]
    texts = [letter.get_content() for letter in letters]  # type: ignore[attr-defined]
    assert any("Which side is the drop on? Ünicode too." in text for text in texts)
    assert all(f"https://tags.example.com/order/{order.reference}" in text for text in texts)


def test_a_customer_is_answered_in_the_language_of_the_order_and_the_shop_in_its_own(store: Store) -> None:
    port = free_port()
    settings = Settings(
        smtp_url=f"smtp://127.0.0.1:{port}", mail_to="orders@shop.example", shop_email="shop@shop.example",
        language="fr",
    )  # fmt: skip
    store.announce, store.mail_customers = outbox.targets(settings), outbox.can_mail(settings)
    order = store.request_order(spec=spec(), contact={"email": "bela@site.example"}, language="de")
    store.set_order_state(order.reference, OrderState.BUILDING)
    store.set_order_state(order.reference, OrderState.DONE)
    with _post_office(port) as kept:
        assert outbox.deliver_due(store, settings) == 6
    letters = [email.message_from_bytes(e.content or b"", policy=email.policy.default) for e in kept]  # type: ignore[arg-type]
    assert {str(letter["From"]) for letter in letters} == {"shop@shop.example"}
    to = [(str(letter["To"]), str(letter["Subject"])) for letter in letters]
    assert ("bela@site.example", f"Wir haben Ihre Bestellung {order.reference} erhalten") in to
    assert ("bela@site.example", f"Ihre Bestellung {order.reference} ist fertig") in to
    assert ("orders@shop.example", f"Commande {order.reference}\u00a0: reçue") in to
    german = next(letter for letter in letters if "erhalten" in str(letter["Subject"]))
    assert "zwischen den Dichtflächen" in german.get_content()  # type: ignore[attr-defined]


def test_without_a_sender_no_mail_is_sent_and_the_log_says_what_to_set(
    store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    port = free_port()
    known = Settings(
        smtp_url=f"smtp://127.0.0.1:{port}", mail_to="orders@shop.example", mail_from="a@shop.example"
    )
    nobody = Settings(smtp_url=f"smtp://127.0.0.1:{port}", mail_to="orders@shop.example")
    assert outbox.targets(nobody) == () and not outbox.can_mail(nobody)
    deliverer = outbox.Deliverer(store, nobody)
    deliverer.start()
    deliverer.stop()
    assert "Set TAGGER_MAIL_FROM or TAGGER_SHOP_EMAIL" in caplog.text
    store.announce = outbox.targets(known)  # written while there was a sender, delivered after it is gone
    store.request_order(spec=spec(), contact={"phone": "1"})
    with _post_office(port) as kept:
        assert outbox.deliver_due(store, nobody) == 0
    assert kept == []
    [waiting] = store.undelivered()
    assert waiting.last_error is not None and "no sender is set" in waiting.last_error


@pytest.fixture(scope="module")
def self_signed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A key and a certificate that nobody vouches for, in one file."""
    folder = tmp_path_factory.mktemp("certificate")
    key, certificate, both = folder / "key.pem", folder / "cert.pem", folder / "both.pem"
    subprocess.run(
        ["openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=localhost",
         "-addext", "subjectAltName=IP:127.0.0.1", "-keyout", key, "-out", certificate],
        check=True, capture_output=True,
    )  # fmt: skip
    both.write_bytes(key.read_bytes() + certificate.read_bytes())
    return both


@pytest.mark.parametrize("scheme", ["smtps", "smtp+starttls"])
def test_no_letter_and_no_password_go_to_a_server_whose_certificate_does_not_hold(
    store: Store, self_signed: Path, monkeypatch: pytest.MonkeyPatch, scheme: str
) -> None:
    port = free_port()
    settings = Settings(smtp_url=f"{scheme}://shop:secret@127.0.0.1:{port}", mail_to="orders@shop.example",
                        mail_from="tags@shop.example")  # fmt: skip
    store.announce = outbox.targets(settings)
    store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    with _post_office(port, certificate=self_signed, wraps=scheme == "smtps") as kept:
        assert outbox.deliver_due(store, settings) == 0
        [waiting] = store.undelivered()
        assert waiting.last_error is not None and "certificate verify failed" in waiting.last_error
        assert kept == []
        monkeypatch.setenv("SSL_CERT_FILE", str(self_signed))  # the shop vouches for it
        store.now = lambda: NOW + timedelta(minutes=1)
        assert outbox.deliver_due(store, settings) == 1
        assert len(kept) == 1


def test_the_manager_sees_what_waits_and_why(tmp_path: Path) -> None:
    settings = Settings(webhook_url="http://127.0.0.1:1/orders")
    with Store.open(f"sqlite:///{tmp_path / 'own.sqlite3'}") as store:
        store.add_person("manager", hash_password(PASSWORD), Role.MANAGER)
        with serving(settings, store) as served, Bench(served.url, store, "manager") as bench:
            assert "Undelivered messages" not in bench.get("/bench/shop").text
            order = store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
            outbox.deliver_due(store, settings)
            page = bench.get("/bench/shop").text
    assert "Undelivered messages" in page and order.reference in page and "Connection refused" in page


def test_a_running_server_delivers_by_itself(tmp_path: Path, hook: Hook) -> None:
    with Store.open(f"sqlite:///{tmp_path / 'own.sqlite3'}") as store:
        with serving(Settings(webhook_url=hook.url), store):
            store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
            deadline = time.monotonic() + 60
            while not hook.got and time.monotonic() < deadline:
                time.sleep(0.05)
        assert len(hook.got) == 1
