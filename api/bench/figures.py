"""What a manager looks at: how much was printed, scanned and ordered, and which hoses grow old."""

from __future__ import annotations

from datetime import date

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import render
from api.shared import figures
from api.web.identity import Manager
from api.web.state import store_of, tables_of
from tagger.store import Kind
from tagger.trade.servicelife import NOT_A_PERMISSION, guidance

router = APIRouter()
_PLOTS = {Kind.PRINTED: "Tags printed", Kind.SCANNED: "Scans", Kind.ORDERED: "Orders from scans"}
_W, _H, _FOOT = 600, 150, 20


@router.get("/figures")
def figures_page(request: Request, me: Manager, days: int = figures.DAYS) -> Response:
    """The last days, at most two years of them."""
    days = min(max(days, figures.LEAST_DAYS), figures.MOST_DAYS)
    found = figures.collect(store_of(request), tables_of(request), days)
    rules = guidance(date(2000, 1, 1), tables=tables_of(request))
    return render(
        request, "figures.html", title="Figures", here="/bench/figures", days=days, old=found.oldest,
        totals=found.totals, rules=rules,
        plots=[(title, _plot(found.by_day[kind], title)) for kind, title in _PLOTS.items()],
        caution=NOT_A_PERMISSION,
    )  # fmt: skip


def _plot(days: list[tuple[date, int]], title: str) -> str:
    """Bars by day, by week where there are more days than bars fit, as SVG."""
    width = 7 if len(days) > 92 else 1
    bars = [(days[i][0], sum(n for _, n in days[i : i + width])) for i in range(0, len(days), width)]
    top = max(1, *(count for _, count in bars))
    step = (_W - 40) / len(bars)
    parts = [
        f'<rect x="{40 + i * step:.1f}" y="{_H - _FOOT - count * 110 / top:.1f}" width="{max(1.0, step - 1):.1f}" '
        f'height="{count * 110 / top:.1f}"><title>{day}: {count}</title></rect>'
        for i, (day, count) in enumerate(bars)
        if count
    ]
    said = f"{title}: {sum(count for _, count in bars)} from {days[0][0]} to {days[-1][0]}, at most {top} a {'week' if width > 1 else 'day'}"
    return (
        f'<svg class="bars" viewBox="0 0 {_W} {_H}" role="img" aria-label="{said}">'
        f'<line x1="40" y1="{_H - _FOOT}" x2="{_W}" y2="{_H - _FOOT}"/>'
        f'<text x="34" y="{_H - _FOOT - 106}" text-anchor="end">{top}</text><text x="34" y="{_H - _FOOT}" text-anchor="end">0</text>'
        f'<text x="40" y="{_H - 5}">{days[0][0]}</text><text x="{_W}" y="{_H - 5}" text-anchor="end">{days[-1][0]}</text>'
        f"{''.join(parts)}</svg>"
    )
