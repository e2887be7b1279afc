"""The length to cut a hose to, with its arithmetic: overall length less what each fitting adds.

Public engineering note on overall length of hose assemblies: OAL - C1 - C2. A cut-off reaches from the
seat to where the hose butts. One that ends at the shell's mouth is kept as that; the insertion depth is
then added to the hose.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from tagger import phrases
from tagger.errors import Problem, TradeError
from tagger.messages import Message, length
from tagger.spec import AssemblySpec, End, LengthBasis
from tagger.trade.fittings import CutOff, Fitting, Fittings, stock_key
from tagger.trade.lengths import EndDimensions, Reaches, crimped_end_mm, cut_length
from tagger.trade.tables import tables

EndName = Literal["end_a", "end_b"]


@dataclass(frozen=True)
class CutEnd:
    """What one end adds to the length: its fitting, ``adds_mm``, or ``why`` that is not known."""

    end: EndName
    fitting: Fitting | None
    adds_mm: float | None = None
    why: Message | None = None

    @property
    def term(self) -> Message:
        """Its term in the arithmetic, as the fitting's row has it; of an end that is known."""
        fitting, end = self.fitting, self.end[-1].upper()
        cutoff = (fitting and fitting.cut_off_mm) or 0.0
        if fitting is None or fitting.cut_off_kind is not CutOff.SHELL_MOUTH:
            return Message("stock-cut-term-butt", end=end, cutoff=cutoff)
        insertion = fitting.insertion_depth_mm or 0.0
        return Message("stock-cut-term-mouth", end=end, cutoff=cutoff, insertion=insertion)


@dataclass(frozen=True)
class Cut:
    """``length_mm`` is None where what an end adds is not known; ``why`` of that end names what is missing."""

    overall_mm: float
    end_a: CutEnd
    end_b: CutEnd
    length_mm: float | None

    @property
    def unknown(self) -> tuple[Message, ...]:
        """What is missing, end by end."""
        return tuple(end.why for end in (self.end_a, self.end_b) if end.why is not None)

    @property
    def arithmetic(self) -> Message | None:
        """The sum in mm, term by term; None where the cut length is not known."""
        return None if self.length_mm is None else self._sum(self.length_mm)

    def _sum(self, cut_mm: float) -> Message:
        terms = {"a": self.end_a.term, "b": self.end_b.term}
        return Message("stock-cut-arithmetic", overall=self.overall_mm, **terms, cut=cut_mm)

    def lines(self) -> list[Message]:
        """The cut length with its arithmetic, or what is missing; then the marks of insertion."""
        if self.length_mm is None:
            return [*(Message("stock-cut-unknown", why=why) for why in self.unknown), *self.marks]
        told = Message("stock-cut-length", length=length(self.length_mm))
        return [told, self._sum(self.length_mm), *self.marks]

    @property
    def marks(self) -> list[Message]:
        """The marks on the hose, as deep as each fitting takes it in."""
        return [
            Message("stock-insertion-mark", end=phrases.part(end.end), depth=length(depth))
            for end in (self.end_a, self.end_b)
            if end.fitting is not None and (depth := end.fitting.insertion_depth_mm) is not None
        ]

    def figures(self) -> dict[str, Any]:
        """Its figures as plain JSON values."""
        return {
            "length_mm": self.length_mm,
            "ends": {end.end[-1]: _end_json(end) for end in (self.end_a, self.end_b)},
        }


def _end_json(end: CutEnd) -> dict[str, Any]:
    fitting = end.fitting
    return {
        "fitting": fitting and fitting.stock_number,
        "cut_off_mm": fitting and fitting.cut_off_mm,
        "cut_off_kind": fitting and fitting.cut_off_kind and str(fitting.cut_off_kind),
        "insertion_depth_mm": fitting and fitting.insertion_depth_mm,
        "adds_mm": end.adds_mm,
        "source": fitting and fitting.source,
    }


