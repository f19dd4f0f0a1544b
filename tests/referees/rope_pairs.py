"""Two ropes under frames that stand above them, by another way, for tests to compare with.

Reads a JSON list of pairs from the file named, prints a JSON list of answers. Each pair: span, rise, lengths (unstressed, of a
bay), weight (N/m) and stiffness (EA) of one rope, spacing; one a node, supports included: weights (N, of the whole bridge),
moments (weight x distance towards the left rope), heights (weight x height over the ropes), deck (height at which the deck is
held in plan); and, where masses are given, masses, firsts (mass x height) and seconds (mass x (height^2 + distance^2)).
held: for each end metres that a saddle comes in without a pull, and metres a newton; null for ends that stay.

Nothing here knows of catenaries: every bay is cut into straight elastic bars in three dimensions. The tilted state is where
the gradient of the energy vanishes: strain and height of the weights, less moments x t + heights x t^2 / 2 with t the left
rope's depth under the right one over the spacing. Frames are rigid in their planes and move sideways as one; the two ropes move
along the bridge each by itself (yaw free).
"""
import json
import sys

import numpy as np
from scipy.linalg import eigh
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

BARS = 4  # a bay
G = 9.80665


class Rope:
    """One rope as bars. Points in x, y, z; the ends give along x where a saddle is held by a backstay."""

    def __init__(self, pair):
        self.pair = pair
        self.lengths = np.repeat(np.array(pair["lengths"]) / BARS, BARS)
        self.own = np.zeros(len(self.lengths) + 1)
        self.own[:-1] += self.lengths * pair["weight"] / 2
        self.own[1:] += self.lengths * pair["weight"] / 2
        self.held = pair.get("held") or [None, None]
        self.ends = [[0.0, 0.0], [pair["span"], pair["rise"]]]

    def points(self, free):
        inner = free[2:].reshape(-1, 2)
        ends = [[self.ends[0][0] + free[0], self.ends[0][1]], [self.ends[1][0] - free[1], self.ends[1][1]]]
        return np.vstack([ends[:1], inner, ends[1:]])

    def tensions(self, points):
        ways = np.diff(points, axis=0)
        chords = np.hypot(ways[:, 0], ways[:, 1])
        return ways, chords, self.pair["stiffness"] * (chords - self.lengths) / self.lengths

    def gradient(self, free, loads):
        points = self.points(free)
        ways, chords, tensions = self.tensions(points)
        pulls = (tensions / chords)[:, None] * ways
        force = np.zeros_like(points)
        force[:-1] -= pulls
        force[1:] += pulls
        force[:, 1] += self.own
        force[::BARS, 1] += loads
        ends = [force[0, 0], -force[-1, 0]]
        for e, held in enumerate(self.held):
            ends[e] = free[e] if held is None else ends[e] + (free[e] - held[0]) / held[1]
        return np.concatenate([ends, force[1:-1].ravel()])

    def hessian(self, free):
        points = self.points(free)
        ways, chords, tensions = self.tensions(points)
        along = ways[:, :, None] * ways[:, None, :] / (chords**2)[:, None, None]
        blocks = (self.pair["stiffness"] / self.lengths)[:, None, None] * along
        blocks = blocks + (tensions / chords)[:, None, None] * (np.eye(2) - along)
        count = len(chords)
        index = np.full((count + 1, 2), -1)
        index[1:-1] = 2 + np.arange(2 * (count - 1)).reshape(-1, 2)
        sign = np.ones((count + 1, 2))
        index[0, 0], index[-1, 0], sign[-1, 0] = 0, 1, -1
        rows, columns, values = [], [], []
        bar = np.arange(count)
        for p, q, s in ((bar, bar, 1), (bar + 1, bar + 1, 1), (bar, bar + 1, -1), (bar + 1, bar, -1)):
            for a in range(2):
                for b in range(2):
                    ok = (index[p, a] >= 0) & (index[q, b] >= 0)
                    rows.append(index[p, a][ok])
                    columns.append(index[q, b][ok])
                    values.append((s * blocks[:, a, b] * sign[p, a] * sign[q, b])[ok])
        size = 2 + 2 * (count - 1)
        matrix = coo_matrix((np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))), (size, size)).tolil()
        for e, held in enumerate(self.held):
            if held is None:
                matrix[e, :] = 0
                matrix[:, e] = 0
                matrix[e, e] = 1
            else:
                matrix[e, e] += 1 / held[1]
        return matrix.tocsc()

    def start(self):
        count = len(self.lengths)
        share = np.arange(1, count) / count
        span, rise = self.pair["span"], self.pair["rise"]
        chord = np.hypot(span, rise)
        sag = chord * np.sqrt(3 / 8 * max(1e-4, self.lengths.sum() / chord - 1))
        return np.concatenate([[0, 0], np.column_stack([span * share, rise * share - 4 * sag * share * (1 - share)]).ravel()])


