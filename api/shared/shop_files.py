"""The shop's lists of parts as files: uploaded, and to keep."""

from __future__ import annotations

from starlette.datastructures import UploadFile
from starlette.responses import Response

from api.shared import list_import, spreadsheets
from tagger import crimp_cards, shop_lists
from tagger.store import Store


def cells_of(file: UploadFile) -> list_import.Cells:
    """The cells of an uploaded file. Raises SpecError for one that is too big or no list."""
    return list_import.read(file.filename or "list.csv", file.file.read(list_import.MAX_BYTES + 1))


def crimp_cards_file(store: Store, form: str) -> Response:
    """The list of crimp cards; ``form`` is one of spreadsheets.FORMS."""
    rows = [crimp_cards.row_of(one) for one in store.crimps()]
    return spreadsheets.file(form, "crimp-cards", crimp_cards.COLUMNS, rows)


def own_hoses(store: Store, form: str) -> Response:
    """The list of the shop's hoses; ``form`` is one of spreadsheets.FORMS."""
    rows = [shop_lists.row_of_hose(one) for one in store.own_hoses()]
    return spreadsheets.file(form, "hoses", shop_lists.HOSE_COLUMNS, rows)


def fittings(store: Store, form: str) -> Response:
    """The list of fittings; ``form`` is one of spreadsheets.FORMS."""
    rows = [shop_lists.row_of(one) for one in store.fittings()]
    return spreadsheets.file(form, "fittings", shop_lists.FITTING_COLUMNS, rows)
