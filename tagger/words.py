"""A spec in plain words, in the reader's language. The tag, the pages and the command line share these.

The English text is the message id of the gettext catalogues under ``locales/``.
"""

from __future__ import annotations

import gettext
import re
from functools import cache
from importlib import resources

from babel.messages.pofile import read_po

from tagger import phrases, units
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
    Tightening,
)
from tagger.trade.screws import screw_of

LANGUAGES = ("en", "fr", "es", "de")


def N_(message: str) -> str:
    """Marks a message for the catalogues without translating it here."""
    return message


CONNECTIONS = {
    Connection("sae_37_flare"): N_("37° flare (JIC)"),
    Connection("sae_45_flare"): N_("45° flare"),
    Connection("orfs"): N_("O-ring face seal"),
    Connection("sae_orb"): N_("O-ring boss, inch thread"),
    Connection("metric_orb"): N_("O-ring port, metric thread"),
    Connection("npt"): N_("NPT taper pipe"),
    Connection("nptf"): N_("NPTF dryseal pipe"),
    Connection("npsm"): N_("NPSM pipe, 30° seat"),
    Connection("bspp"): N_("BSP parallel pipe"),
    Connection("bspt"): N_("BSP taper pipe"),
    Connection("din24_light"): N_("24° cone, light series (L)"),
    Connection("din24_heavy"): N_("24° cone, heavy series (S)"),
    Connection("flange_code61"): N_("Code 61 flange"),
    Connection("flange_code62"): N_("Code 62 flange"),
    Connection("jis_30"): N_("JIS 30° flare, metric thread"),
    Connection("jis_60"): N_("JIS 60° cone, BSP thread"),
}
FORMS = {
    Form.MALE: N_("male"),
    Form.FEMALE_SWIVEL: N_("female swivel"),
    Form.FEMALE_FIXED: N_("female fixed"),
    Form.FLANGE_HEAD: N_("flange head"),
}
MATERIALS = {
    Material.CARBON_STEEL: N_("carbon steel"),
    Material.STAINLESS_STEEL: N_("stainless steel"),
    Material.BRASS: N_("brass"),
    Material.ALUMINIUM: N_("aluminium"),
}
LENGTH_BASES = {
    LengthBasis.SEALING_FACE: N_("to the sealing faces"),
    LengthBasis.THREAD_END: N_("to the thread ends"),
    LengthBasis.ELBOW_CENTRELINE: N_("to the elbow centrelines"),
}
FLUIDS = {
    Fluid.MINERAL_OIL: N_("mineral oil"),
    Fluid.WATER_OIL_EMULSION: N_("water-oil emulsion (HFA, HFB)"),
    Fluid.WATER_GLYCOL: N_("water glycol (HFC)"),
    Fluid.PHOSPHATE_ESTER: N_("phosphate ester (HFD-R)"),
    Fluid.SYNTHETIC_ESTER: N_("synthetic ester (HEES, HFD-U)"),
    Fluid.VEGETABLE_OIL: N_("vegetable oil (HETG)"),
    Fluid.POLYGLYCOL: N_("polyglycol (HEPG)"),
    Fluid.WATER: N_("water"),
    Fluid.DIESEL: N_("diesel fuel"),
    Fluid.PETROL: N_("petrol (gasoline)"),
    Fluid.AIR: N_("air"),
    Fluid.REFRIGERANT: N_("refrigerant"),
}
COVERS = {
    Cover.ABRASION_SLEEVE: N_("abrasion sleeve"),
    Cover.SPRING_GUARD: N_("spring guard"),
    Cover.SPIRAL_GUARD: N_("spiral guard"),
    Cover.FIRE_SLEEVE: N_("fire sleeve"),
    Cover.HEAT_SLEEVE: N_("heat sleeve"),
    Cover.BURST_SLEEVE: N_("burst sleeve"),
    Cover.ARMOUR: N_("armour"),
    Cover.BEND_RESTRICTOR: N_("bend restrictor"),
}
_NAMED = {str(c): name for c, name in CONNECTIONS.items()} | {str(f): FORMS[f] for f in Form if "_" in f}
_KEYS = re.compile(rf"\b({'|'.join(sorted(_NAMED, key=len, reverse=True))})\b")
NOT_KNOWN = N_("not known: use the fitting maker's figure")


class Words:
    """Plain words in one language.

    >>> Words("en").pressure(206.8)
    '207 bar (3000 psi)'
    """

    def __init__(self, language: str = "en") -> None:
        self.language = language if language in LANGUAGES else "en"
        self.say = Translator(self.language)
        self._catalogue = catalogue(self.language)

    def t(self, message: str, **values: object) -> str:
        """The message in this language, with ``{name}`` places filled in."""
        text = self._catalogue.gettext(message)
        return text.format(**values) if values else text

    def connection(self, connection: Connection) -> str:
        return self.say(phrases.connection(connection))

    def named(self, sentence: str) -> str:
        """A sentence with the spec's own words for families and forms put as the trade says them.

        >>> Words("en").named("sae_37_flare -12 has no flange_head")
        '37° flare (JIC) -12 has no flange head'
        """
        return _KEYS.sub(lambda found: self.t(_NAMED[found[0]]), sentence)

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
        """How to tighten one end: torque first, then the turn with its basis; never a guess."""
        if tightening is None:
            return [self.say(phrases.NOT_KNOWN)]
        lines = []
        if tightening.torque_max_nm is not None:
            torque = self.torque(tightening.torque_min_nm, tightening.torque_max_nm)
            lines.append(self._each_screw(torque, tightening, end) if end.connection.is_flange else torque)
        counted = phrases.counted(tightening, end)
        if counted is not None:
            lines.append(self.say(counted))
        return lines or [self.say(phrases.NOT_KNOWN)]

    def _each_screw(self, torque: str, tightening: Tightening, end: End) -> str:
        assert tightening.torque_max_nm is not None
        screw = screw_of(end, tightening.torque_min_nm, tightening.torque_max_nm)
        if screw is None:
            return self.say("words-torque-any-screw", torque=torque)
        return self.say("words-torque-screw", torque=torque, screw=screw)


@cache
def catalogue(language: str) -> gettext.NullTranslations:
    """The gettext catalogue of one language, read from its .po file; English needs none."""
    return _Catalogue(messages("tagger", language, "tagger"))


@cache
def messages(package: str, language: str, domain: str) -> dict[str, str]:
    """What a package's .po file translates; nothing where there is no such file, as for English.

    A translation that its file marks as a guess (fuzzy) is left out: English is surer.
    """
    file = resources.files(package).joinpath(f"locales/{language}/LC_MESSAGES/{domain}.po")
    if not file.is_file():
        return {}
    with file.open("rb") as source:
        return {str(m.id): str(m.string) for m in read_po(source) if m.id and m.string and not m.fuzzy}


class _Catalogue(gettext.NullTranslations):
    """A catalogue held as a dictionary."""

    def __init__(self, messages: dict[str, str]) -> None:
        super().__init__()
        self._messages = messages

    def gettext(self, message: str) -> str:
        return self._messages.get(message, message)
