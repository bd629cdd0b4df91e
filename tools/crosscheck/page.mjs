// The pages of runs, driven in headless Chromium and held to layout.json; a line for every problem.
// node page.mjs [--faults] DIR ...    each DIR as the layout command writes it; --faults: damaged copies of the first must be found out.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { createRequire } from 'node:module';
import { execFileSync } from 'node:child_process';
import { chromium } from 'playwright-core';

const AXE = fs.readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const VIEWS = [['light', 1400], ['dark', 1400], ['light', 390], ['dark', 390]];
const WALLS = 4, MANY = 200;
const wantsFaults = process.argv[2] === '--faults';
const folders = process.argv.slice(wantsFaults ? 3 : 2);
// How long anything may take: a busy machine is slow, it is not wrong.
const PATIENCE = 120_000;
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', timeout: PATIENCE, args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
});
let problems = [], inch = false;
const near = (a, b) => Math.abs(a - b) < (inch ? 25.4 / 32 + 0.3 : 0.06);
const shown = (page, table) => page.$$eval(`#${table} tbody tr`, rows => rows.filter(row => row.checkVisibility()).length);

for (const folder of folders) {
  problems = [];
  const layout = JSON.parse(fs.readFileSync(path.join(folder, 'layout.json'), 'utf8'));
  const files = [path.join(folder, 'report.html'), path.join(folder, 'coordination', 'findings.html')];
  const ready = [];
  for (const file of files) ready.push(await judge(file, layout).catch(error => problems.push(`${path.basename(file)}: ${error.message}`) && Infinity));
  for (const problem of problems) console.log(`PROBLEM ${path.basename(folder)}: ${problem}`);
  console.log(`${path.basename(folder)}: ready after ${ready.map(Math.round).join(' and ')} ms, ${files.map(file => Math.round(fs.statSync(file).size / 1024)).join(' and ')} KiB`);
}
if (wantsFaults) await faults(folders[0]);
await browser.close();

async function judge(file, layout) {
  const name = path.basename(file), say = text => problems.push(`${name}: ${text}`);
  let ready = 0;
  // Of a page of many walls one view is judged: the others are the same elements.
  for (const [scheme, width] of layout.walls.length > MANY ? VIEWS.slice(0, 1) : VIEWS) {
    const page = await open(file, scheme, width, say);
    ready = Math.max(ready, await page.evaluate(() => performance.getEntriesByName('ready')[0]?.startTime ?? Infinity));
    // How soon is printed, not judged: the machine may be busy.
    if (!Number.isFinite(ready)) say('never says that it is ready');
    await page.evaluate(AXE);
    const found = await page.evaluate(() => axe.run());
    for (const rule of found.violations) say(`axe, ${scheme} ${width}: ${rule.id}: ${rule.nodes.length}, first ${rule.nodes[0].html.slice(0, 120)}`);
    if (await page.evaluate(() => document.documentElement.scrollWidth > innerWidth + 1)) say(`scrolls sideways at ${width}`);
    await page.close();
  }
  const page = await open(file, 'light', 1400, say);
  await findingsHold(page, layout, say);
  await openingsHold(page, layout, say);
  await wallsHold(page, layout, say);
  await printed(page, layout, say);
  await page.close();
  await scriptless(file, layout, say);
  return ready;
}

async function open(file, scheme, width, say) {
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme: scheme });
  page.setDefaultTimeout(PATIENCE);
  page.on('console', message => say(`console ${message.type()}: ${message.text().slice(0, 200)}`));
  page.on('pageerror', error => say(`error: ${error.message}`));
  page.on('request', request => request.url() !== `file://${file}` && !request.url().startsWith(`file://${file}#`) && say(`request of ${request.url()}`));
  await page.goto(`file://${file}`);
  return page;
}

/** A key on what has the focus after it: what a handler does at once is done when this returns. */
async function press(page, element, key) {
  await element.evaluate(node => node.focus());
  await page.keyboard.press(key);
}

/** Waits for what an event brings later, such as a changed address; false where it never comes. */
function becomes(page, holds, argument) {
  return page.waitForFunction(holds, argument, { polling: 50 }).then(() => true, () => false);
}

/** What the page has put off to its next turn is done. */
function settled(page) {
  return page.evaluate(() => new Promise(done => setTimeout(done)));
}

function findingsOf(layout) {
  const of = wall => wall.status === 'coursed' ? wall.findings : wall.reason === 'not-selected' ? [] : [{ code: wall.reason }];
  return [...layout.findings, ...layout.walls.flatMap(of)];
}

