"""A spec in plain words, in the reader's language. The tag, the pages and the command line share these.

Each text is a message of ``tagger.phrases``, rendered by the catalogues of ``tagger.i18n``.
"""

from __future__ import annotations

from tagger import phrases, rated
from tagger.i18n import Translator
from tagger.messages import pressure
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
)


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
