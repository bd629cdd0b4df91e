// node ids_facts.mjs MODEL.ifc: what IDS facets look at, as web-ifc reads it, a JSON line for each wall, opening, door and window:
//   type, guid, sets {set: {name: [data type, value in SI]}}, materials [names], partOf {relation: [types of wholes]}
import fs from 'node:fs';
import * as ifc from 'web-ifc';
import { open, plain, push } from './webifc.mjs';

const { line, all, typeOf } = await open(process.argv[2]);
const prefixes = { KILO: 1e3, CENTI: 1e-2, DECI: 1e-1, MILLI: 1e-3 }, powers = { LENGTHUNIT: 1, AREAUNIT: 2, VOLUMEUNIT: 3 };
function factor(unit) {
  if (!unit) return 1;
  if (unit.ConversionFactor) { const m = line(plain(unit.ConversionFactor)); return Number(plain(m.ValueComponent)) * factor(line(plain(m.UnitComponent))); }
  return (prefixes[plain(unit.Prefix)] ?? 1) ** (powers[plain(unit.UnitType)] ?? 1);
}
const units = {};
for (const id of all(ifc.IFCPROJECT)) for (const u of line(plain(line(id).UnitsInContext))?.Units ?? []) { const unit = line(plain(u)); if (unit?.UnitType) units[plain(unit.UnitType)] = factor(unit); }
const unitOf = { IFCLENGTHMEASURE: 'LENGTHUNIT', IFCAREAMEASURE: 'AREAUNIT', IFCVOLUMEMEASURE: 'VOLUMEUNIT' };
const si = (type, value, own) => unitOf[type] ? value * (own === null ? units[unitOf[type]] ?? 1 : factor(line(own))) : value;

const relate = (type, from, to) => { const map = new Map();
  for (const id of all(type)) { const r = line(id); for (const x of [r[from]].flat()) for (const y of [r[to]].flat()) push(map, plain(x), plain(y)); }
  return key => map.get(key) ?? []; };
const setsOf = relate(ifc.IFCRELDEFINESBYPROPERTIES, 'RelatedObjects', 'RelatingPropertyDefinition');
const typesOf = relate(ifc.IFCRELDEFINESBYTYPE, 'RelatedObjects', 'RelatingType');
const materialsOf = relate(ifc.IFCRELASSOCIATESMATERIAL, 'RelatedObjects', 'RelatingMaterial');
const storeyOf = relate(ifc.IFCRELCONTAINEDINSPATIALSTRUCTURE, 'RelatedElements', 'RelatingStructure');
const wholeOf = relate(ifc.IFCRELAGGREGATES, 'RelatedObjects', 'RelatingObject');
const hostOf = relate(ifc.IFCRELVOIDSELEMENT, 'RelatedOpeningElement', 'RelatingBuildingElement');
const openingOf = relate(ifc.IFCRELFILLSELEMENT, 'RelatedBuildingElement', 'RelatingOpeningElement');

function sets(id) {
  const found = {};
  for (const setId of [...setsOf(id), ...typesOf(id).flatMap(type => (line(type).HasPropertySets ?? []).map(plain))]) {
    const set = line(setId), own = found[plain(set.Name)] ??= {};
    for (const ref of set.HasProperties ?? []) { const p = line(plain(ref)), v = p.NominalValue;
      if (v) { const type = (v.name ?? v.constructor?.name ?? '').toUpperCase(); own[plain(p.Name)] ??= [type, si(type, plain(v), plain(p.Unit))]; } }
    for (const ref of set.Quantities ?? []) { const q = line(plain(ref)), kind = ['Length', 'Area', 'Volume', 'Count', 'Weight'].find(k => `${k}Value` in q);
      if (kind) { const type = kind === 'Weight' ? 'IFCMASSMEASURE' : `IFC${kind.toUpperCase()}MEASURE`; own[plain(q.Name)] ??= [type, si(type, plain(q[`${kind}Value`]), plain(q.Unit))]; } }
  }
  return found;
}

// Names of a material and of all that it is made of.
function names(id, depth = 0) {
  const m = line(id);
  if (!m || depth > 6) return [];
  return [m.Name, m.LayerSetName, m.Category].map(plain).filter(x => typeof x === 'string')
    .concat([m.ForLayerSet, m.Material, m.MaterialLayers, m.MaterialConstituents, m.Materials].flat().filter(Boolean).flatMap(ref => names(plain(ref), depth + 1)));
}
const upper = id => typeOf(id).toUpperCase();
const kinds = ['IFCWALL', 'IFCWALLSTANDARDCASE', 'IFCWALLELEMENTEDCASE', 'IFCOPENINGELEMENT', 'IFCOPENINGSTANDARDCASE', 'IFCDOOR', 'IFCDOORSTANDARDCASE', 'IFCWINDOW', 'IFCWINDOWSTANDARDCASE'];
const out = kinds.filter(kind => ifc[kind] !== undefined).flatMap(kind => all(ifc[kind])).map(id => ({
  type: upper(id), guid: plain(line(id).GlobalId), sets: sets(id),
  materials: [...materialsOf(id), ...typesOf(id).flatMap(materialsOf)].flatMap(m => names(m)),
  partOf: { IFCRELCONTAINEDINSPATIALSTRUCTURE: [...storeyOf(id), ...wholeOf(id).flatMap(storeyOf)].map(upper),
    'IFCRELVOIDSELEMENT IFCRELFILLSELEMENT': [...hostOf(id), ...openingOf(id).flatMap(hostOf)].map(upper) } }));
fs.writeSync(1, out.map(o => JSON.stringify(o)).join('\n') + '\n');
