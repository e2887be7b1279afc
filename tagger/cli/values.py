"""The command over the shop's own values: what manufacturers said, kept for every later assembly."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from tagger.cli.commands import Answer, open_store
from tagger.i18n import Translator
from tagger.messages import Message, Value

if TYPE_CHECKING:
    from tagger.store import KeptRow


def values(a: argparse.Namespace, t: Translator) -> Answer:
    """The shop's own values, those that ended with ``--all``; withdraws one."""
    with open_store() as store:
        if a.withdraw is not None:
            rows = [store.withdraw_shop_row(a.withdraw, a.reason or "")]
        else:
            rows = store.shop_rows(ended=a.all)
    lines = [t(_line(row)) for row in rows]
    return {"values": [row.as_dict(t) for row in rows]}, "\n".join(lines) or t("cli-values-none")


def _line(row: KeptRow) -> Message:
    common: dict[str, Value] = {
        "id": str(row.id),
        "value": row.message,
        "day": row.at.date(),
        "by": row.by or "none",
    }
    if row.ended_at is None:
        return Message("cli-value", **common)
    if row.why is not None:
        return Message("cli-value-withdrawn", **common, ended=row.ended_at.date(), why=row.why)
    return Message("cli-value-replaced", **common, ended=row.ended_at.date(), other=str(row.replaced_by))
