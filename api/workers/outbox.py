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
from datetime import date
from email.message import EmailMessage
from typing import Any
from urllib.parse import unquote, urlsplit

from api.settings import Settings
from tagger import phrases
from tagger.code import number as tag_number
from tagger.i18n import Translator
from tagger.messages import Message, temperature
from tagger.spec import AssemblySpec
from tagger.store import Message as Waiting
from tagger.store import OrderState, Store, Target
from tagger.trade.tables import tables

_LOG = logging.getLogger(__name__)
_TIMEOUT = 15
_EVERY = 2.0
NO_SENDER = "no sender is set. Set TAGGER_MAIL_FROM or TAGGER_SHOP_EMAIL."


def targets(settings: Settings) -> tuple[Target, ...]:
    """Who is told of every order request."""
    found = []
    if settings.webhook_url:
        found.append(Target("webhook", settings.webhook_url))
    if can_mail(settings) and settings.mail_to:
        found.append(Target("email", settings.mail_to))
    return tuple(found)


def sender_of(settings: Settings) -> str:
    """Who email comes from: TAGGER_MAIL_FROM, else the shop's email; empty where neither is set."""
    return settings.mail_from.strip() or settings.shop_email.strip()


def can_mail(settings: Settings) -> bool:
    """Whether email can be sent: there is a mail server, and a sender."""
    return bool(settings.smtp_url and sender_of(settings))


class Deliverer:
    """A thread that empties the outbox; one a process is enough, several do no harm."""

    def __init__(self, store: Store, settings: Settings) -> None:
        self.store, self.settings = store, settings
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, name="deliverer", daemon=True)

    def start(self) -> None:
        """Starts the thread; says in the log where no email can be sent."""
        if self.settings.smtp_url and not can_mail(self.settings):
            _LOG.error("No email is sent: %s", NO_SENDER)
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


def _webhook(message: Waiting, settings: Settings) -> None:
    body = json.dumps({"id": message.id, **message.body}, ensure_ascii=False).encode()
    headers = {"Content-Type": "application/json", "Tagger-Message": str(message.id)}
    if settings.webhook_secret:
        signature = hmac.new(settings.webhook_secret.encode(), body, hashlib.sha256).hexdigest()
        headers["Tagger-Signature"] = f"sha256={signature}"
    request = urllib.request.Request(message.target, data=body, headers=headers, method="POST")
    with urllib.request.urlopen(request, timeout=_TIMEOUT) as answer:
        if answer.status >= 300:
            raise urllib.error.HTTPError(message.target, answer.status, "not accepted", answer.headers, None)


def _email(message: Waiting, settings: Settings) -> None:
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


def letter(message: Waiting, settings: Settings) -> EmailMessage:
    """The email about an order request: to the customer in the order's language, to the shop in the shop's.

    Anybody may have typed the customer's address into the form. So nothing that was typed there goes to it:
    the page behind the link tells it. Raises ValueError where no sender is set.
    """
    sender = sender_of(settings)
    if not sender:
        raise ValueError(NO_SENDER)
    body = message.body
    to_customer = body.get("to") == "customer"
    t = Translator((to_customer and body.get("language")) or settings.language)
    mail = EmailMessage()
    mail["Subject"] = t(_subject(body, to_customer))
    mail["From"] = sender
    mail["To"] = message.target
    mail["Message-ID"] = f"<order-{message.id}@{urlsplit(settings.base_url).hostname}>"
    link = Message("mail-follow", link=f"{settings.base_url}/order/{body['reference']}")
    said = [_subject(body, to_customer), *_note(body), None, *_lines(body, to_customer), None, link]
    shop = " ".join(filter(None, (settings.shop_name, settings.shop_phone)))
    mail.set_content("\n".join([*(t(one) if one else "" for one in said), shop]))
    mail["Content-Language"] = t.language  # RFC 3282; set_content drops what is there before it
    return mail


def _subject(body: dict[str, Any], to_customer: bool) -> Message:
    state = OrderState(body["state"])
    if to_customer:
        return Message(f"mail-customer-{state}", reference=body["reference"])
    return Message("mail-shop-subject", reference=body["reference"], state=state.words)


def _note(body: dict[str, Any]) -> list[Message]:
    return [Message("mail-note", note=body["note"])] if body["note"] else []


def _lines(body: dict[str, Any], to_customer: bool) -> list[Message]:
    """What is ordered; to the shop with the words that were typed."""
    if not to_customer:
        return [*_wanted(body), *_words(body)]
    return [] if _typed(body) else _wanted(body)


def _wanted(body: dict[str, Any]) -> list[Message]:
    """What is ordered, a line each."""
    spec = AssemblySpec.read(body["spec"])
    hose, long = phrases.hose(spec.hose), phrases.overall_length(spec)
    lines = [
        Message("mail-wanted", quantity=body["quantity"], hose=hose, length=long),
        Message("mail-end-a", end=phrases.end(spec.end_a)),
        Message("mail-end-b", end=phrases.end(spec.end_b)),
    ]
    if clocking := phrases.clocking(spec):
        lines.append(Message("mail-clocking", clocking=clocking))
    if spec.covers:
        lines.append(Message("mail-covers", covers=tuple(phrases.cover(cover) for cover in spec.covers)))
    if spec.max_temperature_c is not None:
        lines.append(Message("mail-temperature", temperature=temperature(spec.max_temperature_c)))
    if body["number"]:
        lines.append(Message("mail-from-tag", number=tag_number.format(body["number"])))
    if body["needed_by"]:
        lines.append(Message("mail-needed-by", day=date.fromisoformat(body["needed_by"])))
    return lines


def _typed(body: dict[str, Any]) -> bool:
    """Whether the spec holds words that may be a stranger's: it is no record's, and names what no table has."""
    spec = AssemblySpec.read(body["spec"])
    named = tables().standard_of(spec.hose.standard) is None or spec.hose.edition is not None
    return not body.get("known") and (named or bool(spec.end_a.description or spec.end_b.description))


def _words(body: dict[str, Any]) -> list[Message]:
    """What the customer typed, for the shop to read."""
    lines = []
    if body["customer_reference"]:
        lines.append(Message("mail-customer-reference", reference=body["customer_reference"]))
    if body["changes"]:
        lines.append(Message("mail-changes", changes=body["changes"]))
    return lines
