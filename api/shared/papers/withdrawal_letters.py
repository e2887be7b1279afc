"""Letters about a withdrawal, one for each customer."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from reportlab.platypus import PageBreak

from api.settings import Settings
from tagger import phrases
from tagger.code import number as tag_number
from tagger.i18n import Translator
from tagger.i18n.figures import show_date
from tagger.messages import Message
from tagger.papers import document
from tagger.store import Assembly, Scope, Withdrawal


def letters(
    withdrawal: Withdrawal, items: Sequence[Assembly], settings: Settings, language: str | None = None
) -> bytes:
    """The PDF's bytes, in ``language`` (default: the shop's); a customer's letter begins on a new page."""
    t = Translator(language or settings.language)
    story = []
    ordered = sorted(items, key=lambda item: item.customer or "")
    for customer, theirs in groupby(ordered, key=lambda item: item.customer or ""):
        story += [*_letter(customer, list(theirs), withdrawal, settings, t), PageBreak()]
    title = t("papers-letter-title", withdrawal=withdrawal.id)
    return document.to_pdf(story[:-1], title=title, settings=settings)


def _letter(
    customer: str, items: Sequence[Assembly], withdrawal: Withdrawal, settings: Settings, t: Translator
) -> list[object]:
    heading = [
        t("papers-tag-number"),
        t("papers-machine-position"),
        t("papers-hose-assembly"),
        t("papers-built-on"),
    ]
    return [
        *document.head(settings),
        document.text(customer or t("papers-letter-owner"), 11, bold=True),
        document.text(show_date(withdrawal.at.date(), t)),
        document.gap(6),
        document.text(t("papers-letter-heading"), 15, bold=True),
        document.gap(3),
        document.text(" ".join(t(said) for said in _why(withdrawal))),
        document.gap(3),
        document.text(t("papers-letter-steps")),
        document.gap(3),
        document.text(t("papers-letter-injury"), bold=True),
        document.gap(4),
        document.table([heading, *(_row(item, t) for item in items)], [32, 45, 70, 23], heading=True),
        document.gap(4),
        document.text(f"{settings.shop_name} {settings.shop_phone} {settings.shop_email}"),
    ]


def _why(withdrawal: Withdrawal) -> list[Message]:
    """What the hoses have in common, where it is a lot, and the reason as it was typed in."""
    reason = Message("papers-letter-reason", reason=withdrawal.reason)
    match withdrawal.scope:
        case Scope.HOSE_LOT:
            return [Message("papers-letter-made-from", lot=withdrawal.value), reason]
        case Scope.FITTING_LOT:
            return [Message("papers-letter-fittings", lot=withdrawal.value), reason]
    return [reason]


def _row(item: Assembly, t: Translator) -> list[str]:
    place = ", ".join(part for part in (item.machine, item.position) if part)
    what = f"{t(phrases.hose(item.spec.hose))}, {t(phrases.overall_length(item.spec))}"
    built = show_date(item.built_on, t) if item.built_on else ""
    return [tag_number.format(item.number), place, what, built]
