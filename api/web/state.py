"""What the application keeps for its pages, as a request finds it: store, settings, tables, queue."""

from __future__ import annotations

from typing import TYPE_CHECKING

from fastapi import Request
from starlette.templating import Jinja2Templates

from api.settings import Settings
from api.web.keys import ShopKeys
from api.web.tables import ShopTables
from tagger.signing import Keys
from tagger.store import Store
from tagger.trade.tables import Tables
from tagger.words import Words

if TYPE_CHECKING:
    from api.workers.print_queue import PrintQueue
    from api.workers.scan_counts import ScanCounts


def store_of(request: Request) -> Store:
    store: Store = request.app.state.store
    return store


def settings_of(request: Request) -> Settings:
    settings: Settings = request.app.state.settings
    return settings


def tables_of(request: Request) -> Tables:
    """The trade's tables, with the shop's own rows."""
    tables: ShopTables = request.app.state.tables
    return tables.now()


def keys_of(request: Request) -> Keys:
    """The keys that sign the shop's tags, public ones and all."""
    keys: ShopKeys = request.app.state.keys
    return keys.now()


def queue_of(request: Request) -> PrintQueue:
    queue: PrintQueue = request.app.state.print_queue
    return queue


def scans_of(request: Request) -> ScanCounts:
    """The scans that wait to be written."""
    scans: ScanCounts = request.app.state.scans
    return scans


def templates_of(request: Request) -> Jinja2Templates:
    """The page templates of all rooms."""
    templates: Jinja2Templates = request.app.state.templates
    return templates


def words_of(request: Request) -> Words:
    """The words for parts in the shop's own language."""
    return Words(settings_of(request).language)
