"""Maps between two planes, as a camera makes them: straight lines stay straight."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Points = npt.NDArray[np.float64]  # shape (..., 2)
Matrix = npt.NDArray[np.float64]  # shape (3, 3)


def projective(start: Points, end: Points) -> Matrix:
    """The projective map that takes points to points: exactly for four, with least squares for more."""
    (to_start, start), (to_end, end) = _centred(start), _centred(end)
    (x, y), (u, v) = start.T, end.T
    one, none = np.ones_like(x), np.zeros_like(x)
    rows = np.concatenate(
        [
            np.stack([x, y, one, none, none, none, -u * x, -u * y, -u], axis=1),
            np.stack([none, none, none, x, y, one, -v * x, -v * y, -v], axis=1),
        ]
    )
    _, vectors = np.linalg.eigh(rows.T @ rows)  # the first belongs to the least square error
    solved: Matrix = np.linalg.inv(to_end) @ vectors[:, 0].reshape(3, 3) @ to_start
    return solved


def mapped(matrix: Matrix, points: Points) -> Points:
    """The points under the map."""
    whole = np.concatenate([points, np.ones((*points.shape[:-1], 1))], axis=-1) @ matrix.T
    result: Points = whole[..., :2] / whole[..., 2:]
    return result


def _centred(points: Points) -> tuple[Matrix, Points]:
    """(map, mapped points): about their middle and of size one, for a well-conditioned system."""
    middle, spread = points.mean(axis=0), points.std()
    scale = np.array([[1, 0, -middle[0]], [0, 1, -middle[1]], [0, 0, spread]]) / spread
    return scale, (points - middle) / spread
