"""From what was measured to which connection it can be: ranked candidates, and what to measure next.

No candidate is ever called certain while another remains. A candidate whose seat is not the
one measured is shown as contradicted, never as a match: threads that screw together do not
make seats that seal.
"""

from __future__ import annotations

from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np

from tagger import phrases
from tagger.messages import Message
from tagger.spec import Connection, Form, Sizing
from tagger.trade.identifying import likelihood
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.identifying.readings import CONES, SEATS, Measurements
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.units import inch_text, number_text

__all__ = ["CONES", "SEATS", "Candidate", "Errors", "Identification", "Measurements", "Next", "identify"]

SHOWN_FROM = 0.005  # of the best one's likelihood; below it a candidate is not worth a line
REMAINS_FROM = 0.05  # of the best one's likelihood; above it a candidate still stands beside the best
NAMED = 4  # more that remain are counted, not named
LEAST_SHOWN, MOST_SHOWN = 3, 12
WORTH_MEASURING = 0.02  # bits

_ASK = {
    "seat": ("the seat: its angle with a seat gauge, or whether it is an O-ring face, an O-ring boss, flat, or a "
             "taper thread with no seat", "seat_gauge"),
    "cone": ("whether the cone stands out like a nose or lies inside like a funnel", "cone"),
    "thread": ("the thread's diameter with a caliper: outside on a male, inside on a female", "caliper"),
    "tpi": ("the pitch with a thread gauge: threads per inch, or millimetres", "thread_gauge"),
    "hex": ("the nut across its flats", "caliper"),
    "tube_od": ("the outside diameter of the tube it goes on", "caliper"),
    "flange_od": ("the diameter of the flange head", "caliper"),
    "bolt_spacing": ("the distance between the bolts, centre to centre, along the longer side", "caliper"),
}  # fmt: skip


@dataclass(frozen=True)
class Candidate:
    """One connection it can be. ``contradicts`` names what was measured and does not fit."""

    connection: Connection
    size: str
    form: Form
    thread: str
    likelihood: float
    reasons: tuple[str, ...]
    contradicts: tuple[str, ...]
    look_alikes: tuple[Message, ...]

    @property
    def size_key(self) -> tuple[str, int | str]:
        """("dash", 12) or ("size", "3/4")."""
        if self.connection.sized_by is Sizing.DASH:
            return "dash", int(self.size)
        return "size", self.size


@dataclass(frozen=True)
class Next:
    """The measurement that separates the candidates best; ``bits`` is what it is expected to tell."""

    feature: str
    what: str
    why: str
    picture: str
    bits: float


@dataclass(frozen=True)
class Identification:
    """Candidates best first. ``summary`` is one sentence; ``measure_next`` None where nothing helps."""

    candidates: tuple[Candidate, ...]
    measure_next: Next | None
    remaining: int
    summary: str


def identify(
    measured: Measurements, tables: Tables | None = None, errors: Errors | None = None
) -> Identification:
    """Which connections the measurements can be, by likelihood."""
    tables = tables or our_tables()
    errors = errors or Errors()
    pool = likelihood.pool(tables)
    among, weights, fits = posterior(pool, measured, errors)
    if among.size == 0:
        return Identification((), None, 0, "Nothing in the tables has this form with these measurements.")
    order = np.argsort(-weights, kind="stable")
    count = int(min(MOST_SHOWN, max(LEAST_SHOWN, (weights >= SHOWN_FROM * weights.max()).sum()), among.size))
    candidates = tuple(
        _candidate(pool, int(among[n]), float(weights[n]), measured, errors, tables) for n in order[:count]
    )
    remain = order[weights[order] >= REMAINS_FROM * weights.max()]
    following = _next(pool, among, weights, measured, errors) if remain.size > 1 else None
    summary = _summary(candidates, _names(pool, among[remain]), fits)
    return Identification(candidates, following, int(remain.size), summary)


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
        fits = bool(like.max() > likelihood.FAR_OFF / errors.diameter_mm / 5)
    return among, likelihood.likelihoods(pool, readings, errors, among)[0], fits


def _next(pool: Pool, among: Array, weights: Array, measured: Measurements, errors: Errors) -> Next | None:
    keep = weights >= SHOWN_FROM * weights.max()
    among, weights = among[keep], weights[keep] / weights[keep].sum()
    open_features = [f for f in ("seat", "cone", *likelihood.CONTINUOUS) if f not in measured.readings()]
    told = {f: likelihood.information(pool, f, among, weights, errors) for f in open_features}
    if not told or max(told.values()) < WORTH_MEASURING:
        return None
    best = max(told, key=lambda f: told[f])
    what, picture = _ASK[best]
    names = _joined(_names(pool, among[np.argsort(-weights, kind="stable")])[:NAMED])
    return Next(best, what, f"It separates {names} best.", picture, round(told[best], 3))


def _candidate(
    pool: Pool, n: int, likelihood: float, measured: Measurements, errors: Errors, tables: Tables
) -> Candidate:
    reasons, contradicts = [], []
    for feature, value in measured.readings().items():
        text, fits = _reason(pool, n, feature, value, errors)
        reasons.append(text)
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
    )


