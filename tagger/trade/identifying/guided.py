"""An end identified by looking: one question after another, each narrowing what it can be.

    >>> from tagger.trade.tables import tables
    >>> found = look({"side": "male", "shape": "taper"}, tables())
    >>> [str(kind.family) for kind in found.remaining]
    ['npt', 'nptf', 'bspt']

Nothing is measured and nothing rated. Every question may be left ("unknown"), which rules nothing out. What one answer
alone rules out is named, because that answer may be the wrong one.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from weakref import WeakKeyDictionary

from tagger import phrases
from tagger.errors import Problem, SpecError
from tagger.messages import Message
from tagger.spec import Connection, Form
from tagger.trade.identifying import identify, likelihood
from tagger.trade.identifying.likelihood import Pool
from tagger.trade.identifying.readings import CONES, SAID, unknown
from tagger.trade.tables import Tables

STEPS = ("side", "form", "swivels", "shape", "seals", "cone", "seat")
"""The questions in the trade's order; one that tells nothing of what remains is left out."""
THREADLESS = tuple(form for form in Form if not (form.is_male_thread or form.is_female_thread))
ANGLES = ("37", "45", "60", "24")
"""Seat angles as they are asked for: one of 30 degrees to the axis is the same cone as one of 60 over both sides."""
WORDS: Mapping[str, tuple[str, ...]] = {
    **SAID,
    "form": tuple(map(str, THREADLESS)),
    "cone": CONES,
    "seat": ANGLES,
}
"""What each question can be answered with."""
UNKNOWN = "unknown"
FEW = 8  # kinds whose look-alikes are told: of more the list itself shows them
_SEALS_OF_SEAT = {"face": "face", "boss": "boss", "flat": "flat", "taper": "thread"}
_CUTTING_RING = {"seals": "cone", "cone": "outside", "seat": "24"}
"""What a plain tube with its nut and cutting ring looks like."""
_TELLING = ("shape", "seals", "cone", "seat")
"""What tells kinds apart beside their form, which is in their name."""
_OWN_FROM = 0.1  # of a word's share: below it the word is a misreading


@dataclass(frozen=True, eq=False)
class Kind:
    """A form of a family. ``words``: by question, the answers that are true of it; empty where it has no such thing."""

    family: Connection
    form: Form
    sizes: tuple[str, ...]
    words: Mapping[str, frozenset[str]]

    def allows(self, step: str, answer: str) -> bool:
        own = self.words[step]
        return answer in own or not own


@dataclass(frozen=True)
class Told:
    """A kind that remains; ``facts``: of what differs among those that remain, what is true of it.

    ``alike``: those that remain too and share its thread in some size, and how they differ; of ``FEW`` at most.
    """

    kind: Kind
    facts: tuple[tuple[str, tuple[str, ...]], ...]
    alike: tuple[Message, ...]

    @property
    def family(self) -> Connection:
        return self.kind.family


@dataclass(frozen=True)
class Looked:
    """``step``: the next question and ``choices`` its answers; None where looking tells no more.

    ``ruled_out``: the kinds that one answer alone rules out, with its question.
    """

    answers: Mapping[str, str]
    step: str | None
    choices: tuple[str, ...]
    remaining: tuple[Told, ...]
    ruled_out: tuple[tuple[Kind, str], ...]


def read(given: Mapping[str, str]) -> dict[str, str]:
    """The answers among what an address holds, in the order of the questions; ``unknown`` where one was left.

    Raises SpecError naming every answer that is none.
    """
    found, problems = {}, list[Problem]()
    seat = given.get("seat", "").strip().lower()
    if seat in _SEALS_OF_SEAT:  # what identify calls a seat, and is no angle
        given = {**given, "seat": "", "seals": given.get("seals") or _SEALS_OF_SEAT[seat]}
    for step in STEPS:
        text = given.get(step, "").strip()
        word = text.lower()
        if step == "seat" and word == "30":
            word = "60"
        if not word:
            continue
        if unknown(word):
            word = UNKNOWN
        elif word not in WORDS[step] and not (step == "form" and word in set(Form)):
            problems.append(
                Problem(
                    step,
                    text,
                    Message("identify-not-an-answer", value=text[:40], known=(*WORDS[step], UNKNOWN)),
                )
            )
            continue
        found[step] = word
    if problems:
        raise SpecError(problems)
    return found


def look(answers: Mapping[str, str], tables: Tables) -> Looked:
    """What remains after the answers, and what to ask next."""
    known = kinds(tables)
    against = {kind: [step for step in answers if _rules_out(answers, step, kind)] for kind in known}
    remaining = [kind for kind in known if not against[kind]]
    step = next((s for s in STEPS if s not in answers and _is_asked(s, answers, remaining)), None)
    telling = _telling(remaining, answers)
    return Looked(
        answers,
        step,
        _choices(step, remaining) if step else (),
        tuple(
            Told(
                kind, _facts(kind, telling), _alike(kind, remaining, tables) if len(remaining) <= FEW else ()
            )
            for kind in remaining
        ),
        tuple((kind, steps[0]) for kind, steps in against.items() if len(steps) == 1),
    )


