"""The files that a shop's server is set up with (``api/deploy/``) are tried: by systemd, by nginx, in a browser."""

from __future__ import annotations

import os
import re
import shutil
import socket
import ssl
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import httpx
import pytest
from playwright.sync_api import expect, sync_playwright

from api.settings import Settings
from tagger.store import Store
from tests.bench.served import serving
from tests.browser.conftest import CHROMIUM, until
from tests.browser.test_scan_offline import KEPT, unseen
from tests.databases import fresh_sqlite
from tests.ports import free_port
from tests.processes import ROOT
from tests.scan.conftest import path, register

DEPLOY = ROOT / "api/deploy"
NGINX = shutil.which("nginx", path=f"{os.environ['PATH']}:/usr/sbin:/usr/local/sbin")
NAME = "localhost"
MEGABYTE = 1_000_000


def _settings(lines: str) -> dict[str, str]:
    return dict(line.split("=", 1) for line in lines.splitlines() if line and not line.startswith("#"))


def test_every_setting_of_the_example_is_one_and_holds(monkeypatch: pytest.MonkeyPatch) -> None:
    for name in [name for name in os.environ if name.startswith("TAGGER_")]:
        monkeypatch.delenv(name)
    for name, value in _settings((DEPLOY / "tagger.env").read_text(encoding="utf-8")).items():
        monkeypatch.setenv(name, value)
    settings = Settings.from_env()
    assert settings.secure and settings.trusted_proxies == ("127.0.0.1",) and not settings.demo


def test_the_units_hold_before_systemd(tmp_path: Path) -> None:
    verifier = shutil.which("systemd-analyze")
    assert verifier, (
        "systemd-analyze is missing: run `make test`, which installs it, or `apt-get install systemd`"
    )
    for unit in [one for one in DEPLOY.iterdir() if one.suffix in (".service", ".timer")]:
        text = unit.read_text(encoding="utf-8").replace("/opt/tagger/bin/tagger", sys.executable)
        (tmp_path / unit.name).write_text(re.sub("^(User|Group)=.*", r"\1=root", text, flags=re.MULTILINE))
    units = sorted(str(unit) for unit in tmp_path.iterdir())
    assert len(units) == 3
    done = subprocess.run(
        (verifier, "verify", "--man=no", *units),
        env={**os.environ, "SYSTEMD_UNIT_PATH": f"{tmp_path}:"},
        capture_output=True,
        text=True,
        timeout=60,
    )
    ours = [line for line in done.stderr.splitlines() if "tagger" in line]
    assert done.returncode == 0 and not ours, done.stderr


@dataclass(frozen=True)
class Behind:
    """The application behind nginx: where the world reaches it, by HTTPS and by HTTP, and its certificate."""

    url: str
    plain: str
    certificate: Path


@contextmanager
def _nginx(folder: Path, upstream: int, ports: tuple[int, int]) -> Iterator[Path]:
    """nginx with the shop's file, whose name, ports, certificate and application are this test's."""
    assert NGINX, "nginx is missing: run `make test`, which installs it, or `apt-get install nginx-light`"
    certificate, key = folder / "certificate.pem", folder / "key.pem"
    subprocess.run(
        ("openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes", "-days", "2",
         "-subj", f"/CN={NAME}", "-addext", f"subjectAltName=DNS:{NAME}", "-keyout", str(key), "-out", str(certificate)),
        check=True, capture_output=True, timeout=60,
    )  # fmt: skip
    site = (DEPLOY / "nginx.conf").read_text(encoding="utf-8")
    for shop, ours in {
        r"listen \[::\].*": "",
        r"listen 80;": f"listen 127.0.0.1:{ports[0]};",
        r"listen 443 ": f"listen 127.0.0.1:{ports[1]} ",
        r"https://\$host\$request_uri": f"https://$host:{ports[1]}$request_uri",
        r"tags\.example\.com": NAME,
        r"/etc/ssl/tags/fullchain\.pem": str(certificate),
        r"/etc/ssl/tags/key\.pem": str(key),
        r"http://127\.0\.0\.1:8000": f"http://127.0.0.1:{upstream}",
    }.items():
        site, found = re.subn(shop, ours.replace("\\", r"\\"), site)
        assert found, f"{shop} is not in the file"
    spools = "".join(
        f"{kind}_temp_path {folder}/{kind};\n"
        for kind in ("client_body", "proxy", "fastcgi", "uwsgi", "scgi")
    )
    whole = folder / "nginx.conf"
    whole.write_text(
        f"daemon off;\nmaster_process off;\npid {folder}/nginx.pid;\nerror_log {folder}/error.log;\n"
        f"events {{}}\nhttp {{\naccess_log off;\n{spools}{site}\n}}\n"
    )
    with subprocess.Popen((NGINX, "-c", str(whole), "-e", f"{folder}/error.log")) as server:
        try:
            end = time.monotonic() + 30
            while True:
                assert server.poll() is None and time.monotonic() < end, (folder / "error.log").read_text()
                with socket.socket() as probe:
                    if probe.connect_ex(("127.0.0.1", ports[1])) == 0:
                        break
                time.sleep(0.05)
            yield certificate
        finally:
            server.terminate()


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path_factory.mktemp("tags"))) as opened:
        yield opened


