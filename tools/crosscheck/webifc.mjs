// A model opened with web-ifc: its lines, and the meshes of its elements.
import fs from 'node:fs';
import { IfcAPI, IFCRELAGGREGATES, LogLevel } from 'web-ifc';
import { EMPTY } from './mesh.mjs';

export const plain = x => x !== null && typeof x === 'object' && 'value' in x ? x.value : x ?? null;
export const push = (map, key, value) => map.has(key) ? map.get(key).push(value) : map.set(key, [value]);

export async function open(file) {
  const api = new IfcAPI();
  await api.Init();
  api.SetLogLevel(LogLevel.LOG_LEVEL_OFF);
  const model = api.OpenModel(new Uint8Array(fs.readFileSync(file)), { CIRCLE_SEGMENTS: 64 });
  const line = id => { try { return api.GetLine(model, id); } catch { return null; } };
  const all = type => { const found = api.GetLineIDsWithType(model, type, false);
    return Array.from({ length: found.size() }, (_, i) => found.get(i)); };
  const parts = new Map();
  for (const id of all(IFCRELAGGREGATES)) {
    const r = line(id);
    for (const part of r?.RelatedObjects ?? []) push(parts, plain(r.RelatingObject), plain(part));
  }
  // Walls that are parts of a wall are walls of their own.
  const isWall = id => /^IFCWALL/i.test(api.GetNameFromTypeCode(api.GetLineType(model, id)));
  const partsOf = id => (parts.get(id) ?? []).filter(part => !isWall(part));
  // The element itself, or its parts where it has no shape of its own, and so on down.
  const bodyOf = id => partsOf(id).length && meshOf(api, model, [id]).triangles.length === 0 ? partsOf(id).flatMap(bodyOf) : [id];
  const typeOf = id => api.GetNameFromTypeCode(api.GetLineType(model, id));
  return { line, all, partsOf, bodyOf, typeOf, ownMesh: id => meshOf(api, model, [id]), mesh: id => meshOf(api, model, bodyOf(id)) };
}

function meshOf(api, model, ids) {
  const triangles = [];
  let origin = null;
  for (const id of ids) {
    let flat;
    try { flat = api.GetFlatMesh(model, id); } catch { continue; }
    for (let g = 0; g < flat.geometries.size(); g++) {
      const placed = flat.geometries.get(g), m = placed.flatTransformation;
      const geometry = api.GetGeometry(model, placed.geometryExpressID);
      const xyz = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
      for (const i of api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize())) {
        const p = [0, 1, 2].map(k => m[k] * xyz[6 * i] + m[4 + k] * xyz[6 * i + 1] + m[8 + k] * xyz[6 * i + 2] + m[12 + k]);
        // From the reader's metres with y up to mm with z up.
        const [x, y, z] = [p[0] * 1000, -p[2] * 1000, p[1] * 1000];
        origin ??= [x, y, z];
        triangles.push(x - origin[0], y - origin[1], z - origin[2]);
      }
      geometry.delete?.();
    }
    flat.delete?.();
  }
  return origin === null ? EMPTY : { origin, triangles };
}