def measured(looked: Looked) -> dict[str, str]:
    """The answers as identify takes them with measurements; a form that is the only one left says the most."""
    found = {step: word for step, word in looked.answers.items() if word != UNKNOWN}
    forms = {told.kind.form for told in looked.remaining}
    if len(forms) == 1:
        found = {step: word for step, word in found.items() if step not in ("side", "swivels")}
        found["form"] = str(forms.pop())
    if "seat" in found:
        found.pop("seals", None)
    return found


def question(step: str) -> Message:
    return Message(f"identify-step-{step}")


def in_words(step: str, answer: str) -> Message:
    """An answer, as its picture is named."""
    if answer == UNKNOWN:
        return Message("identify-answer-unknown")
    if step == "form" and answer not in THREADLESS:
        return phrases.form(Form(answer))
    return Message(f"identify-answer-{step}-{answer}")


def told(step: str, answers: tuple[str, ...]) -> Message:
    """What is true of an end: one of the ``answers`` to a question."""
    return Message(f"identify-told-{step}", answers=tuple(in_words(step, answer) for answer in answers))


def sizes(kind: Kind) -> Message:
    first, last = (identify.size_text(kind.family, size) for size in (kind.sizes[0], kind.sizes[-1]))
    return Message("identify-looking-sizes", count=len(kind.sizes), first=first, last=last)


_KINDS: WeakKeyDictionary[Pool, tuple[Kind, ...]] = WeakKeyDictionary()


def kinds(tables: Tables) -> tuple[Kind, ...]:
    """Every form of every family that identify knows, in the order of the tables."""
    pool = likelihood.pool(tables)
    if pool not in _KINDS:
        places: dict[tuple[Connection, Form], list[int]] = {}
        for n in range(len(pool)):
            places.setdefault((pool.families[n], pool.forms[n]), []).append(n)
        _KINDS[pool] = tuple(
            Kind(family, form, tuple(dict.fromkeys(pool.sizes[n] for n in of)), _words(pool, of[0]))
            for (family, form), of in places.items()
        )
    return _KINDS[pool]


def _words(pool: Pool, n: int) -> dict[str, frozenset[str]]:
    found = {"form": frozenset({str(pool.forms[n])})}
    for step in (*SAID, "cone"):
        shares = pool.words[step][n]
        own = {w for w, share in zip(likelihood.WORDS[step], shares, strict=True) if share >= _OWN_FROM}
        found[step] = frozenset() if (shares == 0.5).all() else frozenset(own)
    seats = {
        seat
        for seat, share in zip(likelihood.WORDS["seat"], pool.words["seat"][n], strict=True)
        if share > likelihood.SEAT_MISREAD / 2
    }
    found["seat"] = frozenset("60" if seat == "30" else seat for seat in seats)
    if pool.forms[n] is Form.STANDPIPE:
        found |= {step: frozenset({word}) for step, word in _CUTTING_RING.items()}
    return found


def _rules_out(answers: Mapping[str, str], step: str, kind: Kind) -> bool:
    answer = answers[step]
    return answer != UNKNOWN and not kind.allows(step, answer)


def _is_asked(step: str, answers: Mapping[str, str], remaining: list[Kind]) -> bool:
    """Whether an answer can rule out something, and the question makes sense after the others."""
    no_thread, seals = answers.get("side") == "none", answers.get("seals", UNKNOWN)
    if (step == "form") != no_thread and step != "side":
        return False
    if step in ("cone", "seat") and seals not in ("cone", UNKNOWN):
        return False
    return any(not kind.allows(step, word) for word in _choices(step, remaining) for kind in remaining)


def _choices(step: str, remaining: list[Kind]) -> tuple[str, ...]:
    """The answers that are true of something that remains."""
    true = {word for kind in remaining for word in kind.words[step]}
    return tuple(word for word in WORDS[step] if word in true)


def _telling(remaining: list[Kind], answers: Mapping[str, str]) -> list[str]:
    """What is not answered and differs among those that remain; a kind without such a thing makes no difference."""
    open_ = [step for step in _TELLING if answers.get(step, UNKNOWN) == UNKNOWN]
    return [step for step in open_ if len({kind.words[step] for kind in remaining} - {frozenset()}) > 1]


def _facts(kind: Kind, steps: list[str]) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """An angle is told of a cone alone: the other seats are what seals."""
    own = ((step, tuple(word for word in WORDS[step] if word in kind.words[step])) for step in steps)
    return tuple((step, words) for step, words in own if words)


def _alike(kind: Kind, remaining: list[Kind], tables: Tables) -> tuple[Message, ...]:
    others = frozenset(one.family for one in remaining if one.form is kind.form and one is not kind)
    return identify.look_alikes_of(kind.family, kind.form, others, tables)
