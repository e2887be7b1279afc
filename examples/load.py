"""The invented week, put into a store: what the shop stocks and builds. What becomes of it: ``acts.py``.

Loading twice changes nothing: what is built has a key, and every other act is looked for first.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from examples import acts
from examples.calendar import MONDAY, WEEK, Calendar
from tagger import lists
from tagger.crimp_cards import read_cards
from tagger.record import recorded
from tagger.settings import ShopSettings
from tagger.shop_lists import read_fittings, read_own_hoses, table_of
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Kind, OrderRequest, Registration, Store
from tagger.trade import assess
from tagger.trade.tables import Tables, tables

YARD, QUARRY, FARM = "Ostervale Timber Yard", "Brindlemere Quarry", "Farrow Glen Farm"
GRAVEL, MILL = (
    "Kieswerk Tannmoorried",
    "Scierie de Valbrumeuse",
)  # customers who are answered in German, in French


@dataclass(frozen=True)
class Job:
    """One job of the week: a spec's file, for whom, and the day of the week it was built.

    ``replaces``: the spec's name of the assembly whose place it is to take. ``why``: why it is built although a
    source speaks of a danger. ``fitted``: whether the shop knows that it is on its machine.
    """

    spec: str
    customer: str
    machine: str
    position: str
    day: int
    count: int = 1
    years_ago: int = 0
    replaces: str | None = None
    why: str | None = None
    fitted: bool = True


JOBS = (
    Job("boom_rod_side", QUARRY, "Wheel loader 7", "boom cylinder, rod side", 0),
    Job("steering_two_elbows", FARM, "Tractor, red", "steering, left", 0),
    Job("travel_drive", QUARRY, "Drill rig 2", "travel drive, pressure", 1, count=2),
    Job("crusher_drive", GRAVEL, "Backenbrecher 1", "Antrieb, Druckseite", 1),
    Job("pilot_line", YARD, "Forwarder 3", "pilot, joystick", 1),
    Job("deck_lift", FARM, "Mowers, season's set", "deck lift", 2, count=12),
    Job("winch_motor", YARD, "Winch truck", "winch motor, port B", 2, fitted=False),
    Job("bucket_tilt", GRAVEL, "Radlader 2", "Schaufelzylinder, Bodenseite", 2, fitted=False),
    Job("feed_carriage", MILL, "Chariot 1", "avance", 2),
    Job("auger_feed", FARM, "Grain wagon", "auger feed", 3),
    Job("quench_line", YARD, "Kiln press", "quench", 3, why=acts.ORDERED_IN_WRITING),
    Job("press_return", FARM, "Workshop press", "return", 3, years_ago=7),
    Job("press_return_new", FARM, "Workshop press", "return", 4, replaces="press_return", fitted=False),
)


@dataclass
class Week:
    """What loading gave: the assemblies by spec name, those of the list, and the first order request."""

    built: dict[str, list[Assembly]]
    service_run: list[Assembly]
    order: OrderRequest


def read_spec(name: str) -> AssemblySpec:
    """One of the week's specs."""
    return AssemblySpec.read((WEEK / f"{name}.json").read_text(encoding="utf-8"))


def load_week(store: Store, calendar: Calendar) -> Week:
    """Plays the week into a store that was opened with ``now=calendar``: all of it, or none."""
    with store.writing():
        _parts(store)
        ours = ShopSettings().tables(store.held_rows())
        built: dict[str, list[Assembly]] = {}
        for job in JOBS:
            built[job.spec] = _build(store, calendar, job, built, ours)
        calendar.go_to(MONDAY + timedelta(days=1), 14)
        run = _service_run(store, ours)
        order = acts.play(store, calendar, built, run, ours)
    return Week(built, run, order)


def _parts(store: Store) -> None:
    """What the shop stocks: fittings, hoses under their part numbers, and the crimp cards of both together."""
    store.keep_fittings(read_fittings(table_of(WEEK / "fittings.csv"), tables()), by="bench")
    if not store.own_hoses():
        store.keep_own_hoses(read_own_hoses(table_of(WEEK / "hoses.csv"), tables()), by="bench")
    if not store.crimps():
        store.keep_crimps(read_cards(table_of(WEEK / "crimp_cards.csv"), tables()), by="bench")
    store.save_recipe("Deck lift, 1/2 in", read_spec("deck_lift"), by="bench")


def _build(
    store: Store, calendar: Calendar, job: Job, built: dict[str, list[Assembly]], ours: Tables
) -> list[Assembly]:
    day = MONDAY + timedelta(days=job.day)
    day = day.replace(year=day.year - job.years_ago)
    calendar.go_to(day, 9)
    spec = read_spec(job.spec)
    made = store.register(
        spec,
        assess(spec, ours),
        count=job.count,
        built_on=day,
        by="bench",
        replaces=built[job.replaces][0].number if job.replaces else None,
        customer=job.customer,
        machine=job.machine,
        position=job.position,
        reason=job.why,
        key=f"demonstration {job.spec}",
    )
    acts.prove(store, job.spec, made, ours)
    _let_out(store, made, fitted=job.fitted)
    return made


def _service_run(store: Store, ours: Tables) -> list[Assembly]:
    rows = [
        Registration(
            one.spec,
            assess(one.spec, ours),
            one.quantity,
            MONDAY + timedelta(days=1),
            lot_reason=one.lot_reason,
            **recorded(one),
        )
        for one in lists.read_list(WEEK / "service_run.csv")
    ]
    made = store.register_many(rows, by="bench", key="demonstration run")
    _let_out(store, made)
    return made


def _let_out(store: Store, assemblies: list[Assembly], *, fitted: bool = True) -> None:
    """Writes that the tags were printed and the hoses handed over, where that is not written yet."""
    numbers = [one.number for one in assemblies]
    if store.last(numbers, Kind.PRINTED) or store.blocked(numbers):
        return
    store.record_many(numbers, Kind.PRINTED, {"template": "hang_tag"}, by="bench")
    if fitted:
        store.record_many(numbers, Kind.FITTED, {"note": "handed over"}, by="counter")
