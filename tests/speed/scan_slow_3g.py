"""How long from opening a tag's link to its readable spec, on throttled lines.

``python -m tests.speed.scan_slow_3g``. The profiles are the browser's own usual ones: "slow 3G" is
400 kbit/s with 2 s latency a request, "fast 3G" 1.44 Mbit/s with 563 ms. The spec is readable
when the browser has painted text and the pressure plate is in the page; each line is measured
three times in a fresh profile, and told as a ratio to the unthrottled line too.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import threading
import time

import uvicorn
from playwright.sync_api import Browser, sync_playwright

from api.app import create_app
from api.settings import Settings
from tagger.spec import AssemblySpec
from tagger.trade import assess
from tests.browser.conftest import CHROMIUM, PHONE
from tests.browser.test_scan_tag import TWO_ELBOWS

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


def main() -> None:
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
        base = 0.0
        for name, (latency, speed) in LINES.items():
            found = statistics.median(measure(browser, address, latency, speed) for _ in range(3))
            base = base or found
            sys.stdout.write(
                f"{name:14} {found / 1000:6.2f} s to readable text  {found / base:6.1f} x not throttled\n"
            )
        browser.close()
        server.should_exit = True


if __name__ == "__main__":
    main()
