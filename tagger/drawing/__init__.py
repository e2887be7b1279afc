"""Drawings as values: primitives in millimetres, pictures made of them, and SVG of either.

Nothing here knows a page or a printer; ``tagger.printing`` draws the same values as PDF and as dots.
"""

from tagger.drawing.clocking import clocking_picture
from tagger.drawing.ends import end_picture, ends_picture
from tagger.drawing.nut import nut_picture
from tagger.drawing.primitives import (
    Circle,
    Drawing,
    Grid,
    Group,
    Item,
    Line,
    Part,
    Shape,
    Text,
    moved,
)
from tagger.drawing.svg import svg

__all__ = [
    "Circle",
    "Drawing",
    "Grid",
    "Group",
    "Item",
    "Line",
    "Part",
    "Shape",
    "Text",
    "clocking_picture",
    "end_picture",
    "ends_picture",
    "moved",
    "nut_picture",
    "svg",
]
