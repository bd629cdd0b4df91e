// node list_walls.mjs MODEL.ifc: what web-ifc sees, a JSON line a wall:
//   guid, id, name, volume_m3 (net, of web-ifc's own mesh), mesh_closed, openings [{guid, filling}],
//   psets {set: {property: value}}, quantities [[set, name, kind, SI value]]
// and a last line {other: [...]} for openings and fillings: guid and psets.
// mesh_closed is false where the mesh leaks: web-ifc's booleans sometimes leave holes, and that volume says nothing.
import fs from 'node:fs';
import { IfcAPI, IFCWALL, IFCWALLSTANDARDCASE, IFCWALLELEMENTEDCASE, IFCRELVOIDSELEMENT, IFCRELFILLSELEMENT,
  IFCRELDEFINESBYPROPERTIES, IFCPROJECT, LogLevel } from 'web-ifc';

const api = new IfcAPI();
await api.Init();
api.SetLogLevel(LogLevel.LOG_LEVEL_OFF);
const model = api.OpenModel(new Uint8Array(fs.readFileSync(process.argv[2])), { CIRCLE_SEGMENTS: 64 });

const plain = x => x !== null && typeof x === 'object' && 'value' in x ? x.value : x ?? null;
const line = id => { try { return api.GetLine(model, id); } catch { return null; } };
const all = type => { const found = api.GetLineIDsWithType(model, type, false);
  return Array.from({ length: found.size() }, (_, i) => found.get(i)); };
const push = (map, key, value) => map.has(key) ? map.get(key).push(value) : map.set(key, [value]);

const openingsOf = new Map(), fillingOf = new Map(), setsOf = new Map();
for (const id of all(IFCRELVOIDSELEMENT)) {
  const r = line(id);
  push(openingsOf, plain(r.RelatingBuildingElement), plain(r.RelatedOpeningElement));
}
for (const id of all(IFCRELFILLSELEMENT)) {
  const r = line(id);
  fillingOf.set(plain(r.RelatingOpeningElement), plain(r.RelatedBuildingElement));
}
for (const id of all(IFCRELDEFINESBYPROPERTIES)) {
  const r = line(id);
  for (const element of r.RelatedObjects ?? []) push(setsOf, plain(element), plain(r.RelatingPropertyDefinition));
}

const prefixes = { MILLI: 1e-3, CENTI: 1e-2, DECI: 1e-1 };
const powers = { LENGTHUNIT: 1, AREAUNIT: 2, VOLUMEUNIT: 3 };
// Metres, square or cubic metres in one of the unit.
function factor(unit) {
  if (!unit) return 1;
  if (unit.ConversionFactor) {
    const measure = line(plain(unit.ConversionFactor));
    return Number(plain(measure.ValueComponent)) * factor(line(plain(measure.UnitComponent)));
  }
  return (prefixes[plain(unit.Prefix)] ?? 1) ** (powers[plain(unit.UnitType)] ?? 1);
}
const units = {};
for (const id of all(IFCPROJECT)) {
  const assigned = line(plain(line(id).UnitsInContext));
  for (const u of assigned?.Units ?? []) { const unit = line(plain(u)); if (unit?.UnitType) units[plain(unit.UnitType)] = factor(unit); }
}

function properties(id) {
  const psets = {}, quantities = [], setNames = [];
  for (const setId of setsOf.get(id) ?? []) {
    const set = line(setId);
    if (!set) continue;
    const name = plain(set.Name);
    setNames.push(name);
    for (const ref of set.HasProperties ?? []) {
      const p = line(plain(ref));
      if (p) (psets[name] ??= {})[plain(p.Name)] = plain(p.NominalValue);
    }
    for (const ref of set.Quantities ?? []) {
      const q = line(plain(ref));
      if (!q) continue;
      const kind = ['Length', 'Area', 'Volume', 'Count', 'Weight'].find(k => `${k}Value` in q);
      if (!kind) continue;
      const own = plain(q.Unit);
      const scale = own !== null ? factor(line(own)) : units[`${kind.toUpperCase()}UNIT`] ?? 1;
      quantities.push([name, plain(q.Name), kind.toLowerCase(), plain(q[`${kind}Value`]) * scale]);
    }
  }
  return { psets, quantities, setNames };
}

// Volume by the divergence theorem from a point of the mesh; the area vectors of a closed mesh cancel.
function measure(id) {
  let mesh;
  try { mesh = api.GetFlatMesh(model, id); } catch { return {}; }
  let volume = 0, area = 0, origin = null;
  const vector = [0, 0, 0], low = [Infinity, Infinity, Infinity], high = [-Infinity, -Infinity, -Infinity];
  for (let g = 0; g < mesh.geometries.size(); g++) {
    const placed = mesh.geometries.get(g), m = placed.flatTransformation;
    const geometry = api.GetGeometry(model, placed.geometryExpressID);
    const xyz = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
    const index = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
    const corner = i => {
      const p = [0, 1, 2].map(k => m[k] * xyz[6 * i] + m[4 + k] * xyz[6 * i + 1] + m[8 + k] * xyz[6 * i + 2] + m[12 + k]);
      origin ??= p;
      p.forEach((v, k) => { low[k] = Math.min(low[k], v); high[k] = Math.max(high[k], v); });
      return p.map((v, k) => v - origin[k]);
    };
    for (let t = 0; t < index.length; t += 3) {
      const [a, b, c] = [corner(index[t]), corner(index[t + 1]), corner(index[t + 2])];
      const u = b.map((v, k) => v - a[k]), w = c.map((v, k) => v - a[k]);
      const normal = [u[1] * w[2] - u[2] * w[1], u[2] * w[0] - u[0] * w[2], u[0] * w[1] - u[1] * w[0]];
      volume += a.reduce((sum, v, k) => sum + v * normal[k], 0) / 6;
      area += Math.hypot(...normal) / 2;
      normal.forEach((v, k) => { vector[k] += v / 2; });
    }
    geometry.delete?.();
  }
  if (area === 0) return {};
  const box = high.reduce((product, v, k) => product * (v - low[k]), 1);
  return { volume: Math.abs(volume), closed: Math.hypot(...vector) < 1e-4 * area && Math.abs(volume) <= box * 1.0001 };
}

const out = [], others = new Set();
for (const id of [IFCWALL, IFCWALLSTANDARDCASE, IFCWALLELEMENTEDCASE].flatMap(all)) {
  const wall = line(id), { volume = null, closed = null } = measure(id);
  const openings = openingsOf.get(id) ?? [];
  for (const o of openings) { others.add(o); if (fillingOf.has(o)) others.add(fillingOf.get(o)); }
  out.push({ guid: plain(wall.GlobalId), id, name: plain(wall.Name), volume_m3: volume, mesh_closed: closed,
    openings: openings.map(o => ({ guid: plain(line(o)?.GlobalId), filling: plain(line(fillingOf.get(o) ?? -1)?.GlobalId) })),
    ...properties(id) });
}
out.push({ other: [...others].map(id => ({ guid: plain(line(id)?.GlobalId), ...properties(id) })) });
fs.writeSync(1, out.map(o => JSON.stringify(o)).join('\n') + '\n');
