// Draws a wall's elevation from its data: x along the wall, y down from its base, both in ticks.
const SVG = 'http://www.w3.org/2000/svg';

function node(name, attributes, ...inside) {
  const made = name in HTML_NAMES ? document.createElement(name) : document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes ?? {})) made.setAttribute(key, value);
  made.append(...inside);
  return made;
}

const HTML_NAMES = { a: 0, li: 0, span: 0 };

const rectPath = ([left, right, bottom, top]) => `M${left} ${-bottom}H${right}V${-top}H${left}Z`;

const pointsPath = (flat, s = 0, z = 0) => {
  let path = '';
  for (let i = 0; i < flat.length; i += 2) path += `${i ? 'L' : 'M'}${flat[i] + s} ${-(flat[i + 1] + z)}`;
  return path + 'Z';
};

/** Everything of a wall that can be pointed at: what it is called, where it lies, how it is drawn. */
function thingsOf(wall) {
  const things = [];
  const add = (type, label, box, path, id, mark) => things.push({ type, label, box, path: path ?? rectPath(box), id, mark });
  for (const [n, courseKind, bottom, , ...pieces] of wall.courses) {
    for (let i = 0; i < pieces.length;) {
      const [kind, s, z] = Array.isArray(pieces[i]) ? pieces[i++] : [pieces[i++], pieces[i++], bottom];
      const [mark, cut, width, height, outline] = wall.kinds[kind];
      const called = WORDS.kinds[cut] ?? WORDS.piece(mark, cut.split('+').map(word => WORDS.cuts[word]).join(' and '));
      add(WORDS.kinds[cut] ? cut : 'cut', `${called}: ${sizeText(width, height)}; ${WORDS.course(n, courseKind)}; ${WORDS.fromTo(lengthText(s), withUnit(s + width))}`,
        [s, s + width, z, z + height], outline && pointsPath(outline, s, z), undefined, mark);
    }
  }
  for (const [id, product, kind, from, to, bottom, top, left, right] of wall.lintels) {
    add(kind === 'formed' ? 'lintel formed' : 'lintel', `${WORDS.lintel(id, product, sizeText(to - from, top - bottom))}; ${WORDS.bearings(lengthText(left), withUnit(right))}; ${WORDS.fromTo(lengthText(from), withUnit(to))}`,
      [from, to, bottom, top], undefined, id, id);
  }
  for (const [id, bars, kind, box, outline] of wall.beams) {
    add(`beam ${kind}`, `${WORDS.beam(id, bars, kind)}; ${WORDS.fromTo(lengthText(box[0]), withUnit(box[1]))}`, box, outline && pointsPath(outline), id, id);
  }
  for (const [tag, name, kind, interrupts, design, placed] of wall.openings) {
    const along = placed[0] + placed[1] - design[0] - design[1];
    const moved = WORDS.moved(wayText(along / 2, WORDS.right, WORDS.left), wayText(placed[2] - design[2], WORDS.up, WORDS.down));
    add(interrupts ? 'opening' : 'recess', `${WORDS.opening(tag, name, kind)}: ${WORDS.placed(sizeText(placed[1] - placed[0], placed[3] - placed[2]))}; ${WORDS.fromTo(lengthText(placed[0]), withUnit(placed[1]))}${moved === WORDS.moved('', '') ? '' : `; ${moved}`}`,
      placed, undefined, tag, tag);
  }
  for (const [why, left, right, bottom, top] of wall.joints) {
    add('joint', `${WORDS.joint(why, withUnit(right - left))}; ${WORDS.at(withUnit((left + right) / 2))}`, [left, right, bottom, top]);
  }
  for (const [id, bar, why, at, bottom, top, minus, plus] of wall.bars) {
    add('bar', `${WORDS.bar(id, bar, why)}; ${WORDS.at(withUnit(at))}; ${WORDS.play(lengthText(minus), withUnit(plus))}`, [at, at, bottom, top], `M${at} ${-bottom}V${-top}`, id);
  }
  return things;
}

const PAD = { side: 34, top: 30, bottom: 30 };

/** The elevation as an SVG element, so wide on the screen; and its things, each with its element. */
function drawElevation(wall, width) {
  const [left, right, bottom, top] = wall.box;
  const u = (right - left) / Math.max(width - 2 * PAD.side, 100);
  const frame = [left - PAD.side * u, -top - PAD.top * u, right - left + 2 * PAD.side * u, top - bottom + (PAD.top + PAD.bottom) * u];
  const svg = node('svg', { viewBox: frame.map(Math.round).join(' '), width, height: Math.round(frame[3] / u), style: `--u:${u}px`, role: 'group', 'aria-label': wall.name });
  const things = thingsOf(wall);
  const list = node('g', { role: 'listbox', tabindex: 0, 'aria-label': WORDS.elevation(wall.name), id: 'pieces' });
  things.forEach((thing, i) => {
    thing.element = node('path', { d: thing.path, class: thing.type, role: 'option', id: `x${i}`, 'aria-label': thing.label, 'aria-selected': false });
    list.append(thing.element);
  });
  svg.append(hatches(u), edge(wall, u), list, decoration(wall, things, u), markers(wall, u));
  return { svg, things, u };
}

