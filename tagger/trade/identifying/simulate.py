"""Simulated measurements, to say how often ``identify`` is right.

A part is drawn from its tolerance zone and read with the error model; its seat is read as
often one way or the other as the tables say. Used by the property tests and by
``tests/speed/bench_identify.py``.
"""

from __future__ import annotations

import numpy as np

from tagger.spec import Form
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.identifying.readings import SEATS, Measurements


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
    tube: bool = False,
    slips: float | None = None,
) -> dict[str, Array]:
    """``count`` measurements of the candidate at ``place``: diameter, pitch and seat; of a flange
    the head, where its diameter is known, and the longer bolt spacing.

    ``slips`` cuts every error at so many standard deviations.
    """
    if pool.forms[place] is Form.FLANGE_HEAD:
        wanted = ["flange_od", "bolt_spacing"]
    else:
        wanted = ["thread"] + ["tpi"] * pitch + ["tube_od"] * tube
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
            shares = pool.words[word][place]
            if word == "cone" and shares.max() < 0.9:
                continue  # it has no cone to look at
            kept = np.where(shares > shares.max() / 8, shares, 0.0)
            found[word] = rng.choice(len(shares), size=count, p=kept / kept.sum()).astype(float)
    return found


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
    )
