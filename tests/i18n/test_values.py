"""Values of any length in a message."""

from __future__ import annotations

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_long_text_and_a_long_list_are_cut_and_never_shown_as_a_fault_of_the_catalogue(
    language: str,
) -> None:
    t = Translator(language)
    long = t("stock-not-kept", number="7" * 5000)
    many = t("store-batch-of", numbers=tuple(f"{n:05}-000001" for n in range(500)), why=Message("spec-empty"))
    for said, first in ((long, "7" * 900), (many, "00000-000001")):
        assert first in said and "…" in said and "?" not in said, said
