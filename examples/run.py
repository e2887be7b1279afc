"""``tagger demo``: loads the week, serves it on this machine, prints what to open."""

from __future__ import annotations

import os
import socket
from datetime import date
from pathlib import Path

import uvicorn

from api.app import DEMO_NAME, DEMO_PASSWORD, create_app
from api.settings import Settings
from examples.calendar import WEEK, Calendar
from examples.load import Week, load_week
from tagger import signing
from tagger.code import link, number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.gauges import sheets
from tagger.messages import Message
from tagger.printing import pdf, raster
from tagger.record_tag import tags_of
from tagger.settings import ShopSettings
from tagger.store import Store


def main(out: Path) -> None:
    """Loads the week into the folder ``out``, made where it is not there, and serves it until it is stopped.

    Raises OSError for a folder that cannot be, SettingsError for a setting, StoreError for records of another week.
    """
    out = out.resolve()
    out.mkdir(parents=True, exist_ok=True)
    port = _free_port(ShopSettings.from_env().port)
    database = os.environ.get("TAGGER_DATABASE_URL") or f"sqlite:///{out / 'demonstration.sqlite3'}"
    settings = Settings.from_env(
        port=port,
        base_url=os.environ.get("TAGGER_BASE_URL") or f"http://127.0.0.1:{port}",
        database_url=database,
        shop_name="Tidewrack Hose Shop",
        shop_phone="555-0142",
        shop_email="orders@tidewrack-hose.example",
        machine_hoses="pin",
        demo=True,
        signing_key=os.environ.get("TAGGER_SIGNING_KEY") or _signing_key(out),
    )
    calendar = Calendar()
    with Store.open(database, now=calendar) as store:
        week = loaded_week(store, calendar, out)
        files = _print(store, week, settings, out)
        pin = store.tag_pin(week.service_run[0].number)
    print(_what_to_open(week, settings, files, pin, out), flush=True)
    # the application's own middleware says whose X-Forwarded-For is believed
    uvicorn.run(create_app(settings), host="127.0.0.1", port=port, log_level="warning", proxy_headers=False)


def loaded_week(store: Store, calendar: Calendar, out: Path) -> Week:
    """The week, loaded now or before. Raises StoreError where the folder holds the week of another version."""
    try:
        return load_week(store, calendar)
    except TaggerError as error:
        other = Problem("folder", str(out), Message("cli-demo-other-week", folder=str(out)))
        raise StoreError([other, *error.problems]) from error


def _signing_key(out: Path) -> Path:
    """The shop's key file, made at the first start."""
    file = out / "signing-key.json"
    if not file.exists():
        signing.renew(file, date.today())
    return file


def _print(store: Store, week: Week, settings: Settings, out: Path) -> dict[str, Path]:
    """What a shop would have on paper, and a photo to measure, each by what it is."""
    hang_tag = settings.template("hang_tag")
    boom = tags_of(store, week.built["boom_rod_side"][:1], settings)
    names = ("boom_rod_side.png", "boom_rod_side.pdf", "service_run.pdf", "gauge_sheet.pdf", "old_end.jpg")
    png, one, run, sheet, photo = (out / name for name in names)
    raster.write(boom, hang_tag, png, dpi=203)
    pdf.write(boom, hang_tag, one)
    pdf.write(tags_of(store, week.service_run, settings), hang_tag, run)
    sheet.write_bytes(sheets.to_pdf("threads", settings, settings.tables(), family="sae_37_flare"))
    photo.write_bytes((WEEK / photo.name).read_bytes())
    return {
        "a tag as PNG": png,
        "the same as PDF": one,
        f"a run of {len(week.service_run)} as PDF": run,
        "a gauge sheet": sheet,
        "a photo to measure": photo,
    }


def _what_to_open(week: Week, settings: Settings, files: dict[str, Path], pin: str, out: Path) -> str:
    base = settings.base_url
    boom, deck = week.built["boom_rod_side"][0], week.built["deck_lift"][0]
    signed = settings.keys().sign(boom.number, boom.digits)
    scanned = {
        "a tag, as a phone opens it": _link(base, boom.number, signed),
        "the same, not signed": _link(base, boom.number, boom.digits),
        "its signature, moved": _link(base, number.make(), signed),
        "the same, typed": f"{base}/t/{number.format(boom.number)}",
    }
    for words, name in (
        ("two elbows, clocked", "steering_two_elbows"),
        ("a withdrawn one", "travel_drive"),
        ("tested too high, held", "bucket_tilt"),
        ("a danger, with its reason", "quench_line"),
        ("old; replacement is built", "press_return"),
    ):
        scanned[words] = f"{base}/t/{number.format(week.built[name][0].number)}"
    machine = number.format(week.service_run[0].number)
    scanned["a machine's twelve hoses"] = f"{base}/machine/{machine}   (PIN {pin})"
    bench = {
        "the bench": f"{base}/bench   (sign in: {DEMO_NAME} / {DEMO_PASSWORD})",
        "an order request, photo": f"{base}/bench/orders/{week.order.reference}",
        "twelve tested as a batch": f"{base}/bench/tag/{deck.number}/batch.pdf",
        "a recall and its calls": f"{base}/bench/withdrawn/1",
        "a thread from a photo": f"{base}/bench/measure   (the photo below)",
    }
    return f"""
{settings.shop_name}, an invented shop, on {base}

{_lines(scanned)}

{_lines(bench)}

{_lines(files)}

Ctrl-C stops it. All of it lives in {out}; delete that folder to start afresh.
"""


def _lines(named: dict[str, str] | dict[str, Path]) -> str:
    return "\n".join(f"  {words:<28}{where}" for words, where in named.items())


def _link(base: str, number: str, digits: str) -> str:
    return link.build(base, number, digits).replace("HTTP:", "http:")


def _free_port(wanted: int) -> int:
    """``wanted``, or the next port that nobody listens on."""
    for port in range(wanted, wanted + 50):
        with socket.socket() as probe:
            if probe.connect_ex(("127.0.0.1", port)) != 0:
                return port
    raise SystemExit(
        f"No free port from {wanted} to {wanted + 49}. Give another: TAGGER_PORT=9000 tagger demo"
    )
