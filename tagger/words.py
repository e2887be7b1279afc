"""A spec in plain words, in the reader's language. The tag, the pages and the command line share these.

Each text is a message of ``tagger.phrases``, rendered by the catalogues of ``tagger.i18n``.
"""

from __future__ import annotations

from tagger import phrases, rated, units
from tagger.i18n import Translator
from tagger.messages import count, pressure
from tagger.spec import (
    AssemblySpec,
    Basis,
    Connection,
    Cover,
    End,
    Fluid,
    Form,
    Hose,
    LengthBasis,
    Material,
    TagContent,
    Tightening,
)
from tagger.trade.screws import screw_for


class Words:
    """Plain words in one language.

    >>> Words("en").pressure(206.8)
    '207 bar (3000 psi)'
    """

    def __init__(self, language: str = "en") -> None:
        self.say = Translator(language)
        self.language = self.say.language

    def connection(self, connection: Connection) -> str:
        return self.say(phrases.connection(connection))

    def form(self, form: Form) -> str:
        return self.say(phrases.form(form))

    def material(self, material: Material) -> str:
        return self.say(phrases.material(material))

    def basis(self, basis: Basis) -> str:
        return self.say(phrases.basis(basis))

    def fluid(self, fluid: Fluid) -> str:
        return self.say(phrases.fluid(fluid))

    def cover(self, cover: Cover) -> str:
        return self.say(phrases.cover(cover))

    def shape(self, end: End) -> str:
        """Straight, or the elbow with its drop."""
        return self.say(phrases.shape(end))

    def end(self, end: End) -> str:
        """One end in a line: size, family, form, shape, and what is not ordinary about it."""
        return self.say(phrases.end(end))

    def hose(self, hose: Hose) -> str:
        """The hose in a line: "SAE 100R2 -12 (3/4 in)"."""
        return self.say(phrases.hose(hose))

    def length_basis(self, basis: LengthBasis) -> str:
        return self.say(phrases.length_basis(basis))

    def length(self, spec: AssemblySpec) -> str:
        """The overall length in both systems, with its basis."""
        return self.say(phrases.overall_length(spec))

    def clocking(self, spec: AssemblySpec) -> str | None:
        """The clocking angle with its convention; None unless both ends are elbows."""
        said = phrases.clocking(spec)
        return None if said is None else self.say(said)

    def pressure(self, bar: float | None) -> str:
        """A pressure in both systems."""
        return self.say(phrases.NOT_KNOWN) if bar is None else self.say.figure(pressure(bar))

    def rated(self, content: TagContent) -> list[str]:
        """The working pressure, or as much of it as is known, in lines."""
        return [self.say(line) for line in rated.lines(content)]

    def dangers(self, content: TagContent) -> list[str]:
        """The dangers that the tag carries, a line each."""
        return [self.say(line) for line in rated.dangers(content)]

    def torque(self, low: float | None, high: float) -> str:
        """A torque range in both systems, as short as a tag needs it."""
        if low is None:
            si, imperial = f"≤ {units.number_text(high)}", f"≤ {units.number_text(units.lbf_ft_of(high))}"
        elif low == high:
            si, imperial = units.number_text(high), units.number_text(units.lbf_ft_of(high))
        else:
            si = f"{units.number_text(low)}–{units.number_text(high)}"
            imperial = "–".join(units.number_text(units.lbf_ft_of(figure)) for figure in (low, high))
        return self.say.decimal(f"{si} N·m ({imperial} lbf·ft)")

    def flats(self, low: float, high: float) -> str:
        """A count of flats: "1 to 1 1/4 flats"."""
        return self.say(phrases.flats(low, high))

    def turns(self, low: float, high: float) -> str:
        """Whole turns, for taper threads: "1 1/2 to 3 turns"."""
        return self.say(phrases.turns(low, high))

    def count(self, low: float, high: float) -> str:
        """A count as the trade says it, to the twelfth: "1 to 1 1/4"."""
        return self.say.figure(count(low, high))

    def tighten(self, tightening: Tightening | None, end: End) -> list[str]:
        """How to tighten one end: by its torque, or by the turn with its basis; never a guess."""
        if end.connection.is_latched:
            return [self.say(phrases.NOTHING_TO_TIGHTEN)]
        if tightening is None:
            return [self.say(phrases.NOT_KNOWN)]
        lines = []
        if tightening.torque_max_nm is not None:
            torque = self.torque(tightening.torque_min_nm, tightening.torque_max_nm)
            said = self._each_screw(torque, tightening, end) if end.connection.is_flange else torque
            lubricated = phrases.lubricated(said, tightening)
            lines.append(said if lubricated is None else self.say(lubricated))
        counted = phrases.counted(tightening, end)
        if counted is not None:
            lines.append(self.say(phrases.or_counted(counted) if lines else counted))
        return lines or [self.say(phrases.NOT_KNOWN)]

    def _each_screw(self, torque: str, tightening: Tightening, end: End) -> str:
        screw = screw_for(tightening, end)
        if screw is None:
            return self.say("words-torque-any-screw", torque=torque)
        return self.say("words-torque-screw", torque=torque, screw=screw)