def newton(start, gradient, hessian, size):
    """Newton with a line search on the gradient's length, which may grow for a step: so slack bars are left. The last steps have all digits."""
    free, step = start, np.inf
    for _ in range(400):
        force = gradient(free)
        step = spsolve(hessian(free), -force)
        factor = min(1.0, 0.1 * size / np.abs(step).max())
        while factor > 0.03 and np.linalg.norm(gradient(free + factor * step)) > (1 - factor / 4) * np.linalg.norm(force) + 1e-6:
            factor /= 2
        free = free + factor * step
        if np.abs(step).max() < 1e-13 * size:
            break
    if np.abs(step).max() > 1e-9 * size:
        sys.exit("Newton's method found no equilibrium.")
    return free


def alone(rope, loads):
    return newton(rope.start(), lambda f: rope.gradient(f, loads), rope.hessian, rope.pair["span"])


def depths(rope, free):
    return -rope.points(free)[::BARS, 1]


def together(pair, rope, left, right):
    """Both ropes, frames tilted, by Newton on everything at once."""
    size, nodes = len(left), len(pair["weights"])
    weights, moments, heights, s = (np.array(pair[k]) if k != "spacing" else pair[k] for k in ("weights", "moments", "heights", "spacing"))
    at = 2 + 2 * (BARS * np.arange(1, nodes - 1) - 1) + 1

    def loads(both):
        t = (depths(rope, both[:size]) - depths(rope, both[size:])) / s
        lean = (moments + heights * t) / s
        return weights / 2 + lean, weights / 2 - lean

    def gradient(both):
        l, r = loads(both)
        return np.concatenate([rope.gradient(both[:size], l), rope.gradient(both[size:], r)])

    def hessian(both):
        g = heights[1:-1] / s**2
        rows = np.concatenate([at, size + at, at, size + at])
        columns = np.concatenate([at, size + at, size + at, at])
        lean = coo_matrix((np.concatenate([-g, -g, g, g]), (rows, columns)), (2 * size, 2 * size))
        a, b = rope.hessian(both[:size]).tocoo(), rope.hessian(both[size:]).tocoo()
        own = coo_matrix(
            (np.concatenate([a.data, b.data]), (np.concatenate([a.row, size + b.row]), np.concatenate([a.col, size + b.col]))),
            (2 * size, 2 * size))
        return (own + lean).tocsc()

    both = newton(np.concatenate([left, right]), gradient, hessian, pair["span"])
    return both[:size], both[size:]


def sideways(rope, free):
    """Stiffness to the side of all inner points: tension over length of every bar."""
    _, chords, tensions = rope.tensions(rope.points(free))
    k = tensions / chords
    inner = len(k) - 1
    matrix = np.zeros((inner, inner))
    matrix[np.arange(inner), np.arange(inner)] = k[:-1] + k[1:]
    matrix[np.arange(inner - 1), np.arange(1, inner)] = matrix[np.arange(1, inner), np.arange(inner - 1)] = -k[1:-1]
    return matrix


