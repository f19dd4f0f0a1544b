// How long manifold-3d takes, warm, to trim a member by two planes and subtract two channels, with the mesh read back.
// Prints {"median_us": …, "triangles": …}. The same member as SolidsVersus.cs in the benchmarks, in millimetres.
import Module from 'manifold-3d';

const wasm = await Module();
wasm.setup();
const { Manifold } = wasm;

const tilted = (degrees) => [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180), 0];
const blank = Manifold.cube([1600, 89, 89], true);
const channel = (x) => Manifold.cube([16, 40, 200], true).translate([x, -44.5, 0]);
const left = channel(-560);
const right = channel(560);
const [nx, ny, nz] = tilted(8);

function make() {
  const near = blank.trimByPlane([nx, ny, nz], -711);
  const both = near.trimByPlane([-nx, ny, nz], -711);
  const one = both.subtract(left);
  const two = one.subtract(right);
  const mesh = two.getMesh();
  const triangles = mesh.triVerts.length / 3 + (mesh.vertProperties.length > 0 ? 0 : 1);
  for (const body of [near, both, one, two]) body.delete();
  return triangles;
}

const WARM_UP = 2000;
const RUNS = 5000;
let triangles = 0;
for (let i = 0; i < WARM_UP; i++) triangles = make();
const times = [];
for (let i = 0; i < RUNS; i++) {
  const start = process.hrtime.bigint();
  triangles = make();
  times.push(Number(process.hrtime.bigint() - start) / 1000);
}
times.sort((a, b) => a - b);
console.log(JSON.stringify({ median_us: times[RUNS / 2], triangles }));
