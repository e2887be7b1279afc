"""A label on a heat-shrink sleeve: printed flat on the sleeve as supplied, then shrunk round the hose.

The sleeve shrinks round the hose alone: what is printed there is squeezed by the hose's diameter over the
sleeve's as supplied, and keeps its size along the hose. The wall of the sleeve is left out: it makes what is
printed a little wider than said here, on both diameters alike.
"""

from __future__ import annotations

import math

import numpy as np
from PIL import Image, ImageFilter

from tagger.printing.curvature import distance_mm, on_label
from tagger.printing.readers import Grey, qr_readers
from tagger.printing.template import Sleeve

_PER_MM = 40  # samples a mm on the hose
_SAMPLES = 2  # of them a pixel of the picture, each way: 20 pixels a mm, a usual phone at 150 mm
_BLUR = 0.8  # pixels, a soft lens
_LIGHT = 255
_LOOKS = (
    (0.0, 2),
    (5.0, 1),
    (-5.0, 1),
)  # degrees away from straight above, and how many readers must read there


def ratio(sleeve: Sleeve, od: float) -> float:
    """What a mm round the sleeve as printed becomes round a hose of ``od`` mm."""
    return od / sleeve.supplied_mm


def unread_by(cut: Grey, text: str, sleeve: Sleeve, dot_mm: float, od: float) -> list[str]:
    """Readers that do not read ``text`` from a symbol shrunk and bent round the hose; none where enough do.

    Enough are two from straight above, and one a little to either side, as a hand holds a phone.

    ``cut``: the symbol's dots as printed, with its quiet zone.
    """
    readers = sorted(qr_readers().items(), key=lambda one: one[0] == "OpenCV")  # the slowest last
    for look, enough in _LOOKS:
        seen = picture(cut, sleeve, dot_mm, od, look)
        read, failed = 0, []
        for name, reader in readers:
            if read == enough:
                break
            if text in reader(seen):
                read += 1
            else:
                failed.append(name)
        if read < min(enough, len(readers)):
            return failed
    return []


def picture(cut: Grey, sleeve: Sleeve, dot_mm: float, od: float, turned_deg: float = 0.0) -> Grey:
    """The symbol on the hose as a phone sees it, ``turned_deg`` away round it; the hose upright, white all round."""
    dots = cut if sleeve.round_hose == "across" else np.rot90(cut)
    along, wide = dots.shape[0] * dot_mm, dots.shape[1] * dot_mm * ratio(sleeve, od)
    size = max(1, round(wide * _PER_MM)), max(1, round(along * _PER_MM))
    flat = np.asarray(Image.fromarray(np.ascontiguousarray(dots)).resize(size, Image.Resampling.BOX))
    bent = _bent(flat, wide, along, od, turned_deg)
    return np.asarray(Image.fromarray(bent).reduce(_SAMPLES).filter(ImageFilter.GaussianBlur(_BLUR)))


def _bent(flat: Grey, wide: float, along: float, od: float, turned_deg: float) -> Grey:
    """``flat`` (``wide`` mm round the hose, ``along`` mm) laid on the cylinder and seen by a camera."""
    away = distance_mm(max(wide, along))
    half_w, half_h = round(wide * _PER_MM / 2) + 80, round(along * _PER_MM / 2) + 80
    u, v = np.meshgrid(np.arange(-half_w, half_w) + 0.5, np.arange(-half_h, half_h) + 0.5)
    rays = np.stack([u.ravel(), v.ravel()], axis=1) / (_PER_MM * away)
    met = on_label(rays, od / 2, away, math.radians(turned_deg))
    columns = np.floor((met[:, 0] / wide + 0.5) * flat.shape[1]).astype(int)
    rows = np.floor((met[:, 1] / along + 0.5) * flat.shape[0]).astype(int)
    inside = (columns >= 0) & (columns < flat.shape[1]) & (rows >= 0) & (rows < flat.shape[0])
    levels = np.full(len(rays), _LIGHT, dtype=np.uint8)
    levels[inside] = flat[rows[inside], columns[inside]]
    return levels.reshape(u.shape)