async function findingsHold(page, layout, say) {
  const all = findingsOf(layout);
  if (await page.$('#findings-table') === null) return all.length && say(`no table for ${all.length} findings`);
  const expect = async (count, what) => { const seen = await shown(page, 'findings-table'); if (seen !== count) say(`${seen} findings shown ${what}, ${count} in layout.json`); };
  await expect(all.length, 'at first');
  const codes = [...new Set(all.map(finding => finding.code))];
  const filter = page.locator('form[data-table=findings-table]');
  if (codes.length > 1) {
    await filter.locator('[name=code]').selectOption(codes[0]);
    await expect(all.filter(finding => finding.code === codes[0]).length, `of code ${codes[0]}`);
  }
  await filter.getByRole('button', { name: 'Show all' }).click();
  await settled(page);
  await filter.locator('[name=search]').fill('no such words anywhere');
  await expect(0, 'for words that are nowhere');
  await filter.getByRole('button', { name: 'Show all' }).click();
  await settled(page);
  await expect(all.length, 'after the reset');
  // From a finding to its place and back.
  const link = page.locator('#findings-table [data-at]').first();
  if (await link.count() === 0) return;
  const at = await link.getAttribute('data-at');
  await press(page, link, 'Enter');
  if (!await becomes(page, () => document.activeElement.id === 'viewer')) say('Enter on a finding does not go to its wall');
  if (!await becomes(page, n => document.querySelectorAll(`#wall-findings [data-n=${n}].here`).length === 1, at)) say(`finding ${at} is not marked in its wall's list`);
  await page.locator(`#wall-findings [data-n=${at}] a`).click();
  if (!await becomes(page, n => location.hash === `#${n}` && document.getElementById(n).checkVisibility(), at)) say(`no way back to finding ${at}`);
}

/** The row of each opening that was moved along the wall tells how far and which way. */
async function openingsHold(page, layout, say) {
  const openings = layout.walls.flatMap(wall => wall.openings ?? []);
  // Not by innerText, which knows no cells of what is far off the screen.
  const rows = await page.$$eval('#openings-table tbody tr', rows => rows.map(row => [...row.cells].map(cell => {
    const copy = cell.cloneNode(true);
    for (const end of copy.querySelectorAll('br')) end.replaceWith('\n');
    return copy.textContent;
  }).join('\t')));
  if (rows.length !== openings.length) say(`${rows.length} rows for ${openings.length} openings`);
  const count = sign => openings.filter(o => Math.abs(o.placed[0] - o.design[0] - o.placed[1] + o.design[1]) < 1e-6 && Math.sign(Math.round((o.placed[0] - o.design[0]) * 1e6)) === sign)
    .map(o => Math.abs(o.placed[0] - o.design[0]));
  for (const [sign, arrow] of [[1, '→'], [-1, '←']]) {
    const told = rows.flatMap(row => [...row.matchAll(new RegExp(`(?:^|\\t|\\n|: )${arrow} ([^\\n,]*?)(?: mm|")`, 'g'))].map(match => millimetres(match[1] + (row.includes('"') ? '"' : ''))));
    const wanted = count(sign).sort((a, b) => a - b);
    told.sort((a, b) => a - b);
    if (told.length !== wanted.length || told.some((way, i) => !near(way, wanted[i]))) say(`shifts ${arrow} told ${told}, in layout.json ${wanted}`);
  }
}

