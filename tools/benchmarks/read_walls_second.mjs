// node read_walls_second.mjs FOLDER MODEL.ifc: the mesh of every wall of a model, its openings cut, by @ifc-lite/wasm (installed in the folder). Prints how many.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const [folder, file] = process.argv.slice(2);
const entry = createRequire(path.resolve(folder, 'package.json')).resolve('@ifc-lite/wasm');
const { IfcAPI, initSync } = await import(pathToFileURL(entry));
for (const say of ['log', 'info', 'warn']) console[say] = () => {};
initSync({ module: fs.readFileSync(path.join(path.dirname(entry), 'ifc-lite_bg.wasm')) });
const bytes = new Uint8Array(fs.readFileSync(file)), api = new IfcAPI();
const found = api.buildPrePassOnce(bytes), [x, y, z] = found.rtcOffset ?? [0, 0, 0], jobs = [];
// Jobs are an element's number, and where it starts and ends.
for (let i = 0; i < (found.jobs?.length ?? 0); i += 3) {
  const text = Buffer.from(bytes.buffer, found.jobs[i + 1], Math.min(64, bytes.length - found.jobs[i + 1])).toString('latin1');
  if (/^#\d+\s*=\s*IFCWALL(STANDARDCASE|ELEMENTEDCASE)?\s*\(/.test(text)) jobs.push(...found.jobs.slice(i, i + 3));
}
const made = api.processGeometryBatch(bytes, new Uint32Array(jobs), found.unitScale, x, y, z, found.needsShift,
  found.voidKeys, found.voidCounts, found.voidValues, found.styleIds, found.styleColors, found.planeAngleToRadians);
let triangles = 0;
for (let i = 0; i < made.length; i++) triangles += made.takeMesh(i).indices.length / 3;
process.stdout.write(`${JSON.stringify({ walls: jobs.length / 3, triangles })}\n`);
