"""How long from opening a tag's link to its readable spec, on throttled lines.

``python -m tests.speed.scan_slow_3g``. The profiles are the browser's own usual ones: "slow 3G" is
400 kbit/s with 2 s latency a request, "fast 3G" 1.44 Mbit/s with 563 ms. The spec is readable
when the browser has painted text and the pressure plate is in the page; each line is measured
three times in a fresh profile, and told as a ratio to the unthrottled line too.
"""

from __future__ import annotations

import statistics
import tempfile
import threading
import time
from collections.abc import Iterator

import uvicorn
from playwright.sync_api import Browser, sync_playwright

from api.app import create_app
from api.settings import Settings
from tagger.spec import AssemblySpec
from tagger.trade import assess
from tests.browser.conftest import CHROMIUM, PHONE
from tests.browser.test_scan_tag import TWO_ELBOWS
from tests.speed.table import Row

LINES = {"not throttled": (0, -1), "fast 3G": (563, 1_440_000 / 8), "slow 3G": (2000, 400_000 / 8)}
PAINTED = """() => new Promise((done) => new PerformanceObserver((list) => {
  const found = list.getEntriesByName("first-contentful-paint")[0];
  if (found && document.querySelector(".plate .figure")) done(found.startTime);
}).observe({ type: "paint", buffered: true }))"""


def measure(browser: Browser, address: str, latency: float, bytes_a_second: float) -> float:
    """Milliseconds from navigation to readable text."""
    context = browser.new_context(viewport=PHONE)
    page = context.new_page()
    session = context.new_cdp_session(page)
    session.send("Network.enable")
    session.send(
        "Network.emulateNetworkConditions",
        {"offline": False, "latency": latency, "downloadThroughput": bytes_a_second, "uploadThroughput": bytes_a_second},
    )  # fmt: skip
    page.goto(address, wait_until="commit")
    found = float(page.evaluate(PAINTED))
    context.close()
    return found


def seconds(times: int) -> dict[str, float]:
    """Of each line, the median of so many visits."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        app = create_app(Settings(database_url=f"sqlite:///{folder}/tags.sqlite3", port=8799))
        spec = AssemblySpec.read(TWO_ELBOWS)
        assembly = app.state.store.register(spec, assess(spec))[0]
        server = uvicorn.Server(uvicorn.Config(app, host="127.0.0.1", port=8799, log_level="error"))
        threading.Thread(target=server.run, daemon=True).start()
        while not server.started:
            time.sleep(0.05)
        address = f"http://127.0.0.1:8799/T/{assembly.number}/{assembly.digits}"
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        measure(browser, address, 0, -1)  # the server makes its tables at the first request
        found = {
            name: statistics.median(measure(browser, address, *line) for _ in range(times)) / 1000
            for name, line in LINES.items()
        }
        browser.close()
        server.should_exit = True
    return found


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks."""
    found = seconds(1 if small else 3)
    for name in list(LINES)[1:]:
        yield Row(
            f"a tag's page to readable text, {name}", found[name], "s", found[name] / found["not throttled"]
        )


def main() -> None:
    found = seconds(3)
    for name, took in found.items():
        print(
            f"{name:14} {took:6.2f} s to readable text  {took / found['not throttled']:6.1f} x not throttled"
        )


if __name__ == "__main__":
    main()