/** 1250.5, or 8'-0 3/8", in mm. */
function millimetres(text) {
  inch = text.includes('"');
  if (!inch) return Number(text.replace(' mm', ''));
  const [, feet = 0, whole = 0, over = 0, under = 1] = /^(?:(\d+)'-)?(?:(\d+)(?![\d/]))?\s*(?:(\d+)\/(\d+))?"$/.exec(text.trim()) ?? [NaN, NaN];
  return (Number(feet) * 12 + Number(whole) + Number(over) / Number(under)) * 25.4;
}

async function wallsHold(page, layout, say) {
  const coursed = layout.walls.filter(wall => wall.status === 'coursed');
  for (const wall of coursed.slice(0, WALLS)) {
    const number = layout.walls.indexOf(wall) + 1, link = page.locator(`.plan a.wall[href="#w${number}"]`);
    const storey = page.locator('#storey');
    if (await storey.count()) await storey.selectOption(await page.locator(`.plan:has(a.wall[href="#w${number}"])`).getAttribute('id'));
    await press(page, link, 'Enter');
    if (!await becomes(page, n => document.getElementById('wall-name').textContent.startsWith(`W${String(n).padStart(3, '0')} `), number)) say(`Enter on the plan does not show wall ${number}`);
    if (wall.name && !(await page.locator('#wall-name').textContent()).includes(wall.name.trim().replace(/\s+/g, ' '))) say(`wall ${number} is not called ${wall.name}`);
    await elevationHolds(page, wall, number, say);
  }
  const first = page.locator('.plan:not(.away) a.wall path.body').first();
  if (await first.count()) {
    const href = await first.locator('..').getAttribute('href');
    await first.click();
    if (!await becomes(page, to => location.hash === to, href)) say(`a click on the plan does not go to ${href}`);
  }
}

/** What can be stepped through with the keyboard is what layout.json has, where it has it. */
async function elevationHolds(page, wall, number, say) {
  const labels = await page.$$eval('#pieces [role=option]', options => options.map(option => option.getAttribute('aria-label')));
  const pieces = wall.courses.flatMap(course => course.pieces.map(piece => ({ ...piece, course: course.n })));
  const others = wall.lintels.length + wall.openings.length + wall.bondBeams.length + wall.movementJoints.length + wall.cores.length;
  if (labels.length !== pieces.length + others) say(`wall ${number}: ${labels.length} things to point at, ${pieces.length} pieces and ${others} others in layout.json`);
  for (const [i, piece] of pieces.entries()) {
    const [, width, course, from, to] = /: ([^;]+?) x [^;]+; course (\d+)[^;]*; (.+) to (.+) from A/.exec(labels[i] ?? '') ?? [];
    const holds = Number(course) === piece.course && near(millimetres(width ?? ''), piece.to - piece.from) && near(millimetres(from), piece.from) && near(millimetres(to), piece.to)
      && labels[i].startsWith('Piece') === (piece.cut !== 'none' && !piece.trough);
    if (!holds) { say(`wall ${number}: piece ${piece.id} (${piece.from} to ${piece.to}) is called ${labels[i]}`); break; }
  }
  const told = async () => (await page.locator('#readout').textContent()).trim();
  await press(page, page.locator('#pieces'), 'Home');
  await page.keyboard.press('ArrowRight');
  if (labels.length > 1 && await told() !== labels[1].trim()) say(`wall ${number}: the arrow key does not tell of the second piece, but ${await told()}`);
  // From elsewhere: a pointer that already rests there tells nothing new.
  await page.mouse.move(1, 1);
  await page.locator('#pieces [role=option]').first().hover({ force: true });
  if (await told() !== labels[0].trim()) say(`wall ${number}: pointing at the first piece does not tell of it, but ${await told()}`);
}

async function printed(page, layout, say) {
  const file = path.join(os.tmpdir(), `page-${process.pid}.pdf`);
  await page.pdf({ path: file, format: 'A4' });
  const text = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 28 }).replace(/\s+/g, '');
  fs.rmSync(file);
  for (const word of [layout.model.sha256, 'licensedengineer', 'W' + String(layout.walls.length).padStart(3, '0')]) if (!text.includes(word)) say(`the print lacks ${word}`);
}

async function scriptless(file, layout, say) {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`file://${file}`);
  const rows = await page.locator('#findings-table tbody tr').count(), all = findingsOf(layout).length;
  if (rows !== all) say(`without script ${rows} findings, ${all} in layout.json`);
  if (await page.locator('#viewer').isVisible() || await page.locator('form.filter').first().isVisible()) say('without script there are controls that do nothing');
  if (layout.totals.coursed && !await page.locator('#walls-table').isVisible()) say('without script no quantities');
  await context.close();
}

/** Each damage must give a problem: a check that finds none of them checks nothing. */
async function faults(folder) {
  const layout = JSON.parse(fs.readFileSync(path.join(folder, 'layout.json'), 'utf8'));
  const html = fs.readFileSync(path.join(folder, 'report.html'), 'utf8');
  const damages = {
    'a picture from elsewhere': text => text.replace('<main>', '<main><img alt="" src="http://127.0.0.1:9/x.png">'),
    'another script': text => text.replace('<main>', '<main><script>1</script>'),
    'pale links': text => text.replaceAll(/--link: #\w+/g, '--link: #bbb'),
    'a piece elsewhere': text => text.replace(/("courses":\[\[1,"levelling",\d+,\d+,\d+,)(\d+)/, (_, before, at) => before + (Number(at) + 300)),
    'a finding less': text => text.replace(/<tr id="f1"[^]*?<\/tr>/, ''),
    'a shift the other way': text => text.replace(/(<b class="way">)([→←])/, (_, before, arrow) => before + (arrow === '→' ? '←' : '→')),
    'an arrow key that does nothing': text => text.replaceAll('ArrowRight: () =>', 'Other: () =>'),
  };
  const copy = path.join(os.tmpdir(), `page-${process.pid}.html`);
  for (const [name, damage] of Object.entries(damages)) {
    const damaged = damage(html);
    problems = [];
    if (damaged !== html) {
      // The policy names the hash of the script.
      const script = /<script type="module">([^]*?)<\/script>/.exec(damaged)[1];
      const hash = (await import('node:crypto')).createHash('sha256').update(script).digest('base64');
      fs.writeFileSync(copy, damaged.replace(/'sha256-[^']+'/, `'sha256-${hash}'`));
      // A browser that is gone has found out nothing.
      await judge(copy, layout).catch(error => { if (!browser.isConnected()) throw error; problems.push(error.message); });
    }
    console.log(problems.length ? `found out: ${name} (${problems[0].slice(0, 90)})` : `PROBLEM the check of pages does not notice ${name}`);
  }
  fs.rmSync(copy, { force: true });
}
