"""From what was measured to which connection it can be: ranked candidates, and what to measure next.

No candidate is ever called certain while another remains. A candidate whose seat is not the
one measured is shown as contradicted, never as a match: threads that screw together do not
make seats that seal.
"""

from __future__ import annotations

from collections.abc import Set
from dataclasses import dataclass, replace
from weakref import WeakKeyDictionary

import numpy as np
import numpy.typing as npt

from tagger import phrases
from tagger.messages import Message, Value, angle, diameter
from tagger.spec import Connection, Form, Series, Sizing
from tagger.trade import alike
from tagger.trade.identifying import asking, likelihood, ranking
from tagger.trade.identifying.asking import Next
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.identifying.readings import CONES, SAID, SEATS, Measurements
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.units import MM_PER_INCH

__all__ = ["CONES", "SEATS", "Candidate", "Errors", "Identification", "Measurements", "Next", "identify"]

SHOWN_FROM = 0.005  # of the best one's likelihood; below it a candidate is not worth a line
REMAINS_FROM = 0.05  # of the best one's likelihood; above it a candidate still stands beside the best
NAMED = 4  # more that remain are counted, not named
LEAST_SHOWN, MOST_SHOWN = 3, 12
LACKING = ("french_millimetric", "metric_taper", "screw_couplers", "one_manufacturer")
"""What the tables do not hold, by the ids of its names; every answer says so."""


@dataclass(frozen=True)
class Candidate:
    """One connection it can be. ``contradicts`` names what was measured and does not fit.

    ``series``: what the builder said of it, where this connection is made in more than one.
    """

    connection: Connection
    size: str
    form: Form
    thread: str
    likelihood: float
    reasons: tuple[Message, ...]
    contradicts: tuple[str, ...]
    look_alikes: tuple[Message, ...]
    series: Series | None = None

    @property
    def size_key(self) -> tuple[str, int | str]:
        """("dash", 12) or ("size", "3/4")."""
        if self.connection.sized_by is Sizing.DASH:
            return "dash", int(self.size)
        return "size", self.size

    @property
    def size_text(self) -> str:
        """The size as the trade says it: "-12", "12 mm", "M22x1.5 S"."""
        size = size_text(self.connection, self.size)
        return f"{size} {self.series}" if self.series else size


@dataclass(frozen=True)
class Identification:
    """Candidates best first. ``summary`` is one sentence; ``measure_next`` None where nothing helps.

    ``tie``: that the measurements cannot tell the first from others, and why it stands first; None where they
    can. ``lacks``: what the tables do not hold, and the end may be.
    """

    candidates: tuple[Candidate, ...]
    measure_next: Next | None
    remaining: int
    summary: Message
    tie: Message | None
    lacks: Message


def identify(
    measured: Measurements, tables: Tables | None = None, errors: Errors | None = None
) -> Identification:
    """Which connections the measurements can be, by likelihood."""
    tables = tables or our_tables()
    errors = replace(errors or Errors(), said=measured.slips)
    pool = likelihood.pool(tables)
    lacks = Message("identify-lacks", names=tuple(Message(f"identify-lacking-{name}") for name in LACKING))
    among, weights, fits = posterior(pool, measured, errors)
    if among.size == 0:
        return Identification((), None, 0, Message("identify-nothing"), None, lacks)
    order = ranking.order(pool, among, weights, measured.origin, tables)
    count = int(min(MOST_SHOWN, max(LEAST_SHOWN, (weights >= SHOWN_FROM * weights.max()).sum()), among.size))
    candidates = tuple(
        _candidate(pool, int(among[n]), float(weights[n]), measured, errors, tables)
        for n in order.places[:count]
    )
    best = candidates[0]
    near = order.places[weights[order.places] >= REMAINS_FROM * weights.max()]
    remain = (
        near
        if best.contradicts
        else np.array([n for n in near if fits_all(pool, int(among[n]), measured, errors)])
    )
    following = _next(pool, among, weights, measured, errors) if remain.size > 1 else None
    if following is None and not best.contradicts and fits:
        following = asking.series(pool, int(among[order.places[0]]), measured, tables)
    return Identification(
        candidates,
        following,
        int(remain.size),
        _summary(candidates, _names(pool, among[remain]), fits),
        None if best.contradicts else _tie(pool, among, order),
        lacks,
    )


def posterior(pool: Pool, measured: Measurements, errors: Errors) -> tuple[Array, Array, bool]:
    """Places in the pool, their likelihoods (together 1), and whether the best fits at all."""
    forms = measured.forms()
    among = np.array([n for n, form in enumerate(pool.forms) if form in forms], dtype=int)
    if among.size == 0:
        return among, np.empty(0), False
    readings = {name: np.array([value]) for name, value in measured.readings().items()}
    fits = True
    if "thread" in readings:
        like = likelihood.density(pool, "thread", readings["thread"], errors, among)[0]
        fits = bool(like.max() > likelihood.FAR_OFF / errors.of("thread") / 5)
    return among, likelihood.likelihoods(pool, readings, errors, among)[0], fits