def cut(spec: AssemblySpec, fittings: Fittings) -> Cut:
    """The cut length of an assembly with the shop's fittings.

    Raises TradeError where the ends reach as far as the assembly is long, or further: each to the mouth
    of its shell; one that is not known as far as the least crimped end of that size. And where a fitting's own
    dimensions are less than that: inches kept as mm, which would leave the hose too long.
    """
    if slips := _slips_of_the_unit(spec, fittings):
        raise TradeError(slips)
    reach = round(sum(_reach_mm(spec, name, fittings) for name in ("end_a", "end_b")), 1)
    if reach >= spec.length_mm:
        short = Message("trade-length-too-short", ends=length(reach))
        raise TradeError(Problem("length_mm", spec.length_mm, short))
    a, b = _end(spec, "end_a", fittings), _end(spec, "end_b", fittings)
    known = a.adds_mm is not None and b.adds_mm is not None
    cut_mm = cut_length(spec, _dimensions(a), _dimensions(b))
    return Cut(spec.length_mm, a, b, cut_mm if known else None)


def _slips_of_the_unit(spec: AssemblySpec, fittings: Fittings) -> list[Problem]:
    """The stock numbers whose dimensions no crimped end on a hose of that bore has."""
    names: tuple[EndName, EndName] = ("end_a", "end_b")
    found = ((name, _slip_of_the_unit(spec, name, fittings)) for name in names)
    return [Problem(f"{name}.fitting", getattr(spec, name).fitting, said) for name, said in found if said]


def _slip_of_the_unit(spec: AssemblySpec, name: EndName, fittings: Fittings) -> Message | None:
    number = getattr(spec, name).fitting
    fitting = fittings.get(stock_key(number)) if number else None
    butt, shortest = fitting.seat_to_butt_mm if fitting else None, tables().rule("cut_off_least")
    if butt is not None and butt < shortest.value:
        return Message(
            "stock-cut-off-too-small",
            number=str(number),
            cut_off=length(butt),
            least=length(shortest.value),
            source=shortest.source,
        )
    rule, least_reach = tables().rule("crimped_end_least"), crimped_end_mm(spec, None, tables())
    reach = _known_reach_mm(spec, name, fittings)
    if reach is not None and reach < least_reach:
        return Message(
            "stock-reach-too-small",
            number=str(number),
            reach=length(reach),
            least=length(least_reach),
            source=rule.source,
        )
    return None


def _reach_mm(spec: AssemblySpec, name: EndName, fittings: Fittings) -> float:
    """How far an end reaches from the point that the overall length is measured to, in mm, at the least."""
    known = _known_reach_mm(spec, name, fittings)
    return crimped_end_mm(spec, None, tables()) if known is None else known


def _known_reach_mm(spec: AssemblySpec, name: EndName, fittings: Fittings) -> float | None:
    end: End = getattr(spec, name)
    fitting = fittings.get(stock_key(end.fitting)) if end.fitting else None
    from_seat = end.is_elbow or spec.length_basis is not LengthBasis.THREAD_END
    return fitting.seat_to_mouth_mm if fitting is not None and from_seat else None


def reaches_mm(spec: AssemblySpec, fittings: Fittings) -> Reaches:
    """How far each end reaches to the mouth of its shell, in mm; None where the shop's list does not say."""
    return _known_reach_mm(spec, "end_a", fittings), _known_reach_mm(spec, "end_b", fittings)


def _dimensions(end: CutEnd) -> EndDimensions:
    """The point that the overall length is measured to; an end that is not known takes nothing off."""
    adds = end.adds_mm or 0.0
    return EndDimensions(sealing_face=adds, thread_end=adds, elbow_centreline=adds)


def _end(spec: AssemblySpec, name: EndName, fittings: Fittings) -> CutEnd:
    end: End = getattr(spec, name)
    fitting = fittings.get(stock_key(end.fitting)) if end.fitting else None
    part = phrases.part(name)
    if fitting is None:
        return CutEnd(name, None, why=Message("stock-cut-no-fitting", end=part))
    number = fitting.stock_number
    if fitting.cut_off_mm is None:
        return CutEnd(name, fitting, why=Message("stock-cut-no-cut-off", end=part, number=number))
    if spec.length_basis is LengthBasis.THREAD_END and not end.is_elbow:
        return CutEnd(name, fitting, why=Message("stock-cut-thread-end", end=part, number=number))
    if fitting.seat_to_butt_mm is None:
        return CutEnd(name, fitting, why=Message("stock-cut-no-insertion", end=part, number=number))
    return CutEnd(name, fitting, adds_mm=fitting.seat_to_butt_mm)
