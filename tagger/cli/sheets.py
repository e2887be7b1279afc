"""The command that writes gauge sheets: the tables at true scale on A4 or Letter."""

from __future__ import annotations

import argparse
from pathlib import Path

from tagger import whole_files
from tagger.cli.commands import Answer, shop_settings
from tagger.errors import Problem, StoreError
from tagger.gauges import KINDS, PAPERS
from tagger.i18n import Translator
from tagger.intake import unusable
from tagger.messages import Message


def options(one: argparse.ArgumentParser, t: Translator) -> None:
    """What ``tagger sheet`` takes."""
    one.add_argument("kind", choices=KINDS, help=t("cli-option-sheet-kind"))
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))
    one.add_argument(
        "--paper", type=str.lower, choices=tuple(PAPERS), default="a4", help=t("cli-option-sheet-paper")
    )
    one.add_argument("--family", default="", metavar="FAMILY", help=t("cli-option-sheet-family"))


def sheet(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes one gauge sheet, with the shop's own rows; it is printed at 100 %."""
    from tagger.gauges import sheets

    if a.out.suffix.lower() != ".pdf":
        raise StoreError(Problem("--out", str(a.out), Message("cli-out-not-pdf")))
    shop = shop_settings()
    body = sheets.to_pdf(a.kind, shop, shop.tables(), paper=a.paper, family=a.family, language=t.language)
    try:
        whole_files.write(a.out, body)
    except OSError as error:
        raise StoreError(Problem("--out", str(a.out), unusable(error))) from None
    return {"file": str(a.out)}, str(a.out)
