"""``tagger demo``: loads the week, serves it on this machine, prints what to open."""

from __future__ import annotations

import os
import socket
from datetime import date
from pathlib import Path

import uvicorn

from api.app import DEMO_NAME, DEMO_PASSWORD, create_app
from api.settings import Settings
from examples.load import Calendar, Week, load_week
from tagger import signing
from tagger.code import link, number
from tagger.printing import pdf, raster
from tagger.record_tag import tags_of
from tagger.settings import ShopSettings
from tagger.store import Store


def main(out: Path) -> None:
    """Loads the week into the folder ``out``, made where it is not there, and serves it until it is stopped.

    Raises OSError for a folder that cannot be, SettingsError for a setting.
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
        demo=True,
        signing_key=os.environ.get("TAGGER_SIGNING_KEY") or _signing_key(out),
    )
    calendar = Calendar()
    with Store.open(database, now=calendar) as store:
        week = load_week(store, calendar)
        files = _print(store, week, settings, out)
    print(_what_to_open(week, settings, files, out), flush=True)
    # the application's own middleware says whose X-Forwarded-For is believed
    uvicorn.run(create_app(settings), host="127.0.0.1", port=port, log_level="warning", proxy_headers=False)


def _signing_key(out: Path) -> Path:
    """The shop's key file, made at the first start."""
    file = out / "signing-key.json"
    if not file.exists():
        signing.renew(file, date.today())
    return file


def _print(store: Store, week: Week, settings: Settings, out: Path) -> list[Path]:
    hang_tag = settings.template("hang_tag")
    boom = tags_of(store, week.built["boom_rod_side"][:1], settings)
    files = [out / name for name in ("boom_rod_side.png", "boom_rod_side.pdf", "service_run.pdf")]
    raster.write(boom, hang_tag, files[0], dpi=203)
    pdf.write(boom, hang_tag, files[1])
    pdf.write(tags_of(store, week.service_run, settings), hang_tag, files[2])
    return files


def _what_to_open(week: Week, settings: Settings, files: list[Path], out: Path) -> str:
    base = settings.base_url
    boom, elbows = week.built["boom_rod_side"][0], week.built["steering_two_elbows"][0]
    withdrawn = week.built["travel_drive"][0]
    signed = settings.keys().sign(boom.number, boom.digits)
    return f"""
{settings.shop_name}, an invented shop, on {base}

  a tag, as a phone opens it   {_link(base, boom.number, signed)}
  the same, not signed         {_link(base, boom.number, boom.digits)}
  its signature, moved         {_link(base, number.make(), signed)}
  the same, typed              {base}/t/{number.format(boom.number)}
  two elbows, clocked          {base}/t/{number.format(elbows.number)}
  a withdrawn one              {base}/t/{number.format(withdrawn.number)}
  the bench                    {base}/bench   (sign in: {DEMO_NAME} / {DEMO_PASSWORD})
  an order request             {week.order.reference}

  a tag as PNG                 {files[0]}
  the same as PDF              {files[1]}
  a run of {len(week.service_run)} as PDF           {files[2]}

Ctrl-C stops it. All of it lives in {out}; delete that folder to start afresh.
"""


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