def _next(pool: Pool, among: Array, weights: Array, measured: Measurements, errors: Errors) -> Next | None:
    keep = weights >= SHOWN_FROM * weights.max()
    among, weights = among[keep], weights[keep] / weights[keep].sum()
    found = asking.most_telling(pool, among, weights, measured, errors)
    if found is None:
        return None
    return asking.asked(found, _names(pool, among[np.argsort(-weights, kind="stable")])[:NAMED])


def _tie(pool: Pool, among: Array, order: ranking.Order) -> Message | None:
    """Which of those that are as likely stand first, and only for which reason."""
    if not order.origin:
        return None
    first, behind = (_names(pool, among[list(places)]) for places in (order.first, order.behind))
    return Message(
        "identify-tie-there" if order.there else "identify-tie-elsewhere",
        names=(*first, *behind)[:NAMED],
        first=tuple(first[:NAMED]),
        origin=Message(f"identify-origin-{order.origin}"),
    )


def _candidate(
    pool: Pool, n: int, likelihood: float, measured: Measurements, errors: Errors, tables: Tables
) -> Candidate:
    reasons, contradicts = [], []
    for feature, value in measured.readings().items():
        reason, fits = _reason(pool, n, feature, value, errors)
        if feature == "tpi" and measured.pitch_mm is not None:
            reason = _in_millimetres(reason)
        reasons.append(reason)
        if not fits:
            contradicts.append(feature)
    return Candidate(
        connection=pool.families[n],
        size=pool.sizes[n],
        form=pool.forms[n],
        thread=pool.threads[n],
        likelihood=likelihood,
        reasons=tuple(reasons),
        contradicts=tuple(contradicts),
        look_alikes=_look_alikes(pool, n, tables),
        series=_series(measured, asking.series_of(pool.families[n], pool.sizes[n], tables)),
    )


def _series(measured: Measurements, several: tuple[str, ...]) -> Series | None:
    """What the builder said where there are two, and the only one where there is one."""
    if len(several) == 1:
        return Series(several[0])
    return measured.series if measured.series and measured.series in several else None


def _reason(pool: Pool, n: int, feature: str, value: float, errors: Errors) -> tuple[Message, bool]:
    """Why a reading speaks for or against a candidate, and whether it fits."""
    if feature == "seat":
        return _seat_reason(pool, n, SEATS[int(value)])
    if feature in likelihood.WORDS:
        return _word_reason(pool, n, feature, int(value))
    low, high = pool.low[feature][n], pool.high[feature][n]
    if np.isnan(low).all():
        return Message("identify-no-value", feature=feature), True
    off = np.maximum(np.maximum(low - value, value - high), 0.0)  # stays NaN where there is no figure
    near = int(np.nanargmin(off))
    allowed = 3 * errors.of(feature)
    fits = bool(off[near] <= allowed) or feature == "hex"
    upper = feature == "nose" or (feature in ("thread", "hex") and pool.forms[n].is_male_thread)
    nominal = high[near] if upper else low[near]
    show = _to_hundredths if feature == "tpi" else diameter
    reason = Message(
        f"identify-reading-{feature}",
        measured=show(value),
        nominal=show(float(nominal)),
        fits="yes" if off[near] <= allowed else "no",
    )
    return reason, fits


def _to_hundredths(value: float) -> float:
    return round(value, 2)


def fits_all(pool: Pool, n: int, measured: Measurements, errors: Errors) -> bool:
    """Whether nothing that was measured speaks against a candidate."""
    return all(_reason(pool, n, name, value, errors)[1] for name, value in measured.readings().items())


def _in_millimetres(reason: Message) -> Message:
    """A reason about threads per inch, as a reason about the pitch in mm that was read."""
    if "nominal" not in reason.values:
        return reason
    mm = {name: round(MM_PER_INCH / float(str(reason.values[name])), 2) for name in ("measured", "nominal")}
    return Message("identify-reading-pitch", **mm, fits=reason.values["fits"])


def _seat_reason(pool: Pool, n: int, seat: str) -> tuple[Message, bool]:
    shares = pool.words["seat"][n]
    own = [SEATS[k] for k in np.argsort(-shares) if shares[k] > likelihood.SEAT_MISREAD / 2]
    if seat in own:
        return Message("identify-seat-fits", seat=_seat(seat)), True
    if not own:
        return Message("identify-seat-none", seat=_seat(seat)), False
    return Message("identify-seat-differs", seat=_seat(seat), own=tuple(_seat(s) for s in own)), False


