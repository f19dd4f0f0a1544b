"""Two ropes in space in a wind across the bridge, by another way, for tests to compare with.

Reads a JSON list of bridges from the file named, prints a JSON list of answers. Each bridge: span, rise, lengths (unstressed, of
a bay), weight and wind (N a metre of rope), stiffness (EA) of one rope, spacing; one a node, supports included: weights (N, of
the whole bridge), heights (weight x height over the ropes), winds (N to the right), windHeights (wind x height).
leans: how far each frame leans towards B for each metre up; asides: weight x distance to the right of the middle.
held: for each end metres that a saddle comes in without a pull, and metres a newton; null for ends that stay.

Nothing here knows of catenaries: every bay is cut into straight elastic bars, and the state is where the gradient of the energy
of bars, weights and winds vanishes, reached from the calm in small steps. A frame's base is a rigid bar that rolls and yaws, and
the frame stands square to it and to the line of the ropes, which it leans back from by as much as they climb.
"""
import json
import sys

import numpy as np
from scipy.sparse import coo_matrix, csr_matrix, diags
from scipy.sparse.linalg import spsolve

BARS = 8  # a bay


def base(roll, yaw):
    """From the left to the right end of a base, as a unit vector."""
    return np.array([np.sin(yaw), -np.cos(yaw) * np.sin(roll), np.cos(yaw) * np.cos(roll)])


