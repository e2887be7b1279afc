"""Languages: the catalogues (one folder a language, Project Fluent), and rendering messages by them.

Everything a language needs lies in its folder, so that a further language is one further folder.
"""

from tagger.i18n.languages import LANGUAGES, SOURCE, negotiate
from tagger.i18n.translator import Translator

__all__ = ["LANGUAGES", "SOURCE", "Translator", "negotiate"]
