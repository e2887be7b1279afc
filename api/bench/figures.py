"""The statistics page: how much was printed, scanned and ordered, and the oldest hoses in use."""

from __future__ import annotations

from datetime import date
from html import escape

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import render
from api.shared import figures
from api.web.identity import Manager
from api.web.language import translator_of
from api.web.state import store_of, tables_of
from tagger.i18n import Translator
from tagger.i18n.figures import show_date
from tagger.messages import Message
from tagger.store import Kind
from tagger.trade.servicelife import NOT_A_PERMISSION, guidance

router = APIRouter()
_PLOTS = (Kind.PRINTED, Kind.SCANNED, Kind.ORDERED)
_W, _H, _FOOT = 340, 150, 20


@router.get("/figures")
def figures_page(request: Request, me: Manager, days: int = figures.DAYS) -> Response:
    """The last days, at most two years of them."""
    days = min(max(days, figures.LEAST_DAYS), figures.MOST_DAYS)
    found = figures.collect(store_of(request), tables_of(request), days)
    rules = guidance(date(2000, 1, 1), tables=tables_of(request))
    t = translator_of(request)
    titles = {kind: t(f"bench-figures-{kind}") for kind in _PLOTS}
    return render(
        request,
        "figures.html",
        title=Message("bench-figures"),
        here="figures",
        days=days,
        old=found.oldest,
        totals=found.totals,
        rules=rules,
        plots=[(title, _plot(found.by_day[kind], title, t)) for kind, title in titles.items()],
        caution=NOT_A_PERMISSION,
    )


def _plot(days: list[tuple[date, int]], title: str, t: Translator) -> str:
    """Bars by day, by week where there are more days than bars fit, as SVG."""
    width = 7 if len(days) > 92 else 1
    bars = [(days[i][0], sum(n for _, n in days[i : i + width])) for i in range(0, len(days), width)]
    top = max(1, *(count for _, count in bars))
    step = (_W - 40) / len(bars)
    parts = [
        f'<rect x="{40 + i * step:.1f}" y="{_H - _FOOT - count * 110 / top:.1f}" width="{max(1.0, step - 1):.1f}" '
        f'height="{count * 110 / top:.1f}"><title>{escape(t("bench-figures-bar", day=day, count=count))}</title></rect>'
        for i, (day, count) in enumerate(bars)
        if count
    ]
    first, last = days[0][0], days[-1][0]
    said = t(
        "bench-figures-plot",
        title=title,
        count=sum(count for _, count in bars),
        top=top,
        span="week" if width > 1 else "day",
        **{"from": first, "to": last},
    )
    return (
        f'<svg class="bars" viewBox="0 0 {_W} {_H}" role="img" aria-label="{escape(said)}">'
        f'<line x1="40" y1="{_H - _FOOT}" x2="{_W}" y2="{_H - _FOOT}"/>'
        f'<text x="34" y="{_H - _FOOT - 106}" text-anchor="end">{top}</text><text x="34" y="{_H - _FOOT}" text-anchor="end">0</text>'
        f'<text x="40" y="{_H - 5}">{show_date(first, t)}</text><text x="{_W}" y="{_H - 5}" text-anchor="end">{show_date(last, t)}</text>'
        f"{''.join(parts)}</svg>"
    )
