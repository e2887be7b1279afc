"""What a phone keeps to identify an end without a signal: the candidates of the tables, and the words.

Kept in files of its own, apart from what reads a tag, so that the reader stays small.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Any, Final

import numpy as np

from api.scan import kit, scripts
from tagger.i18n.catalogue import source
from tagger.spec import Connection, Form
from tagger.trade.identifying import asking, guided, identify, likelihood, marks, ranking, readings
from tagger.trade.identifying.likelihood import Pool
from tagger.trade.tables import Tables

ROOMS: Final = ("identify", "scan", "spec", "fit", "offline")
"""Whose messages the page may show, beside what reads a tag."""
_WORDS: Final = ("seat", "cone", "flank", *readings.SAID)


@lru_cache(maxsize=2)
def candidates(tables: Tables) -> dict[str, Any]:
    """The pool of ``identify`` as plain values, and the limits it works to; ``reader/ranker.js`` reads it."""
    pool, errors = likelihood.pool(tables), likelihood.Errors()
    families, forms = list(dict.fromkeys(map(str, pool.families))), [form.value for form in Form]
    words = {name: list(dict.fromkeys(_shares(pool, name, n) for n in range(len(pool)))) for name in _WORDS}
    return {
        "families": families,
        "forms": forms,
        "words": words,
        "rows": [
            [
                families.index(pool.families[n]),
                pool.sizes[n],
                forms.index(pool.forms[n]),
                pool.threads[n],
                _figures(pool, n),
                *(words[name].index(_shares(pool, name, n)) for name in _WORDS),
                int(pool.one[n]),
            ]
            for n in range(len(pool))
        ],
        "range": likelihood.RANGE,
        "errors": {name: errors.of(name) for name in likelihood.CONTINUOUS},
        "paper": {name: marks.PAPER.of(name) for name in likelihood.CONTINUOUS},
        "limits": _limits(),
        "flanges": [c.value for c in Connection if c.is_flange],
        "males": [form.value for form in Form if form.is_male_thread],
        "females": [form.value for form in Form if form.is_female_thread],
        "sized_by": {name: Connection(name).sized_by.value for name in families},
        "series": _series(pool, tables),
        "asked": readings.ASKED,
        "read_as": likelihood.WORDS,
        "steps": {step: guided.WORDS[step] for step in guided.STEPS},
        "alike": [[str(row.family), str(row.other), row.message] for row in tables.look_alikes],
        "origins": [[row.origin, str(row.family), row.behind and str(row.behind)] for row in tables.origins],
        "flares": ranking.FLARES,
        "lacking": identify.LACKING,
    }


def _limits() -> dict[str, float]:
    return {
        "far_off": likelihood.FAR_OFF,
        "slip": likelihood.SLIP,
        "other_hex": likelihood.OTHER_HEX,
        "seat_misread": likelihood.SEAT_MISREAD,
        "worth_measuring": asking.WORTH_MEASURING,
        "tie": ranking.TIE,
        "shown_from": identify.SHOWN_FROM,
        "remains_from": identify.REMAINS_FROM,
        "named": identify.NAMED,
        "least_shown": identify.LEAST_SHOWN,
        "most_shown": identify.MOST_SHOWN,
    }


def _shares(pool: Pool, name: str, n: int) -> tuple[float, ...]:
    return tuple(map(float, pool.words[name][n]))


def _figures(pool: Pool, n: int) -> dict[str, list[float]]:
    """By feature, least and greatest figures in turn; a feature without figures is left out."""
    found = {}
    for name in likelihood.CONTINUOUS:
        low, high = pool.low[name][n], pool.high[name][n]
        known = ~np.isnan(low)
        if known.any():
            found[name] = [float(each) for pair in zip(low[known], high[known], strict=True) for each in pair]
    return found


def _series(pool: Pool, tables: Tables) -> dict[str, tuple[str, ...]]:
    """The series of a size, by "family|size"; of those that have none nothing."""
    named = dict.fromkeys(zip(pool.families, pool.sizes, strict=True))
    found = {f"{family}|{size}": asking.series_of(family, size, tables) for family, size in named}
    return {key: series for key, series in found.items() if series}


@lru_cache(maxsize=16)
def words_of(lang: str, tables: Tables) -> list[str]:
    """The messages that identifying without a signal may show, beside those that reading a tag keeps."""
    alike = {row.message for row in tables.look_alikes}

    def wanted(id: str) -> bool:
        return (id in alike or kit.asked_for(id, scripts.IDENTIFYING)) and not kit.asked_for(id)

    return [kit.kept(source(lang, room), wanted) for room in ROOMS]
