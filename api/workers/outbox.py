"""Delivers what waits in the outbox: webhooks by HTTP, e-mails by SMTP. Tried again until it arrives.

A webhook is a POST of JSON. With a secret set, the header ``Tagger-Signature: sha256=<hex>`` is the
HMAC-SHA256 (RFC 2104) of the body; ``Tagger-Message`` is the message's id: a receiver that has seen
it may forget the repeat.
"""

from __future__ import annotations

import hashlib
import hmac
import json
import logging
import smtplib
import ssl
import threading
import urllib.error
import urllib.request
from collections.abc import Callable
from email.message import EmailMessage
from urllib.parse import unquote, urlsplit

from api.settings import Settings
from tagger import units
from tagger.code import number as tag_number
from tagger.spec import AssemblySpec
from tagger.store import Message, Store, Target
from tagger.words import Words

_LOG = logging.getLogger(__name__)
_TIMEOUT = 15
_EVERY = 2.0


def targets(settings: Settings) -> tuple[Target, ...]:
    """Who is told of every order request."""
    found = []
    if settings.webhook_url:
        found.append(Target("webhook", settings.webhook_url))
    if settings.smtp_url and settings.mail_to:
        found.append(Target("email", settings.mail_to))
    return tuple(found)


class Deliverer:
    """A thread that empties the outbox; one a process is enough, several do no harm."""

    def __init__(self, store: Store, settings: Settings) -> None:
        self.store, self.settings = store, settings
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, name="deliverer", daemon=True)

    def start(self) -> None:
        self._thread.start()

    def stop(self) -> None:
        """Ends after the message in hand."""
        self._stop.set()
        self._thread.join(_TIMEOUT + 5)

    def _run(self) -> None:
        while not self._stop.wait(_EVERY):
            try:
                deliver_due(self.store, self.settings, self._stop.is_set)
            except Exception as error:  # the database may be away for a while; the messages wait in it
                _LOG.error("Messages wait, the outbox cannot be read: %s", error)


def deliver_due(store: Store, settings: Settings, stopped: Callable[[], bool] = lambda: False) -> int:
    """Tries every message that is due, one after the other, until stopped; how many arrived.

    Each is taken only when its turn comes: a slow server must not use up the time of the next.
    """
    arrived = 0
    while not stopped() and (message := store.claim()) is not None:
        try:
            _webhook(message, settings) if message.channel == "webhook" else _email(message, settings)
        except (OSError, smtplib.SMTPException, ValueError) as error:
            store.failed(message.id, f"{type(error).__name__}: {error}")
        else:
            store.delivered(message.id)
            arrived += 1
    return arrived


def _webhook(message: Message, settings: Settings) -> None:
    body = json.dumps({"id": message.id, **message.body}, ensure_ascii=False).encode()
    headers = {"Content-Type": "application/json", "Tagger-Message": str(message.id)}
    if settings.webhook_secret:
        signature = hmac.new(settings.webhook_secret.encode(), body, hashlib.sha256).hexdigest()
        headers["Tagger-Signature"] = f"sha256={signature}"
    request = urllib.request.Request(message.target, data=body, headers=headers, method="POST")
    with urllib.request.urlopen(request, timeout=_TIMEOUT) as answer:
        if answer.status >= 300:
            raise urllib.error.HTTPError(message.target, answer.status, "not accepted", answer.headers, None)


def _email(message: Message, settings: Settings) -> None:
    mail = letter(message, settings)
    address = urlsplit(settings.smtp_url)
    host, port = address.hostname or "localhost", address.port or 0
    known = ssl.create_default_context()  # the password goes only to a server whose certificate holds
    with (
        smtplib.SMTP_SSL(host, port, timeout=_TIMEOUT, context=known)
        if address.scheme == "smtps"
        else smtplib.SMTP(host, port, timeout=_TIMEOUT)
    ) as server:
        if address.scheme == "smtp+starttls":
            server.starttls(context=known)
        if address.username:
            server.login(unquote(address.username), unquote(address.password or ""))
        server.send_message(mail)


def letter(message: Message, settings: Settings) -> EmailMessage:
    """The e-mail that tells of an order request, to the shop or to the customer."""
    body, words = message.body, Words(settings.language)
    spec = AssemblySpec.read(body["spec"])
    lines = [
        f"Order {body['reference']}: {body['state']}",
        *([f"Note: {body['note']}"] if body["note"] else []),
        "",
        f"{body['quantity']} x {words.hose(spec.hose)}, {words.length(spec)}",
        f"End A: {words.end(spec.end_a)}",
        f"End B: {words.end(spec.end_b)}",
        *([f"Clocking: {words.clocking(spec)}"] if spec.clocking_deg is not None else []),
        *([f"Covers: {', '.join(words.cover(cover) for cover in spec.covers)}"] if spec.covers else []),
        *([f"Highest temperature: {units.show_temperature(spec.max_temperature_c)}"] if spec.max_temperature_c is not None else []),
        *([f"From tag: {tag_number.format(body['number'])}"] if body["number"] else []),
        *([f"Needed by: {body['needed_by']}"] if body["needed_by"] else []),
        *([f"Changes wanted: {body['changes']}"] if body["changes"] else []),
        "",
        f"{settings.base_url}/order/{body['reference']}",
        f"{settings.shop_name} {settings.shop_phone}".strip(),
    ]  # fmt: skip
    mail = EmailMessage()
    mail["Subject"] = f"Order {body['reference']}: {body['state']}"
    mail["From"] = settings.mail_from or settings.shop_email or settings.mail_to
    mail["To"] = message.target
    mail["Message-ID"] = f"<order-{message.id}@{urlsplit(settings.base_url).hostname}>"
    mail.set_content("\n".join(lines))
    return mail