def stiffness(pair, rope, left, right):
    """Of all points in x, y, z; frames then move by (x left, drop left, x right, drop right, side)."""
    nodes = len(pair["weights"])
    inner = BARS * (nodes - 1) - 1
    plane = [rope.hessian(f).toarray() for f in (left, right)]
    # Ends that give are eliminated with everything else that no frame stands on.
    size = len(plane[0])
    total = 2 * size + 2 * inner
    whole = np.zeros((total, total))
    whole[:size, :size], whole[size : 2 * size, size : 2 * size] = plane
    side = [sideways(rope, f) for f in (left, right)]
    whole[2 * size : 2 * size + inner, 2 * size : 2 * size + inner] = side[0]
    whole[2 * size + inner :, 2 * size + inner :] = side[1]
    frames = nodes - 2
    move = np.zeros((total, 5 * frames))
    fixed = np.zeros(total, bool)
    for i in range(frames):
        point = BARS * (i + 1) - 1
        places = (2 + 2 * point, 2 + 2 * point + 1, size + 2 + 2 * point, size + 2 + 2 * point + 1)
        for k, place in enumerate(places):
            move[place, 5 * i + k] = -1 if k % 2 else 1
            fixed[place] = True
        for place in (2 * size + point, 2 * size + inner + point):
            move[place, 5 * i + 4] = 1
            fixed[place] = True
    kept, gone = whole[np.ix_(fixed, fixed)], whole[np.ix_(~fixed, ~fixed)]
    between = whole[np.ix_(fixed, ~fixed)]
    return move[fixed].T @ (kept - between @ np.linalg.solve(gone, between.T)) @ move[fixed]


def least(k, g):
    """Smallest positive x with det(k - x g) = 0."""
    return float(1 / eigh(g, k, eigvals_only=True)[-1])


def answer(pair):
    rope = Rope(pair)
    weights, moments, heights, s = np.array(pair["weights"]), np.array(pair["moments"]), np.array(pair["heights"]), pair["spacing"]
    left, right = alone(rope, weights / 2 + moments / s), alone(rope, weights / 2 - moments / s)
    first = (depths(rope, left) - depths(rope, right)) / s
    if pair.get("tilted", True):
        left, right = together(pair, rope, left, right)
    second = (depths(rope, left) - depths(rope, right)) / s
    k = stiffness(pair, rope, left, right)
    frames = len(weights) - 2
    tilt = np.zeros((frames, 5 * frames))
    for i in range(frames):
        tilt[i, 5 * i + 1], tilt[i, 5 * i + 3] = 1 / s, -1 / s
    g = tilt.T @ np.diag(heights[1:-1]) @ tilt
    # Deck held in plan: no yaw, and the deck's height does not move to the side.
    held = np.zeros((5 * frames, 3 * frames))
    for i in range(frames):
        held[5 * i, 3 * i] = held[5 * i + 2, 3 * i] = 1
        held[5 * i + 1, 3 * i + 1] = held[5 * i + 3, 3 * i + 2] = 1
        held[5 * i + 4, 3 * i + 1], held[5 * i + 4, 3 * i + 2] = -pair["deck"][i + 1] / s, pair["deck"][i + 1] / s
    result = {
        "first": np.arctan(first).tolist(),
        "second": np.arctan(second).tolist(),
        "tensions": [float(rope.tensions(rope.points(f))[2].max()) for f in (left, right)],
        "roll": least(k, g),
        "held": least(held.T @ k @ held, held.T @ g @ held),
    }
    if "masses" in pair:
        m = np.zeros((5 * frames, 5 * frames))
        for i in range(frames):
            mass, lever, second_moment = (pair[n][i + 1] for n in ("masses", "firsts", "seconds"))
            lean = np.zeros(5)
            lean[1], lean[3] = 1 / s, -1 / s
            side, fall = np.eye(5)[4], np.array([0, 0.5, 0, 0.5, 0])
            block = mass * (np.outer(side, side) + np.outer(fall, fall)) + second_moment * np.outer(lean, lean)
            block += lever * (np.outer(side, lean) + np.outer(lean, side))
            block[0, 0] += mass / 2
            block[2, 2] += mass / 2
            m[5 * i : 5 * i + 5, 5 * i : 5 * i + 5] = block
        squares, shapes = eigh(k - g, m)
        swaying = []
        for n in range(len(squares)):
            side = shapes[4::5, n]
            share = np.abs(side).max() / np.abs(shapes[:, n]).max()
            swaying.append([float(np.sqrt(max(0, squares[n])) / 2 / np.pi), float(share), float(side @ side[::-1])])
        result["sway"] = swaying[:12]
    return result


json.dump([answer(pair) for pair in json.load(open(sys.argv[1]))], sys.stdout)
