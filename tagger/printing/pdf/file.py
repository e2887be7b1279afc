"""A PDF document that writes each page to the file as it comes and then forgets it.

reportlab keeps every page in memory until the end; for ten thousand tags that is a great
deal. This document hands each page's bytes to the file at once and keeps only its offset: pages are
objects that reportlab never hears of, but for their number.
"""

from __future__ import annotations

import hashlib
from array import array
from collections.abc import Iterable, Mapping
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
        resources = pdfdoc.PDFResourceDictionary()
        resources.basicFonts()
        resources.basicProcs()
        self._resources = self._number_of(self.Reference(resources).name)
        self._forms: dict[bytes, int] = {}  # form objects by the digests of what they draw
        self._of_page = b""  # the resources of the pages that come, where they draw form objects
        self._offsets = array("Q", [0])  # of each object by its number
        pages = _Pages()
        pages.MediaBox = pdfdoc.PDFArray([0, 0, *(round(side * POINTS_PER_MM, 4) for side in size)])
        pages.Resources = self.Reference(resources)
        self.Pages = self.Catalog.Pages = pages
        self._parent = self._number_of(self.Reference(pages).name)

    def use(self, used: dict[bool, set[int]]) -> None:
        """Notes letters that pages show, by face."""
        for bold, codes in used.items():
            self._fonts[bold].used |= codes

    def use_forms(self, forms: Mapping[str, bytes]) -> None:
        """What the pages that come draw by these names, in place of those before: operators, deflated.

        Each is written once, whatever it is called by other pages.
        """
        self._of_page = b""
        if forms:
            named = b"".join(b"/%b %d 0 R" % (name.encode(), self._form(forms[name])) for name in forms)
            fonts = self._number_of(pdfdoc.BasicFonts)
            own = self._written(b"<</Font %d 0 R/ProcSet[/PDF/Text]/XObject<<%b>>>>" % (fonts, named))
            self._of_page = b"/Resources %d 0 R" % own

    def add_page(self, packed: bytes) -> None:
        """One page; ``packed``: its operators, deflated."""
        contents = self._written(_stream(b"/Filter/FlateDecode", packed))
        page = b"<</Type/Page/Parent %d 0 R%b/Contents %d 0 R>>" % (self._parent, self._of_page, contents)
        self.Pages.numbers.append(self._written(page))

    def _form(self, packed: bytes) -> int:
        """The number of the form object that draws this."""
        digest = hashlib.sha256(packed).digest()
        if digest not in self._forms:
            about = b"/Type/XObject/Subtype/Form/BBox[-1000 -1000 200000 200000]/Resources %d 0 R"
            about = about % self._resources + b"/Filter/FlateDecode"
            self._forms[digest] = self._written(_stream(about, packed))
        return self._forms[digest]

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


def _stream(about: bytes, packed: bytes) -> bytes:
    return b"<<%b/Length %d>>\nstream\n%bendstream" % (about, len(packed), packed)
