// node dxf_counts.cjs SHEET.dxf ...: what two parsers read, a JSON line a file:
//   {file, parser: {entity type: count}, dxf: {entities, blocks}} ; a parser that fails is an error of this program.
const fs = require('fs');
const DxfParser = require('dxf-parser');
const { Helper } = require('dxf');

for (const file of process.argv.slice(2)) {
  const text = fs.readFileSync(file, 'utf8');
  const parser = {};
  for (const e of new (DxfParser.DxfParser ?? DxfParser.default ?? DxfParser)().parseSync(text).entities) {
    parser[e.type] = (parser[e.type] ?? 0) + 1;
  }
  const helper = new Helper(text);
  const dxf = { entities: helper.parsed.entities.length, blocks: helper.parsed.blocks.length, svg: helper.toSVG().length };
  console.log(JSON.stringify({ file, parser, dxf }));
}
