"""The command that writes the scale card for photos of threads."""

from __future__ import annotations

import argparse
from pathlib import Path

from tagger import whole_files
from tagger.cli.commands import Answer
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.intake import unusable
from tagger.messages import Message


def options(one: argparse.ArgumentParser, t: Translator) -> None:
    """The options of the command."""
    one.add_argument("--out", type=Path, required=True, metavar="FILE", help=t("cli-option-pdf"))
    one.add_argument(
        "--paper", type=str.lower, choices=("a4", "letter"), default="a4", help=t("cli-option-card-paper")
    )


def scale_card(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes the card that lies beside an end in a photo, on a sheet to print at 100 %."""
    from tagger.papers import scale_card

    if a.out.suffix.lower() != ".pdf":
        raise StoreError(Problem("--out", str(a.out), Message("cli-out-not-pdf")))
    try:
        whole_files.write(a.out, scale_card.of(t.language, a.paper))
    except OSError as error:
        raise StoreError(Problem("--out", str(a.out), unusable(error))) from None
    return {"file": str(a.out)}, str(a.out)
