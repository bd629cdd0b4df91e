// node list_walls.mjs MODEL.ifc [LAYOUT.json]: what web-ifc sees, a JSON line a wall:
//   guid, id, name, openings [{guid, filling}], psets {set: {property: value}}, quantities [[set, name, kind, SI value]]
// and a last line {other: [...]} for openings and fillings: guid and psets. With a layout also, from web-ifc's own meshes:
//   body: ids of the elements that give the body; mesh: what mesh.mjs measures; volume_m3 and mesh_closed: the same under the names that verify_layout.py reads
//   bodyBox: [left, right, bottom, top] of the wall's own mesh inside the masonry layer, in that frame too
//   openings [{box: [left, right, bottom, top] of the void inside the masonry layer, in the frame of the layout's wall;
//     plain: whether it is a rectangle seen along the thickness}]
import fs from 'node:fs';
import { IFCWALL, IFCWALLSTANDARDCASE, IFCWALLELEMENTEDCASE, IFCRELVOIDSELEMENT, IFCRELFILLSELEMENT,
  IFCRELDEFINESBYPROPERTIES, IFCPROJECT } from 'web-ifc';
import { boxInLayer, isPlain, measured } from './mesh.mjs';
import { open, plain, push } from './webifc.mjs';

const [file, layoutFile] = process.argv.slice(2);
const { line, all, mesh, bodyOf, partsOf } = await open(file);
const layout = layoutFile === undefined ? null : new Map(JSON.parse(fs.readFileSync(layoutFile, 'utf8')).walls.map(wall => [wall.stepId, wall]));

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

const out = [], others = new Set();
for (const id of [IFCWALL, IFCWALLSTANDARDCASE, IFCWALLELEMENTEDCASE].flatMap(all)) {
  const wall = line(id), facts = layout && measured(mesh(id)), { frame } = layout?.get(id) ?? {};
  const openings = [id, ...partsOf(id)].flatMap(host => openingsOf.get(host) ?? []);
  for (const o of openings) { others.add(o); if (fillingOf.has(o)) others.add(fillingOf.get(o)); }
  out.push({ guid: plain(wall.GlobalId), id, name: plain(wall.Name),
    ...(layout && { body: bodyOf(id), mesh: facts, volume_m3: facts?.volume ?? null, mesh_closed: facts?.closed ?? null }),
    ...(frame && !frame.curve && { bodyBox: boxInLayer(mesh(id), frame) }),
    openings: openings.map(o => ({ guid: plain(line(o)?.GlobalId), filling: plain(line(fillingOf.get(o) ?? -1)?.GlobalId),
      ...(frame && !frame.curve && { box: boxInLayer(mesh(o), frame), plain: isPlain(mesh(o), frame) }) })),
    ...properties(id) });
}
out.push({ other: [...others].map(id => ({ guid: plain(line(id)?.GlobalId), ...properties(id) })) });
fs.writeSync(1, out.map(o => JSON.stringify(o)).join('\n') + '\n');
