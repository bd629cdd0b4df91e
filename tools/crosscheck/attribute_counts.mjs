// node attribute_counts.mjs MODEL.ifc [ORIGINAL.ifc]: a line for each kind of instance whose number of attributes is not what
// web-ifc's copy of the schema has. With an original, only instances that it does not hold are looked at.
import fs from 'node:fs';
import { IfcAPI, LogLevel } from 'web-ifc';

// Their derived attributes (*) are not given out raw.
const derived = ['IfcSIUnit', 'IfcGeometricRepresentationSubContext'];

const api = new IfcAPI();
await api.Init();
api.SetLogLevel(LogLevel.LOG_LEVEL_OFF);
const [model, original] = process.argv.slice(2).map(file => api.OpenModel(new Uint8Array(fs.readFileSync(file))));
const numbers = m => { const lines = api.GetAllLines(m); return Array.from({ length: lines.size() }, (_, i) => lines.get(i)); };
const old = new Set(original === undefined ? [] : numbers(original));
const wrong = new Map();
for (const id of numbers(model)) {
  if (old.has(id)) continue;
  const raw = api.GetRawLineData(model, id), name = api.GetNameFromTypeCode(raw.type);
  if (derived.includes(name)) continue;
  const wanted = Object.keys(api.GetLine(model, id)).filter(key => key !== 'expressID' && key !== 'type').length;
  if (raw.arguments.length !== wanted) wrong.set(name, `#${id} ${name} has ${raw.arguments.length} attributes, ${api.GetModelSchema(model)} wants ${wanted}`);
}
for (const text of wrong.values()) console.log(text);
