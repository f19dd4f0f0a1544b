"""Least potential energy of ropes by a general optimiser, for tests to compare with.

Reads a JSON list of ropes from the file named, prints a JSON list of node coordinates.
Each rope: span, rise, lengths (unstressed), loads (one a node, supports included), weight (N/m), stiffness (EA), bars (of a bay; 4), all (true for every
bar's end, not the nodes alone).
Every bay is cut into short straight bars, so that its own sag is in the energy as well.
"""
import json
import sys

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

# A bay of a footbridge sags by tenths of a millimetre of its own; four bars leave a sixteenth of what that takes in length. Ropes that
# hang nearly bare sag more between their frames, and ask for more ("bars").
BARS_PER_BAY = 4


def bars(rope):
    each = rope.get("bars", BARS_PER_BAY)
    lengths = np.repeat(np.array(rope["lengths"]) / each, each)
    weights = np.zeros(len(lengths) + 1)
    weights[:-1] += lengths * rope["weight"] / 2
    weights[1:] += lengths * rope["weight"] / 2
    weights[::each] += np.array(rope["loads"])
    return lengths, weights


def energy(inner, rope, lengths, weights):
    """Strain energy of the bars and height of the weights, with gradient."""
    points = np.vstack([[0, 0], inner.reshape(-1, 2), [rope["span"], rope["rise"]]])
    ways = np.diff(points, axis=0)
    chords = np.hypot(ways[:, 0], ways[:, 1])
    stretch = chords - lengths
    # Bars only pull.
    tensions = rope["stiffness"] * np.maximum(stretch, 0) / lengths
    value = np.sum(tensions * np.maximum(stretch, 0)) / 2 + np.sum(weights * points[:, 1])
    pulls = (tensions / chords)[:, None] * ways
    gradient = np.zeros_like(points)
    gradient[:-1] -= pulls
    gradient[1:] += pulls
    gradient[:, 1] += weights
    return value, gradient[1:-1].ravel()


def hessian(inner, rope, lengths, weights):
    points = np.vstack([[0, 0], inner.reshape(-1, 2), [rope["span"], rope["rise"]]])
    ways = np.diff(points, axis=0)
    chords = np.hypot(ways[:, 0], ways[:, 1])
    tensions = rope["stiffness"] * np.maximum(chords - lengths, 0) / lengths
    along = ways[:, :, None] * ways[:, None, :] / (chords**2)[:, None, None]
    blocks = (rope["stiffness"] / lengths)[:, None, None] * along
    blocks += (tensions / chords)[:, None, None] * (np.eye(2) - along)
    bar = np.arange(len(lengths))
    rows, columns, values = [], [], []
    for p, q, sign in ((bar, bar, 1), (bar + 1, bar + 1, 1), (bar, bar + 1, -1), (bar + 1, bar, -1)):
        free = (p > 0) & (q > 0) & (p < len(lengths)) & (q < len(lengths))
        for a in range(2):
            for b in range(2):
                rows.append(2 * (p[free] - 1) + a)
                columns.append(2 * (q[free] - 1) + b)
                values.append(sign * blocks[free, a, b])
    size = 2 * (len(lengths) - 1)
    places = (np.concatenate(rows), np.concatenate(columns))
    return coo_matrix((np.concatenate(values), places), shape=(size, size)).tocsc()


def solve(rope):
    lengths, weights = bars(rope)
    count = len(lengths)
    share = np.arange(1, count) / count
    chord = np.hypot(rope["span"], rope["rise"])
    sag = chord * np.sqrt(3 / 8 * max(1e-4, sum(rope["lengths"]) / chord - 1))
    start = np.column_stack([rope["span"] * share, rope["rise"] * share - 4 * sag * share * (1 - share)])
    found = minimize(
        energy, start.ravel(), args=(rope, lengths, weights), jac=True, method="trust-ncg",
        hess=lambda *a: hessian(*a).toarray(), options={"gtol": 1e-4, "maxiter": 2000})
    inner = found.x
    for _ in range(30):
        # The optimiser stops where the energy's own digits end; its gradient has digits left.
        step = spsolve(hessian(inner, rope, lengths, weights), -energy(inner, rope, lengths, weights)[1])
        inner = inner + step
        if np.abs(step).max() < 1e-12 * rope["span"]:
            break
    points = np.vstack([[0, 0], inner.reshape(-1, 2), [rope["span"], rope["rise"]]])
    return points[:: 1 if rope.get("all") else rope.get("bars", BARS_PER_BAY)].tolist()


json.dump([solve(rope) for rope in json.load(open(sys.argv[1]))], sys.stdout)
