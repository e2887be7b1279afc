"""Form objects: each name stands for one drawing, whatever else is in the file."""

import io
import zlib

import pypdfium2

from tagger.drawing import Drawing, Text
from tagger.printing.pdf.file import StreamedDocument
from tagger.printing.pdf.fonts import FontCodes
from tagger.printing.pdf.forms import Forms
from tagger.printing.pdf.operators import page_code

ALIKE = (  # the SHA-256 digests of their operators begin with the same 32 bits
    "Working pressure 17588 bar, not above 100 degrees C",
    "Working pressure 119544 bar, not above 100 degrees C",
)


def written(drawings):
    out, fonts = io.BytesIO(), FontCodes()
    document = StreamedDocument(out, "forms", (100, 60))
    forms = Forms(drawings, fonts)
    document.use_forms(forms.packed)
    for drawing in drawings:
        code = page_code([(drawing, 0.0, 0.0)], 60, fonts, forms.cut)
        document.add_page(zlib.compress(code.encode("latin-1")))
    document.use(fonts.used)
    document.close()
    return out.getvalue()


def test_no_label_shows_what_another_form_of_the_file_says():
    drawings = [Drawing(100.0, 60.0, (Text(5.0, 10.0, text, 3.0),)) for text in ALIKE for _ in range(20)]
    data = written(drawings)
    assert data.count(b"/Subtype/Form") == 2
    pages = pypdfium2.PdfDocument(data)
    shown = [page.get_textpage().get_text_bounded() for page in pages]
    assert shown == [text for text in ALIKE for _ in range(20)]
