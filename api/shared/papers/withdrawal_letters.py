"""Letters about a withdrawal, one for each customer."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from reportlab.platypus import PageBreak

from api.settings import Settings
from api.shared.papers import document
from tagger.code import number as tag_number
from tagger.store import Assembly, Scope, Withdrawal
from tagger.words import Words

_OF = {Scope.TAG: "", Scope.HOSE_LOT: "They are made from hose lot {}. ", Scope.FITTING_LOT: "They carry fittings of lot {}. "}  # fmt: skip


def letters(withdrawal: Withdrawal, items: Sequence[Assembly], settings: Settings) -> bytes:
    """The PDF's bytes; a customer's letter begins on a new page."""
    story = []
    ordered = sorted(items, key=lambda item: item.customer or "")
    for customer, theirs in groupby(ordered, key=lambda item: item.customer or ""):
        story += [*_letter(customer, list(theirs), withdrawal, settings), PageBreak()]
    return document.to_pdf(story[:-1], title=f"Withdrawal {withdrawal.id}", settings=settings)


def _letter(
    customer: str, items: Sequence[Assembly], withdrawal: Withdrawal, settings: Settings
) -> list[object]:
    words = Words(settings.language)
    rows = [
        [tag_number.format(item.number), ", ".join(part for part in (item.machine, item.position) if part),
         f"{words.hose(item.spec.hose)}, {words.length(item.spec)}", item.built_on.isoformat() if item.built_on else ""]
        for item in items
    ]  # fmt: skip
    return [
        *document.head(settings),
        document.text(customer or "To whoever has these hoses", 11, bold=True),
        document.text(f"{withdrawal.at:%Y-%m-%d}"),
        document.gap(6),
        document.text("Do not use the hose assemblies listed here", 15, bold=True),
        document.gap(3),
        document.text(
            f"{_OF[withdrawal.scope].format(withdrawal.value)}They are withdrawn. Reason: {withdrawal.reason}"
        ),
        document.gap(3),
        document.text(
            "Stop the machine, release all stored pressure as its maker's manual says, and take these hoses out of "
            "use. Compare the tag number on each hose. Then call us: we replace them. Oil under pressure that "
            "enters the skin is an emergency: go to hospital at once."
        ),
        document.gap(4),
        document.table(
            [["Tag", "Machine, position", "Hose", "Built on"], *rows], [32, 45, 70, 23], heading=True
        ),
        document.gap(4),
        document.text(f"{settings.shop_name} {settings.shop_phone} {settings.shop_email}"),
    ]
