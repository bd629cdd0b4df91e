// node list_parts.mjs PARTS.ifc LAYOUT.json: what web-ifc meshes of a parts file, a JSON line a coursed wall:
//   id, own: volume of the wall's own mesh (m3), openings: volume of its openings' meshes,
//   parts [{id, type, name, tag, volume (m3), closed, box: [s from, to, t from, to, z from, to] in the wall's frame, mm}]
// and a last line {grids, layers: {name: items}}.
import fs from 'node:fs';
import { IFCGRID, IFCPRESENTATIONLAYERASSIGNMENT, IFCRELVOIDSELEMENT } from 'web-ifc';
import { measured } from './mesh.mjs';
import { open, plain, push } from './webifc.mjs';

const [file, layoutFile] = process.argv.slice(2);
const { line, all, partsOf, typeOf, ownMesh } = await open(file);
const openingsOf = new Map();
for (const id of all(IFCRELVOIDSELEMENT)) { const r = line(id); push(openingsOf, plain(r.RelatingBuildingElement), plain(r.RelatedOpeningElement)); }

function boxIn(frame, { origin, triangles }) {
  const box = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  const [dx, dy, dz] = origin.map((v, k) => v - frame.origin[k]);
  for (let i = 0; i < triangles.length; i += 3) {
    const [x, y, z] = [triangles[i] + dx, triangles[i + 1] + dy, triangles[i + 2] + dz];
    [x * frame.direction[0] + y * frame.direction[1], -(x * frame.normal[0] + y * frame.normal[1]), z].forEach((v, k) => {
      box[2 * k] = Math.min(box[2 * k], v); box[2 * k + 1] = Math.max(box[2 * k + 1], v); });
  }
  return box;
}

const volume = id => measured(ownMesh(id))?.volume ?? 0;
const out = [];
for (const wall of JSON.parse(fs.readFileSync(layoutFile, 'utf8')).walls.filter(wall => wall.status === 'coursed')) {
  out.push({ id: wall.stepId, own: volume(wall.stepId), openings: (openingsOf.get(wall.stepId) ?? []).reduce((sum, id) => sum + volume(id), 0),
    parts: partsOf(wall.stepId).map(id => {
      const part = line(id), mesh = ownMesh(id), facts = measured(mesh);
      return { id, type: typeOf(id), name: plain(part.Name), tag: plain(part.Tag), volume: facts?.volume ?? 0, closed: facts?.closed ?? false, box: facts && boxIn(wall.frame, mesh) };
    }) });
}
const layers = Object.fromEntries(all(IFCPRESENTATIONLAYERASSIGNMENT).map(id => [plain(line(id).Name), line(id).AssignedItems.length]));
out.push({ grids: all(IFCGRID).length, layers });
fs.writeSync(1, out.map(o => JSON.stringify(o)).join('\n') + '\n');
