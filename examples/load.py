"""The invented week, put into a store: what was built, proved, printed, asked for and withdrawn.

Loading twice changes nothing: every act has a key.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from tagger import lists
from tagger.crimp_cards import read_cards
from tagger.record import recorded
from tagger.shop_lists import read_fittings, read_own_hoses, table_of
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Contact, Kind, OrderRequest, Registration, Store
from tagger.trade import assess
from tagger.trade.tables import tables

WEEK = Path(__file__).parent / "week"
MONDAY = date(2026, 11, 16)
WITHDRAWN = "Hose lot H-2310: cover blistered at proof test"
YARD, QUARRY, FARM = "Ostervale Timber Yard", "Brindlemere Quarry", "Farrow Glen Farm"


@dataclass(frozen=True)
class Job:
    """One job of the week: a spec's file, for whom, and the day of the week it was built."""

    spec: str
    customer: str
    machine: str
    position: str
    day: int
    count: int = 1
    years_ago: int = 0


JOBS = (
    Job("boom_rod_side", QUARRY, "Wheel loader 7", "boom cylinder, rod side", 0),
    Job("steering_two_elbows", FARM, "Tractor, red", "steering, left", 0),
    Job("travel_drive", QUARRY, "Drill rig 2", "travel drive, pressure", 1, count=2),
    Job("pilot_line", YARD, "Forwarder 3", "pilot, joystick", 1),
    Job("winch_motor", YARD, "Winch truck", "winch motor, port B", 2),
    Job("auger_feed", FARM, "Grain wagon", "auger feed", 3),
    Job("press_return", FARM, "Workshop press", "return", 3, years_ago=7),
)


@dataclass
class Week:
    """What loading gave: the assemblies by spec name, those of the list, and the order request."""

    built: dict[str, list[Assembly]]
    service_run: list[Assembly]
    order: OrderRequest


class Calendar:
    """The store's clock during the week: the demonstration's days, not today's."""

    def __init__(self) -> None:
        self.moment = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.moment += timedelta(seconds=47)
        return self.moment

    def go_to(self, day: date, hour: int) -> None:
        self.moment = datetime(day.year, day.month, day.day, hour, 0, tzinfo=UTC)


def read_spec(name: str) -> AssemblySpec:
    """One of the week's specs."""
    return AssemblySpec.read((WEEK / f"{name}.json").read_text(encoding="utf-8"))


def load_week(store: Store, calendar: Calendar) -> Week:
    """Plays the week into a store that was opened with ``now=calendar``."""
    _parts(store)
    built = {job.spec: _build(store, calendar, job) for job in JOBS}
    calendar.go_to(MONDAY + timedelta(days=1), 14)
    run = _service_run(store)
    calendar.go_to(MONDAY + timedelta(days=3), 7)
    boom = built["boom_rod_side"][0]
    _scanned(store, [boom, boom, built["steering_two_elbows"][0], *run[:3]])
    order = store.request_order(
        number=boom.number,
        quantity=2,
        needed_by=MONDAY + timedelta(days=7),
        reference="Loader 7, spare",
        contact=Contact(name="The night shift", company=QUARRY, phone="555-0117"),
        changes="100 mm longer, please",
        key="demonstration order",
    )
    calendar.go_to(MONDAY + timedelta(days=4), 9)
    if not store.withdrawals(holds=True):
        store.withdraw(WITHDRAWN, hose_lot="H-2310", by="bench")
    return Week(built, run, order)


def _parts(store: Store) -> None:
    """What the shop stocks: fittings, hoses under their part numbers, and the crimp cards of both together."""
    store.keep_fittings(read_fittings(table_of(WEEK / "fittings.csv"), tables()), by="bench")
    if not store.own_hoses():
        store.keep_own_hoses(read_own_hoses(table_of(WEEK / "hoses.csv"), tables()), by="bench")
    if not store.crimps():
        store.keep_crimps(read_cards(table_of(WEEK / "crimp_cards.csv"), tables()), by="bench")


def _build(store: Store, calendar: Calendar, job: Job) -> list[Assembly]:
    day = MONDAY + timedelta(days=job.day)
    day = day.replace(year=day.year - job.years_ago)
    calendar.go_to(day, 9)
    spec = read_spec(job.spec)
    found = assess(spec)
    return _once(
        store,
        f"demonstration {job.spec}",
        lambda key: store.register(
            spec,
            found,
            count=job.count,
            built_on=day,
            by="bench",
            customer=job.customer,
            machine=job.machine,
            position=job.position,
            key=key,
        ),
    )


def _service_run(store: Store) -> list[Assembly]:
    rows = [
        Registration(
            one.spec,
            assess(one.spec),
            one.quantity,
            MONDAY + timedelta(days=1),
            lot_reason=one.lot_reason,
            **recorded(one),
        )
        for one in lists.read_list(WEEK / "service_run.csv")
    ]
    return _once(store, "demonstration run", lambda key: store.register_many(rows, by="bench", key=key))


def _scanned(store: Store, assemblies: list[Assembly]) -> None:
    """Phones at the machines, in the order given."""
    if not store.last([one.number for one in assemblies], Kind.SCANNED):
        for one in assemblies:
            store.record(one.number, Kind.SCANNED)


def _once(store: Store, key: str, register: Callable[[str], list[Assembly]]) -> list[Assembly]:
    """Registers, and writes the bench's lines only where they are not there yet."""
    assemblies = register(key)
    numbers = [one.number for one in assemblies]
    if not store.last(numbers, Kind.PRINTED):
        store.record_many(numbers, Kind.PRINTED, {"template": "hang_tag"}, by="bench")
        store.record_many(numbers, Kind.FITTED, {"note": "handed over"}, by="counter")
    return assemblies
