"""The application: store, settings, pages and guards put together."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Final

from fastapi import APIRouter, Depends, FastAPI
from jinja2 import BytecodeCache, Environment, FileSystemLoader, StrictUndefined
from jinja2.bccache import Bucket
from starlette.templating import Jinja2Templates

from api import bench, rest, scan
from api.bench.page import refused
from api.rest import problem
from api.scan import counting, pages
from api.scan.page_cache import PageCache
from api.settings import Settings
from api.shared.label_files import papers
from api.web import assets, errors, health, logs
from api.web.head import AnswerHead
from api.web.headers import SecurityHeaders
from api.web.identity import check_password, hash_password
from api.web.keys import ShopKeys
from api.web.limits import LimitBody, LimitRequests
from api.web.load import Full, LimitLoad, sent_away
from api.web.proxies import Proxies, Unnamed
from api.web.tables import ShopTables
from api.workers import outbox, print_queue
from api.workers.metrics import Metrics
from api.workers.retention import Eraser
from api.workers.scan_counts import ScanCounts
from api.workers.watcher import Watcher
from tagger import __version__, security_log
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.settings import SettingsError
from tagger.store import Keep, Role, Store

DEMO_NAME, DEMO_PASSWORD = "demo", "demonstration"
TEMPLATES = Path(__file__).parent / "templates"

# What is at which address is the same for every application of a process, and FastAPI works it out at the
# first request (0.3 s of CPU): once for all of them.
ADDRESSES = APIRouter()
ADDRESSES.include_router(scan.router, dependencies=[Depends(counting.count_scan)])
ADDRESSES.include_router(bench.router, prefix="/bench")
ADDRESSES.include_router(rest.router, prefix="/api/v1")
ADDRESSES.include_router(health.router)


def create_app(settings: Settings | None = None, *, store: Store | None = None) -> FastAPI:
    """The web application of one shop.

    ``settings``: by default from the environment. ``store``: by default opened from the settings'
    database; one that is handed in is left open at the end.
    """
    settings = settings or Settings.from_env()
    opened = store or Store.open(settings.database_url)
    opened.announce, opened.mail_customers = outbox.targets(settings), outbox.can_mail(settings)
    opened.proof_first, opened.shop_papers = settings.proof_first, frozenset(papers(settings))
    deliverer = outbox.Deliverer(opened, settings)
    queue = print_queue.PrintQueue(opened, settings)
    scans, watcher, keys = ScanCounts(opened), Watcher(opened), ShopKeys(settings)
    eraser = Eraser(opened, Keep.of(settings))
    metrics = Metrics(opened)

    @asynccontextmanager
    async def lifespan(app: FastAPI) -> AsyncIterator[None]:
        deliverer.start()
        queue.start()
        scans.start()
        watcher.start()
        eraser.start()
        if settings.metrics_listen:
            metrics.start(settings.metrics_listen)
        yield
        if settings.metrics_listen:
            metrics.stop()
        eraser.stop()
        watcher.stop()
        scans.stop()
        queue.stop()
        deliverer.stop()
        if store is None:
            opened.close()

    app = FastAPI(
        title=f"{settings.shop_name}: hose assembly tags",
        version=__version__,
        lifespan=lifespan,
        docs_url=None,
        redoc_url=None,
        openapi_url="/api/v1/openapi.json",
    )
    app.state.settings = settings
    app.state.store = opened
    app.state.print_queue = queue
    app.state.scans = scans
    app.state.keys = keys
    app.state.tables = ShopTables(settings, opened)
    app.state.templates = templates(settings)
    app.state.unnamed_proxy = Unnamed()
    app.state.ready = health.Ready()
    app.add_middleware(
        LimitLoad,
        most=settings.requests_at_once,
        under_way=metrics.under_way,
        sent_away=metrics.sent_away,
    )
    app.add_middleware(PageCache, watcher=watcher, scans=scans, keys=keys)
    app.add_middleware(
        LimitRequests,
        strangers=settings.public_requests_per_minute,
        known=settings.signed_in_requests_per_minute,
    )
    app.add_middleware(LimitBody)
    app.add_middleware(SecurityHeaders, secure=settings.secure)
    app.add_middleware(AnswerHead)
    app.add_middleware(Proxies, named=settings.trusted_proxies, unnamed=app.state.unnamed_proxy)
    app.add_middleware(logs.RequestLog, told=metrics.told if settings.metrics_listen else None)
    app.mount("/static", assets.Static(directory=assets.FOLDER), name="static")
    app.router.routes.extend(ADDRESSES.routes)
    problem.install(app)
    manners = errors.Manners(
        refused,
        pages.not_there,
        pages.foreign,
        problem.http,
        problem.BASE,
        pages.in_trouble,
        problem.database,
    )
    errors.install(app, manners)
    app.add_exception_handler(Full, sent_away)
    rest.describe(app, base_url=settings.base_url)
    logs.arrange(settings.log)
    security_log.to_stderr()
    first_start(opened, settings)
    return app


def first_start(store: Store, settings: Settings) -> None:
    """Print the one-time code while there is no person yet, or create the demonstration's sign-in.

    Raises SettingsError for a demonstration that others can reach: its password is in the README.
    """
    if settings.demo and not settings.only_here:
        raise SettingsError(
            Problem("TAGGER_DEMO", "1", Message("store-demo-reachable", base=settings.base_url))
        )
    if settings.demo and not store.people():
        store.add_person(DEMO_NAME, hash_password(DEMO_PASSWORD), Role.MANAGER)
    if not settings.demo:
        _end_demonstration(store)
    code = store.make_first_code()
    if code is not None:
        print(
            f"First start: make the manager at {settings.base_url}/bench/first with the code {code}",
            flush=True,
        )


def _end_demonstration(store: Store) -> None:
    """Switches the demonstration's sign-in off, if its password is still the known one."""
    known = store.person(DEMO_NAME) and check_password(store, DEMO_NAME, DEMO_PASSWORD)
    if known is None:
        return
    try:
        store.change_person(known.id, active=False)
    except StoreError:  # the last manager: nobody could sign in afterwards
        raise SettingsError(Problem("TAGGER_DEMO", None, Message("store-demo-only-manager"))) from None
    print(f'The sign-in "{DEMO_NAME}" of the demonstration was switched off.', flush=True)


class _Compiled(BytecodeCache):
    """Templates as they were compiled first in this process: applications made one after the other share them."""

    def __init__(self) -> None:
        self._kept: dict[str, bytes] = {}

    def load_bytecode(self, bucket: Bucket) -> None:
        if (compiled := self._kept.get(bucket.key)) is not None:
            bucket.bytecode_from_string(compiled)

    def dump_bytecode(self, bucket: Bucket) -> None:
        self._kept[bucket.key] = bucket.bytecode_to_string()


_COMPILED: Final = _Compiled()


def templates(settings: Settings) -> Jinja2Templates:
    """Jinja2 with escaping always on; a name that a page does not have is an error, not a blank."""
    environment = Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        bytecode_cache=_COMPILED,
    )
    environment.globals.update(asset=assets.url, settings=settings)
    environment.filters["number"] = tag_number.format
    return Jinja2Templates(env=environment)