def _reason(pool: Pool, n: int, feature: str, value: float, errors: Errors) -> tuple[str, bool]:
    """Why a reading speaks for or against a candidate, and whether it fits."""
    if feature == "seat":
        return _seat_reason(pool, n, SEATS[int(value)])
    if feature == "cone":
        return _cone_reason(pool, n, int(value))
    low, high = pool.low[feature][n], pool.high[feature][n]
    if np.isnan(low).all():
        return f"{_NAMES[feature]}: no figure in the tables for this one", True
    off = np.maximum(np.maximum(low - value, value - high), 0.0)  # stays NaN where there is no figure
    near = int(np.nanargmin(off))
    allowed = 3 * errors.of(feature)
    fits = bool(off[near] <= allowed) or feature == "hex"
    nominal = high[near] if feature in ("thread", "hex") and pool.forms[n] is Form.MALE else low[near]
    if feature == "tpi":
        shown = f"{number_text(value, 2)} threads per inch measured, {number_text(float(nominal), 2)} nominal"
    else:
        shown = f"{_NAMES[feature]} {_both(value)} measured, {_both(float(nominal))} nominal"
    return f"{shown}: {'fits' if off[near] <= allowed else 'does not fit'}", fits


def _seat_reason(pool: Pool, n: int, seat: str) -> tuple[str, bool]:
    shares = pool.words["seat"][n]
    own = [SEATS[k] for k in np.argsort(-shares) if shares[k] > likelihood.SEAT_MISREAD / 2]
    if seat in own:
        return f"seat {_seat_text(seat)}: fits", True
    text = f"seat {_seat_text(seat)} measured, this one has {' or '.join(_seat_text(s) for s in own)}: not a match"
    return f"{text}; two different seats do not make a reliable seal", False


def _cone_reason(pool: Pool, n: int, cone: int) -> tuple[str, bool]:
    share = pool.words["cone"][n, cone]
    if share > 0.9:
        return f"cone {CONES[cone]}: fits", True
    if share < 0.1:
        return (
            f"cone {CONES[cone]} measured, this one's is {CONES[1 - cone]}: not a match; they do not seal",
            False,
        )
    return "cone: this one has none in the tables", True


_ALIKE: WeakKeyDictionary[Pool, dict[int, tuple[Message, ...]]] = WeakKeyDictionary()


def _look_alikes(pool: Pool, n: int, tables: Tables) -> tuple[Message, ...]:
    """The families that share this candidate's thread, and how they differ; found once."""
    known = _ALIKE.setdefault(pool, {})
    if n not in known:
        known[n] = _find_look_alikes(pool, n, tables)
    return known[n]


def _find_look_alikes(pool: Pool, n: int, tables: Tables) -> tuple[Message, ...]:
    family, form = pool.families[n], pool.forms[n]
    found = []
    for alike in tables.look_alikes:
        if family not in (alike.family, alike.other):
            continue
        other = alike.other if alike.family is family else alike.family
        sizes = [
            _size_text(other, pool.sizes[m])
            for m in range(len(pool))
            if pool.families[m] is other and pool.forms[m] is form and _same_thread(pool, n, m)
        ]
        if sizes:
            found.append(
                Message(
                    alike.message,
                    family=phrases.connection(family),
                    other=phrases.connection(other),
                    sizes=tuple(sizes),
                )
            )
    return tuple(found)


def _same_thread(pool: Pool, n: int, m: int) -> bool:
    """Whether two candidates are within what a caliper and a gauge can tell apart."""
    feature = "bolt_spacing" if np.isnan(pool.low["tpi"][n]).all() else "thread"
    gap = max(pool.low[feature][n, 0], pool.low[feature][m, 0]) - min(
        pool.high[feature][n, 0], pool.high[feature][m, 0]
    )
    if feature == "bolt_spacing":
        return bool(gap < 4)
    return bool(gap < 0.3 and abs(pool.low["tpi"][n, 0] - pool.low["tpi"][m, 0]) < 0.75)


def _names(pool: Pool, places: Array) -> list[str]:
    """Family and size of each, in the order given, once: the forms of one are not told apart here."""
    families = [pool.families[int(n)] for n in places]
    sizes = [pool.sizes[int(n)] for n in places]
    return list(dict.fromkeys(f"{f} {_size_text(f, s)}" for f, s in zip(families, sizes, strict=True)))


def _summary(candidates: tuple[Candidate, ...], names: list[str], fits: bool) -> str:
    """``names``: those that remain, best first."""
    best = candidates[0]
    name = f"{best.connection} {_size_text(best.connection, best.size)}"
    if best.contradicts == ("seat",) and fits:
        return (
            f"The thread is that of {name}, but the seat is not: two different seats do not make a reliable seal. "
            f"No connection in the tables has both. Measure again."
        )
    if best.contradicts or not fits:
        return f"Nothing in the tables fits all that was measured; {name} is nearest. Measure again."
    if len(names) > NAMED:
        return f"{len(names)} connections are still possible; most likely {_joined(names[:NAMED])}."
    if len(names) > 1:
        return f"It can be {name}, and also {_joined(names[1:])}."
    return f"Of the connections in the tables only {name} fits."


_NAMES = {
    "thread": "thread", "tpi": "pitch", "hex": "hexagon", "tube_od": "tube", "flange_od": "flange head",
    "bolt_spacing": "bolt spacing",
}  # fmt: skip


def _both(mm: float) -> str:
    return f"{number_text(mm, 2)} mm ({inch_text(mm)})"


def _seat_text(seat: str) -> str:
    words = {"face": "O-ring face", "boss": "O-ring boss", "flat": "flat", "taper": "taper thread"}
    return words.get(seat, f"{seat} degrees")


def _size_text(family: Connection, size: str) -> str:
    if family.sized_by is Sizing.DASH:
        return f"-{size}"
    return f"{size} mm" if family.sized_by is Sizing.TUBE else size


def _joined(names: list[str]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
