"""The commands that write the wall chart and the pocket booklet."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from tagger import whole_files
from tagger.cli.commands import Answer, open_store, shop_settings, shop_tables
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.intake import unusable
from tagger.messages import Message
from tagger.trade.fittings import Fitting


def chart(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes the wall chart: every connection, or those of the shop's own fittings."""
    from tagger.papers import wall_chart

    _refuse_other_than_pdf(a.out)
    stock: Sequence[Fitting] | None = None
    if a.stock or a.stock_numbers:
        with open_store() as store:
            stock = store.fittings()
    body = wall_chart.of_shop(
        shop_settings(), shop_tables(), t.language, paper=a.paper, stock=stock, numbers=a.stock_numbers
    )
    _write(a.out, body)
    return {"file": str(a.out), "paper": a.paper}, str(a.out)


def booklet(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes the booklet on sheets to be folded, and says how; or page by page."""
    from tagger.papers import booklet as booklets

    _refuse_other_than_pdf(a.out)
    body = booklets.of_shop(shop_settings(), shop_tables(), t.language, paper=a.paper, page_by_page=a.pages)
    _write(a.out, body)
    lines = [str(a.out)] if a.pages else [str(a.out), t("charts-fold")]
    return {"file": str(a.out), "paper": a.paper}, "\n".join(lines)


def _refuse_other_than_pdf(out: Path) -> None:
    if out.suffix.lower() != ".pdf":
        raise StoreError(Problem("--out", str(out), Message("cli-out-not-pdf")))


def _write(out: Path, body: bytes) -> None:
    try:
        whole_files.write(out, body)
    except OSError as error:
        raise StoreError(Problem("--out", str(out), unusable(error))) from None