function hatches(u, prefix = '') {
  const pattern = (id, size, path) => node('pattern', { id: prefix + id, width: size, height: size, patternUnits: 'userSpaceOnUse', patternTransform: `scale(${u})` },
    node('rect', { width: size, height: size, class: 'ground' }), node('path', { d: path }));
  return node('defs', {},
    pattern('cut-hatch', 7, 'M-1 8L8 -1M-1 1L1 -1M6 8L8 6'),
    pattern('lintel-hatch', 6, 'M0 3H6M3 0V6'),
    pattern('trough-hatch', 8, 'M0 4H5'));
}

function edge(wall, u) {
  const [start, pitch] = wall.module, [left, right, bottom, top] = wall.box;
  let ticks = '';
  for (let s = start + Math.ceil((left - start) / pitch) * pitch; pitch > 0 && s <= right; s += pitch) ticks += `M${s} ${-top - 3 * u}v${-4 * u}M${s} ${-bottom + 3 * u}v${4 * u}`;
  return node('g', { 'aria-hidden': 'true' }, node('path', { class: 'tick', d: ticks }), node('path', { class: 'outline', d: pointsPath(wall.outline) }));
}

/** What can't be pointed at: texts, designed jambs, arrows of shifts. */
function decoration(wall, things, u) {
  const group = node('g', { 'aria-hidden': 'true', class: 'decoration' });
  const write = (s, z, text, type = '') => group.append(node('text', { x: s, y: -z, class: type }, text));
  const [left, right, bottom] = wall.box;
  write(left - 16 * u, bottom - 14 * u, 'A', 'end');
  write(right + 16 * u, bottom - 14 * u, 'B', 'end');
  for (const [n, , from, to] of wall.courses) if ((to - from) / u > 9) write(left - 14 * u, (from + to) / 2, n, 'course');
  for (const { type, box, mark } of things) {
    const [from, to, low, high] = box, isOpening = type === 'opening' || type === 'recess';
    if (mark && !isOpening && (to - from) / u > 9 * mark.length + 3 && (high - low) / u > 10) write((from + to) / 2, (low + high) / 2, mark, 'mark');
  }
  for (const [tag, , , , design, placed, outline] of wall.openings) {
    if (outline) group.append(node('path', { class: 'shape', d: pointsPath(outline) }));
    const middle = (placed[2] + placed[3]) / 2, centre = (placed[0] + placed[1]) / 2;
    write(centre, middle + 9 * u, tag, 'tag');
    const size = `${lengthText(placed[1] - placed[0])} x ${lengthText(placed[3] - placed[2])}`;
    if ((placed[1] - placed[0]) / u > 6.5 * size.length) write(centre, middle - 8 * u, size);
    if (design.some((edge, i) => edge !== placed[i])) shift(group, write, design, placed, u);
  }
  let last = -Infinity;
  for (const [id, , , at] of wall.bars) {
    if ((at - last) / u < 8 * id.length + 6) continue;
    write(at, bottom - 14 * u, id, 'foot');
    last = at;
  }
  for (const [, , at, z] of wall.embeds) group.append(node('circle', { class: 'embed', cx: at, cy: -z, r: 5 * u }));
  return group;
}

/** Designed place dashed, and an arrow with the distance along the foot of the opening. */
function shift(group, write, design, placed, u) {
  group.append(node('path', { class: 'design', d: rectPath(design) }));
  const along = (placed[0] + placed[1] - design[0] - design[1]) / 2;
  if (!along) return;
  const way = Math.sign(along) * u, words = withUnit(Math.abs(along));
  // Arrow and distance on one line, the arrow on the side it points to.
  const z = (placed[2] + placed[3]) / 2 - 25 * u, middle = (placed[0] + placed[1]) / 2, half = 16 * way, text = Math.sign(along) * 4 * u * words.length;
  const x = middle + text;
  group.append(node('path', { class: 'arrow', d: `M${x - half} ${-z}h${2 * half}m${-7 * way} ${-5 * u}l${7 * way} ${5 * u}l${-7 * way} ${5 * u}` }));
  if ((placed[1] - placed[0]) / u > 60) write(middle - half * 1.2, z, words, 'way');
}

/** A finding's number in a flag at its place, linked to its row; those at one place side by side. */
function markers(wall, u) {
  const taken = new Map();
  const group = node('g', { class: 'findings' });
  for (const [n, severity, s, z] of wall.findings) {
    if (s === undefined) continue;
    const key = `${Math.round(s / (20 * u))} ${Math.round(z / (20 * u))}`, before = taken.get(key) ?? 0;
    taken.set(key, before + 1);
    const link = document.createElementNS(SVG, 'a');
    link.setAttribute('href', `#f${n}`);
    link.setAttribute('class', `flag ${severity}`);
    link.setAttribute('id', `flag${n}`);
    link.setAttribute('aria-label', WORDS.finding(n));
    link.setAttribute('transform', `translate(${s + before * 26 * u} ${-z}) scale(${u})`);
    const half = 5 + 3.5 * String(n).length;
    link.append(node('path', { d: severity === 'note' ? `M${-half} -9h${2 * half}v18h${-2 * half}z` : `M${-half} -9h${2 * half}l5 9l-5 9h${-2 * half}l-5 -9z` }), node('text', {}, String(n)));
    group.append(link);
  }
  return group;
}
