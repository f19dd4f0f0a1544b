// Reads members as JSON lines from standard input and answers each with what manifold-3d makes of it:
// {"volume": m3, "status": "NoError", "open": number of edges not used once each way}.
// A member: {"box": [min, max], "steps": [{"plane": [nx, ny, nz, d]} | {"cutter": [[nx, ny, nz, d], ...]}]}.
// Planes keep what is below, n . p <= d. Lengths in metres; manifold-3d works in millimetres here, which suits its floats.
import { createInterface } from 'node:readline';
import Module from 'manifold-3d';

const MM = 1000;
const BIG = 40 * MM; // longer than any member on every side

const wasm = await Module();
wasm.setup();
const { Manifold } = wasm;

// A body that is empty has no box, and a trim of it would come out as not finite.
const trim = (body, [x, y, z, d]) => (body.isEmpty() ? body : body.trimByPlane([-x, -y, -z], -d * MM));

function boxOf([min, max]) {
  const size = max.map((value, i) => (value - min[i]) * MM);
  return Manifold.cube(size).translate(min.map((value) => value * MM));
}

const cutterOf = (planes) => planes.reduce(trim, Manifold.cube([BIG, BIG, BIG], true));

function apply(body, step) {
  return step.plane ? trim(body, step.plane) : body.subtract(cutterOf(step.cutter));
}

function openEdges(body) {
  const mesh = body.getMesh();
  const same = new Map();
  const root = (v) => (same.has(v) ? root(same.get(v)) : v);
  mesh.mergeFromVert.forEach((from, i) => same.set(from, mesh.mergeToVert[i]));
  const uses = new Map();
  for (let i = 0; i < mesh.triVerts.length; i++) {
    const next = i % 3 === 2 ? i - 2 : i + 1;
    const key = `${root(mesh.triVerts[i])} ${root(mesh.triVerts[next])}`;
    uses.set(key, (uses.get(key) ?? 0) + 1);
  }
  return [...uses].filter(([key, n]) => n !== 1 || uses.get(key.split(' ').reverse().join(' ')) !== 1).length;
}

for await (const line of createInterface({ input: process.stdin })) {
  const member = JSON.parse(line);
  const body = member.steps.reduce(apply, boxOf(member.box));
  console.log(JSON.stringify({ volume: body.volume() / MM ** 3, status: body.status(), open: openEdges(body) }));
}
