// node second_opinion.mjs MODEL.ifc JSON: a JSON line [id, facts] for each wall of the JSON {id: [elements that give its body]},
// measured on the meshes of a kernel that shares no code with web-ifc. A cut that the kernel gave up makes a mesh not closed.
import fs from 'node:fs';
import { IfcAPI, initSync } from '@ifc-lite/wasm';
import { measured } from './mesh.mjs';

for (const say of ['log', 'info', 'warn']) console[say] = () => {};
initSync({ module: fs.readFileSync(new URL('./ifc-lite_bg.wasm', import.meta.resolve('@ifc-lite/wasm'))) });
const [file, asked] = process.argv.slice(2);
const bytes = new Uint8Array(fs.readFileSync(file)), api = new IfcAPI();
api.setTessellationQuality('high');
const found = api.buildPrePassOnce(bytes), [x, y, z] = found.rtcOffset ?? [0, 0, 0], jobs = new Map();
for (let i = 0; i < (found.jobs?.length ?? 0); i += 3) jobs.set(found.jobs[i], found.jobs.slice(i, i + 3));

function mesh(elements) {
  const wanted = new Uint32Array(elements.flatMap(element => [...jobs.get(element) ?? []])), corners = [];
  const made = api.processGeometryBatch(bytes, wanted, found.unitScale, x, y, z, found.needsShift,
    found.voidKeys, found.voidCounts, found.voidValues, found.styleIds, found.styleColors, found.planeAngleToRadians);
  for (let i = 0; i < made.length; i++) {
    const part = made.takeMesh(i), p = part.positions, o = part.origin;
    // From the kernel's metres with y up to mm with z up.
    for (const k of part.indices) corners.push((p[3 * k] + o[0] + x) * 1000, (-p[3 * k + 2] - o[2] + y) * 1000, (p[3 * k + 1] + o[1] + z) * 1000);
  }
  const origin = corners.slice(0, 3), said = made.diagnostics;
  return { origin, triangles: corners.map((v, i) => v - origin[i % 3]), whole: !said?.totalCsgFailures && !said?.silentNoOps };
}

for (const [id, elements] of Object.entries(JSON.parse(asked))) {
  const body = mesh(elements), facts = measured(body);
  fs.writeSync(1, `${JSON.stringify([Number(id), facts && { ...facts, closed: facts.closed && body.whole }])}\n`);
}
