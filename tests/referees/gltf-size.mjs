// What a general optimiser makes of a model: sizes before and after removing duplicates and what is unused, and welding.
import { readFileSync } from 'node:fs';
import { Logger, NodeIO } from '@gltf-transform/core';
import { ALL_EXTENSIONS } from '@gltf-transform/extensions';
import { dedup, prune, weld } from '@gltf-transform/functions';

const bytes = readFileSync(process.argv[2]);
const io = new NodeIO().registerExtensions(ALL_EXTENSIONS);
const model = await io.readBinary(new Uint8Array(bytes));
// It tells what it removes on the stream that the answer goes to.
model.setLogger(new Logger(Logger.Verbosity.SILENT));
const nodes = model.getRoot().listNodes().length;
await model.transform(dedup(), prune({ keepLeaves: true, keepExtras: true }), weld());
const optimised = await io.writeBinary(model);
console.log(JSON.stringify({ bytes: bytes.length, optimised: optimised.length, nodes }));
