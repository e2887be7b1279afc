"""The strip below the card as seen straight from above: the picture in which lines are drawn over the end.

Its coordinates are mm of the card as drawn, x from ``LEFT`` and y from ``TOP`` on.
"""

from __future__ import annotations

from typing import Final

import numpy as np
from PIL import Image

from tagger.measuring import card
from tagger.measuring.card import Array
from tagger.measuring.rectify import Sight

LEFT: Final = -10.0
TOP: Final = card.HEIGHT - 4.0
WIDTH: Final = card.WIDTH + 20.0
HEIGHT: Final = 92.0
PX: Final = 12  # a mm


def of(photo: Image.Image, sight: Sight) -> Image.Image:
    """The strip in shades of grey; what lies outside of the photo is black."""
    to_mm = np.array([[1 / PX, 0, LEFT], [0, 1 / PX, TOP], [0, 0, 1.0]])
    matrix = np.linalg.inv(sight.to_card) @ to_mm
    matrix = matrix / matrix[2, 2]
    size = (round(WIDTH * PX), round(HEIGHT * PX))
    flat = matrix.ravel()[:8].tolist()
    return photo.transform(size, Image.Transform.PERSPECTIVE, flat, Image.Resampling.BICUBIC)


def to_px(mm: Array) -> Array:
    """Points in mm as pixels of the strip; n x 2."""
    return np.asarray((mm - (LEFT, TOP)) * PX)
