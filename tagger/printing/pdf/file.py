"""A PDF document that writes each page to the file as it comes and then forgets it.

reportlab keeps every page in memory until the end; for ten thousand tags that is a great
deal. This document hands each page's bytes to the file at once and keeps only its offset.
"""

from __future__ import annotations

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
    """The pages, with what each of them inherits: it is written once."""

    __NoDefault__ = (*pdfdoc.PDFPages.__NoDefault__, "MediaBox", "Resources")


class _Page(pdfdoc.PDFCatalog):  # type: ignore[misc]
    """A page that says nothing but where its operators are."""

    __Comment__ = ""
    __Defaults__ = {"Type": pdfdoc.PDFName("Page")}  # noqa: RUF012
    __NoDefault__ = ("Parent", "Contents")
    __Refs__ = __NoDefault__


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
        pages = _Pages()
        pages.MediaBox = pdfdoc.PDFArray([0, 0, *(round(side * POINTS_PER_MM, 4) for side in size)])
        pages.Resources = self.Reference(self._resources)
        self.Pages = self.Catalog.Pages = pages

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
        stream = pdfdoc.PDFStream(
            pdfdoc.PDFDictionary({"Filter": pdfdoc.PDFName("FlateDecode")}), packed, filters=[]
        )
        page = _Page()
        page.Contents, page.Parent = self.Reference(stream), self.Reference(self.Pages)
        name = self.thisPageName()
        self.addPage(page)
        self.Pages.pages[-1] = pdfdoc.PDFObjectReference(name)
        self._put(page.Contents.name)
        self._put(name)

    def close(self) -> None:
        """Writes fonts, catalogue and cross-reference table."""
        for font in self.delayedFonts:
            font.addObjects(self)
        self.Reference(self.Catalog)
        self.Reference(self.info)
        self.Outlines.prepare(self, None)
        self.Catalog.Outlines = None
        number = 0
        while (number := number + 1) in self.numberToId:  # formatting an object may register more
            self._put(self.numberToId[number])
        table = pdfdoc.PDFCrossReferenceTable()
        table.addsection(0, [self.numberToId[n] for n in range(1, number)])
        start = self._file.add(table.format(self))
        trailer = pdfdoc.PDFTrailer(
            startxref=start,
            Size=number,
            Root=self.Reference(self.Catalog),
            Info=self.Reference(self.info),
            ID=self.ID(),
        )
        self._file.add(trailer.format(self))

    def _put(self, name: str) -> None:
        """Writes an object once; afterwards only its offset is kept."""
        if name in self.idToOffset:
            return
        written = pdfdoc.PDFIndirectObject(name, self.idToObject[name]).format(self)
        self.idToOffset[name] = self._file.add(written)
        if name.startswith("Page") or isinstance(self.idToObject[name], pdfdoc.PDFStream):
            self.idToObject[name] = None
