"""Simulated measurements, to say how often ``identify`` is right.

A part is drawn from its tolerance zone and read with the error model; its seat is read as the
tables say it is read. Used by the property tests and by ``tests/speed/bench_identify.py``.
"""

from __future__ import annotations

import numpy as np

from tagger.spec import Form
from tagger.trade.measurements import SEATS, Measurements
from tagger.trade.measuring import Errors, Pool


def measurement(
    pool: Pool,
    place: int,
    rng: np.random.Generator,
    errors: Errors,
    *,
    pitch: bool = True,
    seat: bool = True,
    slips: float | None = None,
) -> Measurements:
    """One measurement of the candidate at ``place``: form, diameter, pitch and seat; of a flange
    the head, where its diameter is known, and the longer bolt spacing.

    ``slips`` cuts every error at so many standard deviations.
    """

    def read(feature: str) -> float | None:
        low, high = pool.low[feature][place, 0], pool.high[feature][place, 0]
        if np.isnan(low):
            return None
        true = rng.uniform(low, high) if high > low else low
        slip = rng.normal(0.0, 1.0)
        if slips is not None:
            slip = float(np.clip(slip, -slips, slips))
        return float(true + slip * errors.of(feature))

    form = pool.forms[place]
    if form is Form.FLANGE_HEAD:
        return Measurements(form=form, flange_od_mm=read("flange_od"), bolt_spacing_mm=read("bolt_spacing"))
    shares = pool.words["seat"][place]
    kept = np.where(shares > shares.max() / 8, shares, 0.0)
    thread = read("thread")
    return Measurements(
        form=form,
        thread_od_mm=thread if form is Form.MALE else None,
        thread_id_mm=None if form is Form.MALE else thread,
        tpi=read("tpi") if pitch else None,
        seat=SEATS[int(rng.choice(len(SEATS), p=kept / kept.sum()))] if seat else None,
    )
