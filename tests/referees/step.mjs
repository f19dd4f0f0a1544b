// Reads the STEP files named on the command line with OpenCASCADE; prints what it saw as JSON, a file an entry:
// {"status": of the reading, "solids": [{"volume": m3, "valid", "closed", "tolerance": mm by which its edges and corners miss each
// other at most, "round": {"radius in mm": walls}}] one a different solid in the order of the file, "shown": how many there are with
// all their places, "low", "high": box in mm}.
// The first file is read by a second build too: {"second": {"success", "names", "meshes", "colours"}}. Beside a file "x.step" may
// lie "x.json" with cylinders, in millimetres, [{"at", "along", "radius", "length"}] one a solid: each solid also has "cut", the
// volume that is left of it when OpenCASCADE itself takes its cylinder away.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import exact from 'replicad-opencascadejs';

const require = createRequire(import.meta.url);
const MM3 = 1e9;
const wasm = require.resolve('replicad-opencascadejs').replace(/[^/]*$/, 'replicad_single.wasm');
const oc = await exact({ wasmBinary: fs.readFileSync(wasm) });
const occt = await require('occt-import-js')();

const { TopAbs_SOLID, TopAbs_SHELL, TopAbs_FACE, TopAbs_EDGE, TopAbs_VERTEX, TopAbs_SHAPE } = oc.TopAbs_ShapeEnum;

function* within(shape, kind) {
  for (const found = new oc.TopExp_Explorer(shape, kind, TopAbs_SHAPE); found.More(); found.Next()) {
    yield found.Current();
  }
}

function rounds(solid) {
  const walls = {};
  for (const face of within(solid, TopAbs_FACE)) {
    const surface = new oc.BRepAdaptor_Surface(oc.TopoDS.Face(face), false);
    if (surface.GetType() === oc.GeomAbs_SurfaceType.GeomAbs_Cylinder) {
      const radius = surface.Cylinder().Radius().toFixed(6);
      walls[radius] = (walls[radius] ?? 0) + 1;
    }
  }

  return walls;
}

function volumeOf(solid) {
  const mass = new oc.GProp_GProps();
  oc.BRepGProp.VolumeProperties(solid, mass, false, false, false);
  return mass.Mass() / MM3;
}

function cut(solid, { at, along, radius, length }) {
  const axes = new oc.gp_Ax2(new oc.gp_Pnt(...at), new oc.gp_Dir(...along));
  const drill = new oc.BRepPrimAPI_MakeCylinder(axes, radius, length).Shape();
  return volumeOf(new oc.BRepAlgoAPI_Cut(solid, drill, new oc.Message_ProgressRange()).Shape());
}

// The reader widens what does not meet until it does.
const toleranceOf = (solid) => Math.max(
  ...[...within(solid, TopAbs_EDGE)].map((e) => oc.BRep_Tool.Tolerance(oc.TopoDS.Edge(e))),
  ...[...within(solid, TopAbs_VERTEX)].map((v) => oc.BRep_Tool.Tolerance(oc.TopoDS.Vertex(v))),
);

function describe(solid) {
  return {
    volume: volumeOf(solid),
    valid: new oc.BRepCheck_Analyzer(solid, true, false, false).IsValid(),
    closed: [...within(solid, TopAbs_SHELL)].every((s) => oc.BRep_Tool.IsClosed(s)),
    tolerance: toleranceOf(solid),
    round: rounds(solid),
  };
}

function boxOf(shape) {
  const box = new oc.Bnd_Box();
  oc.BRepBndLib.AddOptimal(shape, box, false, false);
  const [low, high] = [box.CornerMin(), box.CornerMax()];
  return { low: [low.X(), low.Y(), low.Z()], high: [high.X(), high.Y(), high.Z()] };
}

function read(file, index) {
  oc.FS.writeFile('/a.step', fs.readFileSync(file));
  const reader = new oc.STEPControl_Reader();
  const status = reader.ReadFile('/a.step');
  reader.TransferRoots(new oc.Message_ProgressRange());
  const shape = reader.OneShape();
  const solids = [...within(shape, TopAbs_SOLID)];
  const different = [];
  solids.forEach((s) => different.some((d) => d.IsPartner(s)) || different.push(s)); // a bolt's bodies come again at each of its places
  const drills = file.replace(/step$/, 'json');
  const cuts = fs.existsSync(drills) ? JSON.parse(fs.readFileSync(drills)) : [];
  return {
    status, shown: solids.length, ...boxOf(shape), second: index === 0 ? second(file) : null,
    solids: different.map((s, i) => ({ ...describe(s), cut: cuts[i] ? cut(s, cuts[i]) : null })),
  };
}

// Of the second reader names and colours are asked for: its triangles may be as coarse as they like.
function second(file) {
  const coarse = { linearUnit: 'meter', linearDeflectionType: 'absolute_value', linearDeflection: 1, angularDeflection: 3 };
  const seen = occt.ReadStepFile(new Uint8Array(fs.readFileSync(file)), coarse);
  const names = [];
  const walk = (node) => {
    names.push(node.name);
    node.children.forEach(walk);
  };
  walk(seen.root);
  return { success: seen.success, names, meshes: seen.meshes.length, colours: [...new Set(seen.meshes.map((m) => m.color?.join(' ')))] };
}

console.log(JSON.stringify(process.argv.slice(2).map(read)));