@pytest.fixture(scope="module")
def behind(store: Store, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Behind]:
    plain, secure = free_port(), free_port()
    settings = Settings(
        base_url=f"https://{NAME}:{secure}",
        trusted_proxies=("127.0.0.1",),
        public_requests_per_minute=100_000,
    )
    with (
        serving(settings, store) as application,
        _nginx(
            tmp_path_factory.mktemp("nginx"), int(application.url.rsplit(":", 1)[1]), (plain, secure)
        ) as certificate,
    ):
        yield Behind(f"https://{NAME}:{secure}", f"http://{NAME}:{plain}", certificate)


def test_headers_addresses_and_limits_are_right_behind_the_proxy(
    behind: Behind, store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    made = register(store)
    with httpx.Client(verify=ssl.create_default_context(cafile=behind.certificate), timeout=30) as visitor:
        printed = visitor.get(f"{behind.plain}{path(made)}")
        assert printed.status_code == 301
        assert printed.headers["location"] == f"{behind.url}{path(made)}", "the path as it was printed"
        page = visitor.get(f"{behind.url}{path(made)}")
        assert page.status_code == 200
        for name in (
            "content-security-policy",
            "strict-transport-security",
            "x-content-type-options",
            "cache-control",
        ):
            assert len(page.headers.get_list(name)) == 1, name
        door = visitor.get(f"{behind.url}/bench/sign-in")
        style = re.search(r'"(/static/[^"]+\.css[^"]*)"', door.text)
        assert style and "immutable" in visitor.get(behind.url + style[1]).headers["cache-control"]
        photo = {"photo": ("photo.jpg", b"\xff\xd8" + bytes(8 * MEGABYTE), "image/jpeg")}
        assert visitor.post(f"{behind.url}/find", files=photo).status_code != 413, "a large photo arrives"
        assert visitor.post(f"{behind.url}/find", content=bytes(24 * MEGABYTE)).status_code == 413

    trusted = ssl.create_default_context(cafile=behind.certificate)
    elsewhere = httpx.HTTPTransport(verify=trusted, local_address="127.0.0.2")
    with httpx.Client(transport=elsewhere, timeout=30) as visitor, caplog.at_level("INFO", "tagger.security"):
        wrong = {"name": "nobody", "password": "something wrong"}
        visitor.post(f"{behind.url}/bench/sign-in", data=wrong, headers={"X-Forwarded-For": "203.0.113.9"})
    assert '"from": "127.0.0.2"' in caplog.text, (
        "the visitor's own, neither nginx's nor what the visitor wrote"
    )


def test_a_phone_keeps_the_tag_for_a_place_without_signal_through_the_proxy(
    behind: Behind, store: Store
) -> None:
    made = register(store)
    assert CHROMIUM
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=CHROMIUM, args=["--no-sandbox", "--ignore-certificate-errors"]
        )
        context = browser.new_context(viewport={"width": 390, "height": 844}, ignore_https_errors=True)
        page = context.new_page()
        page.goto(behind.url + path(made))
        until(page, KEPT)
        page.reload()  # the kept page's worker answers from now on
        context.set_offline(True)
        page.goto(behind.url + unseen())
        expect(page.locator("body")).to_contain_text("EN 856 4SP")
        expect(page.locator("body")).to_contain_text("2400 mm")
        browser.close()


def test_the_guide_names_each_of_these_files_and_no_other() -> None:
    guide = (DEPLOY / "README.md").read_text(encoding="utf-8")
    there = {one.name for one in DEPLOY.iterdir()} - {"README.md"}
    named = set(re.findall(r"`((?:tagger|nginx)[\w-]*\.(?:service|timer|env|conf))`", guide))
    assert named == there