class Bridge:
    """Unknowns: x, y, z of the bars' inner nodes of both ropes; x, y, z, roll and yaw of each frame; give of both saddles."""

    def __init__(self, asked):
        self.asked = asked
        bays = len(asked["lengths"])
        self.frames = bays - 1
        self.rest = np.repeat(np.array(asked["lengths"]) / BARS, BARS)
        self.nodes = bays * BARS + 1
        own = np.zeros(self.nodes)
        own[:-1] += self.rest / 2
        own[1:] += self.rest / 2
        self.dead = np.zeros((2, self.nodes, 3))
        self.dead[:, :, 1] = -own * asked["weight"]
        self.blow = np.zeros((2, self.nodes, 3))
        self.blow[:, :, 2] = own * asked["wind"]
        self.inner = [i for i in range(1, self.nodes - 1) if i % BARS]
        self.held = asked.get("held") or [None, None]
        self.bases = 2 * 3 * len(self.inner)
        self.size = self.bases + 5 * self.frames + 4

    def start(self):
        a = self.asked
        share = np.arange(self.nodes) / (self.nodes - 1)
        chord = np.hypot(a["span"], a["rise"])
        sag = chord * np.sqrt(3 / 8 * max(1e-4, self.rest.sum() / chord - 1))
        x, y = a["span"] * share, a["rise"] * share - 4 * sag * share * (1 - share)
        q = np.zeros(self.size)
        for side in range(2):
            z = (side - 0.5) * a["spacing"]
            for k, i in enumerate(self.inner):
                q[3 * (side * len(self.inner) + k):][:3] = x[i], y[i], z
        for f in range(self.frames):
            i = (f + 1) * BARS
            q[self.bases + 5 * f:][:5] = x[i], y[i], 0, 0, 0
        return q

    def place(self, q):
        """Nodes of both ropes, what they change by, and second changes by a frame's roll and yaw."""
        a, half = self.asked, self.asked["spacing"] / 2
        at = np.zeros((2, self.nodes, 3))
        rows, columns, values = [], [], []

        def one(side, node, axis, column, value):
            rows.append(3 * (side * self.nodes + node) + axis)
            columns.append(column)
            values.append(value)

        bend = []
        for side in range(2):
            arm = (2 * side - 1) * half
            at[side, 0] = q[-4 + side], 0, arm
            at[side, -1] = a["span"] - q[-2 + side], a["rise"], arm
            one(side, 0, 0, self.size - 4 + side, 1)
            one(side, self.nodes - 1, 0, self.size - 2 + side, -1)
            for k, i in enumerate(self.inner):
                column = 3 * (side * len(self.inner) + k)
                at[side, i] = q[column:column + 3]
                for axis in range(3):
                    one(side, i, axis, column + axis, 1)
            for f in range(self.frames):
                i, column = (f + 1) * BARS, self.bases + 5 * f
                (sr, cr), (sy, cy) = ((np.sin(v), np.cos(v)) for v in q[column + 3:column + 5])
                at[side, i] = q[column:column + 3] + arm * base(*q[column + 3:column + 5])
                for axis in range(3):
                    one(side, i, axis, column + axis, 1)
                    one(side, i, axis, column + 3, arm * (0, -cy * cr, -cy * sr)[axis])
                    one(side, i, axis, column + 4, arm * (cy, sy * sr, -sy * cr)[axis])
                bend.append((side, i, column + 3, column + 3, arm * np.array([0, cy * sr, -cy * cr])))
                bend.append((side, i, column + 3, column + 4, arm * np.array([0, sy * cr, sy * sr])))
                bend.append((side, i, column + 4, column + 4, arm * np.array([-sy, cy * sr, -cy * cr])))
        return at, csr_matrix((values, (rows, columns)), (6 * self.nodes, self.size)), bend

    def pull(self, at, share):
        """Energy's gradient by the nodes, and its Hessian."""
        gradient = -(self.dead + share * self.blow)
        rows, columns, values = [], [], []
        for side in range(2):
            ways = np.diff(at[side], axis=0)
            chords = np.linalg.norm(ways, axis=1)
            tensions = self.asked["stiffness"] * (chords - self.rest) / self.rest
            pulls = (tensions / chords)[:, None] * ways
            gradient[side, :-1] -= pulls
            gradient[side, 1:] += pulls
            along = ways[:, :, None] * ways[:, None, :] / (chords**2)[:, None, None]
            blocks = (self.asked["stiffness"] / self.rest)[:, None, None] * along
            blocks = blocks + (tensions / chords)[:, None, None] * (np.eye(3) - along)
            bar = 3 * (side * self.nodes + np.arange(len(chords)))
            for p, r, sign in ((0, 0, 1), (3, 3, 1), (0, 3, -1), (3, 0, -1)):
                for i in range(3):
                    for j in range(3):
                        rows.append(bar + p + i)
                        columns.append(bar + r + j)
                        values.append(sign * blocks[:, i, j])
        size = 6 * self.nodes
        return gradient, coo_matrix(
            (np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))), (size, size)).tocsr()

    def system(self, q, share):
        a = self.asked
        at, by, bend = self.place(q)
        gradient, hessian = self.pull(at, share)
        force = by.T @ gradient.ravel()
        turn = np.zeros(self.size)
        rows, columns, values = [], [], []
        for side, node, row, column, way in bend:
            for r, c in {(row, column), (column, row)}:
                rows.append(r)
                columns.append(c)
                values.append(gradient[side, node] @ way)
        columns_of = self.bases + 5 * np.arange(self.frames)
        force[columns_of + 1] += np.array(a["weights"])[1:-1]
        force[columns_of + 2] -= share * np.array(a["winds"])[1:-1]
        angles = np.stack([q[columns_of + 3], q[columns_of + 4]])
        for k, moment in enumerate(self.tipping(angles, share)):
            force[columns_of + 3 + k] += moment
        for k in range(2):
            step = np.eye(2)[k][:, None] * 1e-5
            by_angle = (self.tipping(angles + step, share) - self.tipping(angles - step, share)) / 2e-5
            for j in range(2):
                rows += (columns_of + 3 + j).tolist()
                columns += (columns_of + 3 + k).tolist()
                values += by_angle[j].tolist()
        second = coo_matrix((values, (rows, columns)), (self.size, self.size))
        fixed = np.zeros(self.size)
        for end in range(2):
            for side in range(2):
                column = self.size - 4 + 2 * end + side
                if self.held[end] is None:
                    fixed[column] = 1
                else:
                    free, give = self.held[end]
                    force[column] += (q[column] - free) / give
                    turn[column] += 1 / give
        keep = diags(1 - fixed)
        matrix = keep @ (by.T @ hessian @ by + diags(turn) + second.tocsr()) @ keep + diags(fixed)
        return keep @ force, matrix.tocsc(), at, gradient

    def tipping(self, angles, share):
        """What roll and yaw change the energy by of all that stands on the frames: by steps into the complex numbers."""
        a = self.asked
        leans, heights, wind_heights, asides = (np.array(a[k])[1:-1] for k in ("leans", "heights", "windHeights", "asides"))
        along, climb = 1 / np.hypot(1, leans), -leans / np.hypot(1, leans)

        def energy(angles):
            x, y, z = base(*angles)
            # Square to the base and to the line of the ropes: base × line, of length one.
            up = np.array([-z * climb, z * along, x * climb - y * along])
            up = up / np.sqrt((up * up).sum(axis=0))
            # Heights are straight up over the ropes: along the frame all lies nearer to its base.
            return along * (heights * up[1] - share * wind_heights * up[2]) + asides * y

        return np.array([energy(angles + 1e-30j * np.eye(2)[k][:, None]).imag / 1e-30 for k in range(2)])

    def settle(self, q, share, nearest):
        force, matrix = self.system(q, share)[:2]
        for _ in range(300):
            step = spsolve(matrix, -force)
            factor, before = min(1.0, 0.1 * self.asked["span"] / np.abs(step).max()), np.linalg.norm(force)
            force, matrix = self.system(q + factor * step, share)[:2]
            while factor > 0.03 and not np.linalg.norm(force) <= (1 - factor / 4) * before + 1e-6:
                factor /= 2
                force, matrix = self.system(q + factor * step, share)[:2]
            q = q + factor * step
            if np.abs(step).max() < nearest * self.asked["span"]:
                return q
        sys.exit("Newton's method found no equilibrium.")

    def answer(self):
        q = self.start()
        for share in np.linspace(0, 1, 9):
            q = self.settle(q, share, 1e-12 if share == 1 else 1e-3)
        _, _, at, gradient = self.system(q, 1.0)
        frames = q[self.bases:-4].reshape(-1, 5)
        return {
            "left": at[0, ::BARS].tolist(),
            "right": at[1, ::BARS].tolist(),
            "rolls": frames[:, 3].tolist(),
            # What the ropes pull at the supports with: the opposite of what holds them there.
            "ends": [[(-gradient[side, node]).tolist() for side in range(2)] for node in (0, -1)],
            "pulls": [[(-gradient[side, (f + 1) * BARS]).tolist() for side in range(2)] for f in range(self.frames)],
        }


with open(sys.argv[1], encoding="utf-8") as file:
    print(json.dumps([Bridge(asked).answer() for asked in json.load(file)]))
