// Reads GLB files named on the command line with Khronos' validator; prints the reports of issues as JSON.
const fs = require('fs');
const validator = require('gltf-validator');

async function main(files) {
  const reports = [];
  for (const file of files) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)));
    reports.push({ ...report.issues, info: { nodes: report.info.drawCallCount, vertices: report.info.totalVertexCount } });
  }
  console.log(JSON.stringify(reports));
}

main(process.argv.slice(2)).catch((error) => {
  console.error(error);
  process.exit(1);
});
