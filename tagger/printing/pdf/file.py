"""A PDF document that writes each page to the file as it comes and then forgets it.

reportlab keeps every page in memory until the end; for ten thousand tags that is a great
deal. This document hands each page's bytes to the file at once and keeps only its offset: pages are
objects that reportlab never hears of, but for their number.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable
from typing import BinaryIO

from reportlab.pdfbase import pdfdoc

from tagger.printing.pdf.fonts import joined_fonts
from tagger.printing.pdf.operators import POINTS_PER_MM


class _File(pdfdoc.PDFFile):  # type: ignore[misc]
    """reportlab's collector of bytes, writing through instead of keeping."""

    offset: int

    def __init__(self, out: BinaryIO, version: tuple[int, int]) -> None:
        self._out = out
        super().__init__(version)

    def add(self, data: bytes | str) -> int:
        """Writes; answers the offset at which the data begins."""
        encoded: bytes = pdfdoc.pdfdocEnc(data)
        start = self.offset
        self.offset = start + len(encoded)
        self._out.write(encoded)
        return start


class _Pages(pdfdoc.PDFPages):  # type: ignore[misc]
    """The pages by their object numbers, with what each of them inherits: it is written once."""

    __NoDefault__ = (*pdfdoc.PDFPages.__NoDefault__, "MediaBox", "Resources")

    def __init__(self) -> None:
        super().__init__()
        self.numbers = array("L")

    def check_format(self, document: pdfdoc.PDFDocument) -> None:
        self.Kids, self.Count = _References(self.numbers), len(self.numbers)


class _References(pdfdoc.PDFObject):  # type: ignore[misc]
    """An array of references to objects by their numbers."""

    def __init__(self, numbers: Iterable[int]) -> None:
        self._numbers = numbers

    def format(self, document: pdfdoc.PDFDocument) -> bytes:
        return b"[" + b"\n".join(b"%d 0 R" % number for number in self._numbers) + b"]"


class StreamedDocument(pdfdoc.PDFDocument):  # type: ignore[misc]
    """``add_page`` for each page of ``size`` (mm), then ``close``. ``used`` letters are embedded at the end."""

    def __init__(self, out: BinaryIO, title: str, size: tuple[float, float]) -> None:
        super().__init__(compression=1, invariant=1)
        self.setTitle(title)
        self.setCreator("tagger")
        self._file = _File(out, self._pdfVersion)
        self._fonts = joined_fonts(self)
        self._resources = pdfdoc.PDFResourceDictionary()
        self._resources.basicFonts()
        self._resources.basicProcs()
        self._forms: dict[str, pdfdoc.PDFObjectReference] = {}
        self._offsets = array("Q", [0])  # of each object by its number
        pages = _Pages()
        pages.MediaBox = pdfdoc.PDFArray([0, 0, *(round(side * POINTS_PER_MM, 4) for side in size)])
        pages.Resources = self.Reference(self._resources)
        self.Pages = self.Catalog.Pages = pages
        self._parent = self._number_of(self.Reference(pages).name)

    def use(self, used: dict[bool, set[int]]) -> None:
        """Notes letters that pages show, by face."""
        for bold, codes in used.items():
            self._fonts[bold].used |= codes

    def add_form(self, name: str, packed: bytes) -> None:
        """A form object that pages draw by its name; ``packed``: its operators, deflated. Written once."""
        if name in self._forms:
            return
        about = {"Type": "XObject", "Subtype": "Form", "Filter": "FlateDecode"}
        form = pdfdoc.PDFStream(
            pdfdoc.PDFDictionary({key: pdfdoc.PDFName(value) for key, value in about.items()}),
            packed,
            filters=[],
        )
        form.dictionary["BBox"] = pdfdoc.PDFArray([-1000, -1000, 200_000, 200_000])
        form.dictionary["Resources"] = self.Reference(self._resources)
        self._forms[name] = self.Reference(form)
        self._resources.XObject = self._forms
        self._put(self._forms[name].name)

    def add_page(self, packed: bytes) -> None:
        """One page; ``packed``: its operators, deflated."""
        stream = b"<</Filter/FlateDecode/Length %d>>\nstream\n%bendstream" % (len(packed), packed)
        page = b"<</Type/Page/Parent %d 0 R/Contents %d 0 R>>"
        contents = self._written(stream)
        self.Pages.numbers.append(self._written(page % (self._parent, contents)))

    def close(self) -> None:
        """Writes fonts, catalogue and cross-reference table."""
        for font in self.delayedFonts:
            font.addObjects(self)
        self.Reference(self.Catalog)
        self.Reference(self.info)
        self.Outlines.prepare(self, None)
        self.Catalog.Outlines = None
        number = 0
        while (number := number + 1) <= self.objectcounter:  # formatting an object may register more
            if number in self.numberToId:
                self._put(self.numberToId[number])
        start = self._file.add(b"xref\n0 %d\n0000000000 65535 f \n" % number)
        for offset in self._offsets[1:]:
            self._file.add(b"%010d 00000 n \n" % offset)
        trailer = pdfdoc.PDFTrailer(
            startxref=start,
            Size=number,
            Root=self.Reference(self.Catalog),
            Info=self.Reference(self.info),
            ID=self.ID(),
        )
        self._file.add(trailer.format(self))

    def _put(self, name: str) -> None:
        """Writes one of reportlab's objects once; afterwards only its offset is kept."""
        number = self._number_of(name)
        if number < len(self._offsets) and self._offsets[number]:
            return
        written = pdfdoc.PDFIndirectObject(name, self.idToObject[name]).format(self)
        self._keep_offset(number, self._file.add(written))
        if isinstance(self.idToObject[name], pdfdoc.PDFStream):
            self.idToObject[name] = None

    def _written(self, content: bytes) -> int:
        """Writes an object that reportlab does not know; its number."""
        self.objectcounter += 1
        number = int(self.objectcounter)
        self._keep_offset(number, self._file.add(b"%d 0 obj\n%b\nendobj\n" % (number, content)))
        return number

    def _number_of(self, name: str) -> int:
        number, _ = self.idToObjectNumberAndVersion[name]
        return int(number)

    def _keep_offset(self, number: int, offset: int) -> None:
        self._offsets.extend([0] * (number + 1 - len(self._offsets)))
        self._offsets[number] = offset
