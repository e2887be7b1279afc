"""The tag fonts inside a PDF, written once and only with the letters used.

reportlab gives each letter a code in the order it meets them. Here the order is fixed, so
that pages made in several processes agree on the codes without talking to one another.
"""

from __future__ import annotations

from functools import lru_cache

from reportlab.pdfbase import pdfdoc
from reportlab.pdfbase.ttfonts import TTFont

from tagger.printing.fonts import FILES, widths

_ESCAPED = {ord("("): "\\(", ord(")"): "\\)", ord("\\"): "\\\\", 10: "\\n", 13: "\\r"}


def _seldom(code: int) -> tuple[bool, int]:
    """Order of the letters: western ones and signs first, so that most files embed one subset a face."""
    return (not (code < 0x100 or 0x2000 <= code < 0x2300), code)


class TagFont(TTFont):  # type: ignore[misc]
    """A font whose letters have fixed codes and which embeds only the letters in ``used``."""

    def __init__(self, bold: bool) -> None:
        super().__init__("tagger-bold" if bold else "tagger", str(FILES[bold]), asciiReadable=True)
        self.used: set[int] = {32}
        self.letters = "".join(map(chr, sorted(widths(bold), key=_seldom)))

    def join(self, doc: object) -> None:
        """Gives every letter its code in ``doc``."""
        self.splitString(self.letters, doc)

    def addObjects(self, doc: pdfdoc.PDFDocument) -> None:
        state = self.state[doc]
        kept = [[code if code in self.used else 0 for code in subset] for subset in state.subsets]
        while len(kept) > 1 and not set(kept[-1]) - {0, 32}:  # every subset has a space of its own
            kept.pop()
        state.subsets = kept
        super().addObjects(doc)


Letters = dict[bool, set[int]]  # code points by face: True is bold


class FontCodes:
    """Turns text into (font name, escaped codes) of the fixed order, and notes the letters used."""

    NAMES = ("F1", "F2")  # book, bold: reportlab numbers fonts in the order they join a document

    def __init__(self) -> None:
        self.used: Letters = {False: set(), True: set()}

    def use(self, letters: Letters) -> None:
        """Notes letters that are shown."""
        for bold, codes in letters.items():
            self.used[bold] |= codes

    def encode(self, text: str, bold: bool) -> tuple[tuple[str, str], ...]:
        runs, letters = _encoded(text, bold)
        self.used[bold] |= letters
        return runs


@lru_cache(maxsize=2)
def _codes(bold: bool) -> dict[int, int]:
    """The fixed code of every letter: the subset in the high byte."""
    font, doc = TagFont(bold), pdfdoc.PDFDocument()
    font.join(doc)
    return dict(font.state[doc].assignments)


@lru_cache(maxsize=2048)
def _encoded(text: str, bold: bool) -> tuple[tuple[tuple[str, str], ...], frozenset[int]]:
    """(font name, escaped codes) of each run of letters of one subset, and all letters."""
    codes = _codes(bold)
    runs: list[tuple[int, list[str]]] = []
    for letter in text:
        subset, code = divmod(codes.get(ord(letter), 0), 256)
        if not runs or runs[-1][0] != subset:
            runs.append((subset, []))
        runs[-1][1].append(_ESCAPED.get(code) or chr(code))
    name = FontCodes.NAMES[bold]
    shown = tuple((f"/{name}+{subset}", "".join(run)) for subset, run in runs)
    return shown, frozenset(map(ord, text))


def joined_fonts(doc: pdfdoc.PDFDocument) -> dict[bool, TagFont]:
    """Both fonts registered in ``doc`` under ``FontCodes.NAMES``."""
    fonts = {}
    for bold, name in zip((False, True), FontCodes.NAMES, strict=True):
        font = TagFont(bold)
        font.join(doc)
        assert font.getSubsetInternalName(0, doc) == f"/{name}+0"
        fonts[bold] = font
    return fonts