def _word_reason(pool: Pool, n: int, feature: str, value: int) -> tuple[Message, bool]:
    """For a cone, a flank or what the eye says, which a candidate has one way, the other way, or not at all."""
    share, word = pool.words[feature][n, value], likelihood.WORDS[feature][value]
    if feature in SAID and (share > 0.9 or share < 0.1):
        answer = Message(f"identify-answer-{feature}-{word}")
        fits = bool(share > 0.9)
        return Message("identify-looks-fits" if fits else "identify-looks-differs", answer=answer), fits
    if share > 0.9:
        return Message(f"identify-{feature}-fits", **{feature: word}), True
    if share < 0.1:
        return Message(f"identify-{feature}-differs", **{feature: word}), False
    return Message("identify-no-value", feature=feature), True


_ALIKE: WeakKeyDictionary[Pool, dict[int, tuple[Message, ...]]] = WeakKeyDictionary()


def _look_alikes(pool: Pool, n: int, tables: Tables) -> tuple[Message, ...]:
    """The families that share this candidate's thread, and how they differ; found once."""
    known = _ALIKE.setdefault(pool, {})
    if n not in known:
        known[n] = _find_look_alikes(pool, n, tables)
    return known[n]


def _find_look_alikes(pool: Pool, n: int, tables: Tables) -> tuple[Message, ...]:
    return _told_apart(pool, [n], set(pool.families), tables)


def look_alikes_of(
    family: Connection, form: Form, others: Set[Connection], tables: Tables
) -> tuple[Message, ...]:
    """Those of the ``others`` that share a thread with a form of a family in some size, and how they differ."""
    pool = likelihood.pool(tables)
    own = [n for n in range(len(pool)) if (pool.families[n], pool.forms[n]) == (family, form)]
    return _told_apart(pool, own, others, tables)


def _told_apart(pool: Pool, own: list[int], others: Set[Connection], tables: Tables) -> tuple[Message, ...]:
    """``own``: places of one family and form. Those with a sentence of their own come first."""
    family, form = pool.families[own[0]], pool.forms[own[0]]
    same: npt.NDArray[np.bool_] = np.any(_same_thread(pool)[own], axis=0)
    sizes: dict[Connection, list[str]] = {}
    for m in range(len(pool)):
        other = pool.families[m]
        if other is family or pool.forms[m] is not form or other not in others:
            continue
        if same[m]:
            sizes.setdefault(other, []).append(size_text(other, pool.sizes[m]))
    pairs = [{r.family, r.other} for r in tables.look_alikes]
    order = sorted(sizes, key=lambda o: pairs.index({family, o}) if {family, o} in pairs else len(pairs))
    return tuple(alike.difference(family, other, tuple(sizes[other]), tables) for other in order)


_SAME: WeakKeyDictionary[Pool, npt.NDArray[np.bool_]] = WeakKeyDictionary()


def _same_thread(pool: Pool) -> npt.NDArray[np.bool_]:
    """Candidates x candidates: whether two are within what a caliper and a gauge can tell apart; found once."""
    if pool not in _SAME:
        tpi, bolts = pool.low["tpi"][:, 0], _gap(pool, "bolt_spacing") < 4
        threads = (_gap(pool, "thread") < 0.3) & (np.abs(tpi[:, None] - tpi[None]) < 0.75)
        plain = np.isnan(tpi)[:, None]
        _SAME[pool] = (plain & bolts) | (~plain & threads)
    return _SAME[pool]


def _gap(pool: Pool, feature: str) -> Array:
    """Between the first figures of each two candidates; below 0 where they overlap, NaN where one is not known."""
    low, high = pool.low[feature][:, 0], pool.high[feature][:, 0]
    gap: Array = np.maximum(low[:, None], low[None]) - np.minimum(high[:, None], high[None])
    return gap


def _names(pool: Pool, places: Array) -> list[Message]:
    """Family and size of each, in the order given, once: the forms of one are not told apart here."""
    return list(dict.fromkeys(_named(pool.families[int(n)], pool.sizes[int(n)]) for n in places))


def _named(family: Connection, size: str) -> Message:
    return Message("identify-named", size=size_text(family, size), connection=phrases.connection(family))


def _summary(candidates: tuple[Candidate, ...], names: list[Message], fits: bool) -> Message:
    """``names``: those that remain, best first."""
    best = candidates[0]
    name = Message("identify-named", size=best.size_text, connection=phrases.connection(best.connection))
    if best.contradicts == ("seat",) and fits:
        return Message("identify-other-seat", name=name)
    if best.contradicts or not fits:
        return Message("identify-closest", name=name)
    if len(names) > NAMED:
        return Message("identify-many", count=len(names), names=tuple(names[:NAMED]))
    if len(names) > 1:
        return Message("identify-some", names=tuple(names))
    return Message("identify-only", name=name)


def _seat(seat: str) -> Value:
    """A seat's angle, or what it is where it has none."""
    return angle(float(seat)) if seat.isdigit() else Message(f"identify-seat-{seat}")


def size_text(family: Connection, size: str) -> str:
    if family.sized_by is Sizing.DASH:
        return f"-{size}"
    return f"{size} mm" if family.sized_by is Sizing.TUBE else size
