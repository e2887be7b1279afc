"""The shop's lists of parts as files: uploaded, and to keep."""

from __future__ import annotations

from starlette.datastructures import UploadFile
from starlette.responses import Response

from api.shared import list_import, spreadsheets
from tagger import shop_lists
from tagger.store import Store


def cells_of(file: UploadFile) -> list_import.Cells:
    """The cells of an uploaded file. Raises SpecError for one that is too big or no list."""
    return list_import.read(file.filename or "list.csv", file.file.read(list_import.MAX_BYTES + 1))


def fittings(store: Store, form: str) -> Response:
    """The list of fittings; ``form`` is one of spreadsheets.FORMS."""
    rows = [shop_lists.row_of(one) for one in store.fittings()]
    return spreadsheets.file(form, "fittings", shop_lists.FITTING_COLUMNS, rows)
