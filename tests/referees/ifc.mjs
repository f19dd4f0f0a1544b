// Reads the IFC files named on the command line with web-ifc; prints as JSON, a line a file: {"schema", "counts": of entities by
// type, "parts": [{"type", "name", "tag", "kind", "id", "volume": m3, "low", "high": box in metres, Z up, "opacity"}], "tree": what
// lies in what, "properties": of the first member}.
import fs from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const web = require('web-ifc');
const api = new web.IfcAPI();
await api.Init();
api.SetLogLevel(web.LogLevel.LOG_LEVEL_OFF);

// The library shows Y up; the file has Z up.
const place = (m, x, y, z) => {
  const [a, b, c] = [0, 1, 2].map((i) => m[i] * x + m[4 + i] * y + m[8 + i] * z + m[12 + i]);
  return [a, -c, b];
};

function measure(model, mesh) {
  let volume = 0;
  let opacity = 1;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let g = 0; g < mesh.geometries.size(); g++) {
    const placed = mesh.geometries.get(g);
    opacity = placed.color.w;
    const geometry = api.GetGeometry(model, placed.geometryExpressID);
    const data = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
    const index = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
    const points = [...index].map((i) => place(placed.flatTransformation, data[6 * i], data[6 * i + 1], data[6 * i + 2]));
    const o = points[0];
    for (let t = 0; t < points.length; t += 3) {
      const [a, b, c] = points.slice(t, t + 3).map((p) => p.map((v, k) => v - o[k]));
      volume += (a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
    }

    points.forEach((p) => p.forEach((v, k) => {
      low[k] = Math.min(low[k], v);
      high[k] = Math.max(high[k], v);
    }));
  }

  return { volume, low, high, opacity };
}

async function read(file) {
  const model = api.OpenModel(new Uint8Array(fs.readFileSync(file)));
  const parts = [];
  api.StreamAllMeshes(model, (mesh) => {
    const line = api.GetLine(model, mesh.expressID);
    parts.push({
      type: api.GetNameFromTypeCode(line.type), name: line.Name?.value, tag: line.Tag?.value ?? null,
      kind: line.ObjectType?.value ?? line.PredefinedType?.value, id: line.GlobalId.value, ...measure(model, mesh),
    });
  });

  const counts = {};
  const types = [
    'PROJECT', 'SITE', 'BUILDING', 'ELEMENTASSEMBLY', 'BEAM', 'MEMBER', 'PLATE', 'MECHANICALFASTENER', 'BUILDINGELEMENTPROXY',
    'OWNERHISTORY', 'RELAGGREGATES',
  ];
  for (const type of types) {
    counts[type] = api.GetLineIDsWithType(model, web[`IFC${type}`]).size();
  }

  const tree = await api.properties.getSpatialStructure(model, true);
  const children = (node) => ({ type: node.type, name: node.Name?.value, children: node.children.map(children) });
  const part = api.GetLineIDsWithType(model, web.IFCMEMBER).get(0);
  const sets = await api.properties.getPropertySets(model, part, true);
  const seen = {
    schema: api.GetModelSchema(model), counts, parts, tree: children(tree),
    properties: Object.fromEntries(sets.flatMap((s) => s.HasProperties ?? []).map((p) => [p.Name.value, p.NominalValue.value])),
  };
  api.CloseModel(model);
  return seen;
}

for (const file of process.argv.slice(2)) {
  console.log(JSON.stringify(await read(file)));
}
