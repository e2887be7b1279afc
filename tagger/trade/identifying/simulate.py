"""Simulated measurements, to say how often ``identify`` is right.

A part is drawn from its tolerance zone and read with the error model; its seat is read as
often one way or the other as the tables say. ``asked`` goes on as a builder does: it measures what
``identify`` asks for next until nothing is asked. Used by the tests, ``tests/speed/bench_identify.py``
and the report on the tables.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np

from tagger.spec import Form
from tagger.trade.identifying import likelihood, ranking
from tagger.trade.identifying.identify import identify, posterior
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.identifying.readings import SEATS, Measurements
from tagger.trade.tables import Tables


def readings(
    pool: Pool,
    place: int,
    count: int,
    rng: np.random.Generator,
    errors: Errors,
    *,
    pitch: bool = True,
    seat: bool = True,
    cone: bool = False,
    nose: bool = False,
    slips: float | None = None,
) -> dict[str, Array]:
    """``count`` measurements of the candidate at ``place``: diameter, pitch, seat and so on; of a flange
    the head, where its diameter is known, and the longer bolt spacing.

    ``slips`` cuts every error at so many standard deviations.
    """
    if pool.forms[place] is Form.FLANGE_HEAD:
        wanted = ["flange_od", "bolt_spacing"]
    else:
        plain = np.isnan(pool.low["thread"][place]).all()  # without a thread the nose is all there is
        wanted = ["thread"] + ["tpi"] * pitch + ["nose"] * bool(nose or plain)
    found: dict[str, Array] = {}
    for feature in wanted:
        low, high = pool.low[feature][place, 0], pool.high[feature][place, 0]
        if np.isnan(low):
            continue
        slip = rng.normal(0.0, 1.0, count)
        if slips is not None:
            slip = np.clip(slip, -slips, slips)
        found[feature] = rng.uniform(low, high, count) + slip * errors.of(feature)
    if "thread" in found:
        for word in ["seat"] * seat + ["cone"] * cone:
            shares = pool.seats[place] if word == "seat" else pool.words[word][place]
            if word == "cone" and shares.max() < 0.9:
                continue  # it has no cone to look at
            found[word] = _words_read(shares, count, rng)
    return found


def _words_read(shares: Array, count: int, rng: np.random.Generator) -> Array:
    kept = np.where(shares > shares.max() / 8, shares, 0.0)
    return rng.choice(len(shares), size=count, p=kept / kept.sum()).astype(float)


def measurement(
    pool: Pool, place: int, rng: np.random.Generator, errors: Errors, *, slips: float | None = None
) -> Measurements:
    """One measurement of the candidate at ``place``, its form seen."""
    found = {
        name: float(value[0]) for name, value in readings(pool, place, 1, rng, errors, slips=slips).items()
    }
    form = pool.forms[place]
    return Measurements(
        form=form,
        thread_od_mm=found.get("thread") if form.is_male_thread else None,
        thread_id_mm=None if form.is_male_thread else found.get("thread"),
        tpi=found.get("tpi"),
        seat=SEATS[int(found["seat"])] if "seat" in found else None,
        flange_od_mm=found.get("flange_od"),
        bolt_spacing_mm=found.get("bolt_spacing"),
        nose_mm=found.get("nose"),
    )


def asked(
    pool: Pool,
    place: int,
    rng: np.random.Generator,
    errors: Errors,
    measured: Measurements,
    known: Tables,
) -> tuple[list[int], int]:
    """The places of the pool in the order of the answer, once every question that follows ``measured`` is
    answered for the part at ``place``; and how many were asked. What the part has not got cannot be measured.
    """
    questions = 0
    while (wanted := identify(measured, known, errors).measure_next) is not None:
        questions += 1
        measured = _answered(pool, place, rng, errors, measured, wanted.feature)
    among, weights, _ = posterior(pool, measured, errors)
    order = ranking.order(pool, among, weights, measured.origin, known)
    return [int(among[n]) for n in order.places], questions


def _answered(
    pool: Pool, place: int, rng: np.random.Generator, errors: Errors, measured: Measurements, feature: str
) -> Measurements:
    """``measured`` with one more reading of the part, or with one more thing that cannot be measured.

    Its thread, where it has one, is measured before anything is asked.
    """
    value = _read(pool, place, rng, errors, feature)
    if value is None:
        return replace(measured, cannot=measured.cannot | {feature})
    if feature in likelihood.WORDS:
        word: dict[str, Any] = {feature: likelihood.WORDS[feature][int(value)]}
        return replace(measured, **word)
    figure: dict[str, Any] = {feature if feature == "tpi" else f"{feature}_mm": value}
    return replace(measured, **figure)


def _read(pool: Pool, place: int, rng: np.random.Generator, errors: Errors, feature: str) -> float | None:
    """One reading of a feature; None where the part has not got it, or the tables do not know it."""
    if feature in likelihood.WORDS:
        shares = pool.seats[place] if feature == "seat" else pool.words[feature][place]
        if feature == "cone" and shares.max() < 0.9:
            return None
        return float(_words_read(shares, 1, rng)[0])
    if feature == "series":
        return None
    low, high = pool.low[feature][place], pool.high[feature][place]
    columns = np.flatnonzero(~np.isnan(low))
    if columns.size == 0:
        return None
    n = rng.choice(columns)
    return float(rng.uniform(low[n], high[n]) + rng.normal(0.0, errors.of(feature)))
