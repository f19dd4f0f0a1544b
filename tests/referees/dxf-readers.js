// Reads a DXF file with two readers; prints as JSON what each saw: [type, layer, number of corners] of every entity.
const fs = require('fs');
const DxfParser = require('dxf-parser');
const { Helper } = require('dxf');

const text = fs.readFileSync(process.argv[2], 'latin1');
const corners = (entity) => (entity.vertices ? entity.vertices.length : 0);

const parsed = new DxfParser().parseSync(text);
const helper = new Helper(text);
helper.logger = { info: () => {}, log: () => {} };

console.log(JSON.stringify({
  parser: parsed.entities.map((e) => [e.type, e.layer, e.type === 'LINE' ? 2 : corners(e)]),
  closed: parsed.entities.filter((e) => e.type === 'LWPOLYLINE').every((e) => e.shape === true),
  layers: Object.keys(parsed.tables.layer.layers),
  helper: helper.parsed.entities.map((e) => [e.type, e.layer, e.type === 'LINE' ? 2 : corners(e)]),
  helperInsUnits: helper.parsed.header.insUnits,
}));
