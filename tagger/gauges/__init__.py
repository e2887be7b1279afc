"""Gauge sheets: the tables of the trade at true scale on A4 or Letter, to hold a part against.

What a sheet shows is marked with a letter and its figure in mm (``D26.99``): the mark is what identify takes, so a
sheet printed years ago still says what it said, whatever has been added to the tables since.
"""

from typing import Final

KINDS: Final = ("threads", "pitches", "seats", "hexes", "flanges", "hoses")
PAPERS: Final = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height in mm: ISO 216, and 8 1/2 by 11 in."""
