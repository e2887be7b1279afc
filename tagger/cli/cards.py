"""The command that writes the fitter's card of a hose assembly."""

from __future__ import annotations

import argparse

from tagger import whole_files
from tagger.cli.commands import Answer, open_store, shop_settings, shop_tables, tags_here
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator
from tagger.intake import unusable
from tagger.messages import Message


def card(a: argparse.Namespace, t: Translator) -> Answer:
    """Writes the card that goes into the bag with a hose assembly; refused for one that must not be used."""
    from tagger.papers import fitters_card

    if a.out.suffix.lower() != ".pdf":
        raise StoreError(Problem("--out", str(a.out), Message("cli-out-not-pdf")))
    with open_store() as store:
        shop, known = shop_settings(), store.assembly(a.number)
        store.refuse_blocked([known.number])
        [tag] = tags_here(store, [known], shop, t)
        body = fitters_card.of_tag(tag, shop, shop_tables(store), t.language)
    try:
        whole_files.write(a.out, body)
    except OSError as error:
        raise StoreError(Problem("--out", str(a.out), unusable(error))) from None
    return {"file": str(a.out)}, str(a.out)
