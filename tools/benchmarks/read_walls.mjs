// node read_walls.mjs FOLDER MODEL.ifc: reads with web-ifc (installed in the folder) what Read reads of a model: every
// wall with its mesh, its openings with theirs, fillings and path connections. Prints how many of each.
// With a third word, list, it reads the same entities and property sets, and no mesh.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const [folder, file, how] = process.argv.slice(2);
const W = createRequire(path.resolve(folder, 'package.json'))('web-ifc');
const api = new W.IfcAPI();
await api.Init();
api.SetLogLevel(W.LogLevel.LOG_LEVEL_OFF);
const model = api.OpenModel(new Uint8Array(fs.readFileSync(file)), { CIRCLE_SEGMENTS: 64 });
const all = type => { const found = api.GetLineIDsWithType(model, type, false);
  return Array.from({ length: found.size() }, (_, i) => found.get(i)); };

let triangles = 0;
function mesh(id) {
  if (how === 'list') return;
  let flat;
  try { flat = api.GetFlatMesh(model, id); } catch { return; }
  for (let g = 0; g < flat.geometries.size(); g++) {
    const geometry = api.GetGeometry(model, flat.geometries.get(g).geometryExpressID);
    api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
    triangles += api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize()).length / 3;
    geometry.delete?.();
  }
  flat.delete?.();
}

const walls = new Set([W.IFCWALL, W.IFCWALLSTANDARDCASE, W.IFCWALLELEMENTEDCASE].flatMap(all));
const names = [...walls].map(id => { mesh(id); return api.GetLine(model, id).GlobalId?.value; });
const voids = all(W.IFCRELVOIDSELEMENT).map(id => api.GetLine(model, id)).filter(r => walls.has(r.RelatingBuildingElement?.value));
for (const r of voids) mesh(r.RelatedOpeningElement.value);
const fillings = all(W.IFCRELFILLSELEMENT).map(id => api.GetLine(model, id));
const sets = how === 'list' ? all(W.IFCRELDEFINESBYPROPERTIES).map(id => api.GetLine(model, id)).filter(r => r.RelatedObjects.some(o => walls.has(o.value)))
  .map(r => api.GetLine(model, r.RelatingPropertyDefinition.value, true)) : [];
const paths = all(W.IFCRELCONNECTSPATHELEMENTS).map(id => api.GetLine(model, id));
console.log(JSON.stringify({ walls: names.length, openings: voids.length, fillings: fillings.length, paths: paths.length, sets: sets.length, triangles }));
