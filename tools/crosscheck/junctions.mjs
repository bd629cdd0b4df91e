// node junctions.mjs LAYOUT.json: whether walls share out the places where they meet. A JSON line for each junction and fault:
//   { junction, kind, walls, fault: "overlap" | "hole", named, courses, levels, size, at: [x, y, z] }
// overlap: pieces of two walls stand in the same place, size mm deep at most; hole: size points of the sampling grid lie in the
// masonry layers and in no piece, joint, lintel or opening; named: they are strips under 100 mm high or wide, or lie between a head
// and the course above it, and a finding outline-not-filled of one of the walls says so.
// at: the worst place, model axes, mm. The last line counts: { junctions, curved, levels, points };
// curved: junctions of walls that are curved in plan, which are not sampled.
import fs from 'node:fs';

const layout = JSON.parse(fs.readFileSync(process.argv[2], 'utf8'));
const { headJointMax, bedJoint, bedMax } = layout.catalog;
const ALONG = 10, ACROSS = 7;   // grid: mm along a run, points across a layer
const RIM = 1;                  // mm: nearer than this to a layer's edge nothing is sampled
const MARGIN = 100;             // mm around the place where two layers cross
const STRIP = 100;              // mm: lower and shorter than this no piece is cut
const PARALLEL = 0.1;           // sine, below which two runs are in line

const walls = new Map(layout.walls.filter(wall => wall.status === 'coursed' && !wall.frame.curve).map(wall => [wall.globalId, prepared(wall)]));

function prepared(wall) {
  const { origin, direction, normal, length, thickness } = wall.frame;
  const [first] = wall.courses;
  const stones = wall.courses.flatMap(course => {
    const [from, to] = [Math.min(...course.spans.map(span => span[0])), Math.max(...course.spans.map(span => span[1]))];
    const isOpen = kind => kind === 'free' || kind === 'wall';
    return course.pieces.map(p => ({ ...p, course: course.n, down: course === first ? bedMax : bedJoint,
      atStart: p.from === from && isOpen(course.edges[0][0]), atEnd: p.to === to && isOpen(course.edges.at(-1)[1]) }));
  });
  const voids = wall.openings.filter(o => o.kind !== 'recess' && o.kind !== 'drilled')
    .map(({ placed: [from, to, bottom, top] }) => ({ from, to, bottom, top }));
  const joints = wall.movementJoints.map(m => ({ from: m.at - m.width / 2, to: m.at + m.width / 2, bottom: m.bottom, top: m.top }));
  return { id: wall.globalId, origin, direction, normal, length, thickness, outline: wall.outline, ends: wall.ends, stones, levels: new Map(),
    fills: [...voids, ...joints, ...wall.lintels, ...wall.bondBeams], heads: voids.map(v => ({ ...v, bottom: v.top, top: courseOver(wall, v.top) })),
    unfilled: wall.findings.some(finding => finding.code === 'outline-not-filled') };
}

// The top of the course that a head lies in.
function courseOver(wall, head) {
  return Math.max(head, ...wall.courses.filter(course => course.bottom < head).map(course => course.top));
}

const inFrame = (wall, [x, y]) => {
  const [dx, dy] = [x - wall.origin[0], y - wall.origin[1]];
  return [dx * wall.direction[0] + dy * wall.direction[1], -(dx * wall.normal[0] + dy * wall.normal[1])];
};
const inPlan = (wall, s, t) => [0, 1].map(k => wall.origin[k] + wall.direction[k] * s - wall.normal[k] * t);

// An end that is not square is cut on the slant: slant is the end's place on the right face less that on the left one, and runs and
// pieces reach as far as the longer face. How far short of it the end stands at an offset t from the left face.
const shortAtStart = (wall, t) => { const slant = wall.ends.start.slant ?? 0; return slant * t / wall.thickness - Math.min(slant, 0); };
const shortAtEnd = (wall, t) => { const slant = wall.ends.end.slant ?? 0; return Math.max(slant, 0) - slant * t / wall.thickness; };

// Whether a place on the run belongs to an end: before or behind where the neighbours there stand.
function reachesStart(wall, s) {
  wall.startReach ??= Math.max(0, ...neighbours(wall, wall.ends.start).map(other => crossing(wall, other)[1])) + headJointMax + RIM;
  return s <= wall.startReach;
}
function reachesEnd(wall, s) {
  wall.endReach ??= Math.min(wall.length, ...neighbours(wall, wall.ends.end).map(other => crossing(wall, other)[0])) - headJointMax - RIM;
  return s >= wall.endReach;
}
const neighbours = (wall, end) => end.slant ? end.with.map(id => walls.get(id)).filter(Boolean) : [];

const range = (wall, from, to, atStart, atEnd) => ({ from, to, atStart: atStart && reachesStart(wall, from), atEnd: atEnd && reachesEnd(wall, to) });
const covers = (wall, r, s, t, more) => s > r.from + (r.atStart ? shortAtStart(wall, t) : 0) - more && s < r.to - (r.atEnd ? shortAtEnd(wall, t) : 0) + more;

// [from, to] of a polygon along s, at a height.
function widths(points, z) {
  const cuts = points.flatMap(([x0, y0], i) => {
    const [x1, y1] = points[(i + 1) % points.length];
    return Math.min(y0, y1) <= z && z < Math.max(y0, y1) ? [x0 + (z - y0) / (y1 - y0) * (x1 - x0)] : [];
  }).sort((a, b) => a - b);
  return cuts.flatMap((from, i) => i % 2 === 0 && i + 1 < cuts.length ? [[from, cuts[i + 1]]] : []);
}

// A wall at a height in model axes: where its outline is, where its pieces stand, and all that is not left open.
function at(wall, height) {
  if (!wall.levels.has(height)) {
    const z = height - wall.origin[2], stones = [], closed = [];
    for (const p of wall.stones) {
      if (z <= p.bottom - p.down || z >= p.top + bedJoint) continue;
      for (const [from, to] of p.outline ? widths(p.outline, Math.min(Math.max(z, p.bottom + 0.001), p.top - 0.001)) : [[p.from, p.to]]) {
        const stone = { ...range(wall, from, to, p.atStart, p.atEnd), course: p.course };
        closed.push(stone);
        if (z > p.bottom && z < p.top) stones.push(stone);
      }
    }
    for (const f of wall.fills) if (z > f.bottom - bedJoint && z < f.top + bedJoint) closed.push(range(wall, f.from, f.to, false, false));
    wall.levels.set(height, { outline: widths(wall.outline, z).map(([from, to]) => range(wall, from, to, true, true)), stones, closed });
  }
  return wall.levels.get(height);
}

const isClosed = (wall, height, point) => {
  const [s, t] = inFrame(wall, point);
  return t > -RIM && t < wall.thickness + RIM && at(wall, height).closed.some(r => covers(wall, r, s, t, headJointMax));
};

// How deep two pieces of two walls stand in each other, mm (separating axes; negative where they are apart).
function depth(a, p, b, q) {
  const quads = [plan(a, p), plan(b, q)];
  const axes = quads.flatMap(quad => quad.map(([x, y], i) => {
    const [u, v] = quad[(i + 1) % 4], size = Math.hypot(u - x, v - y);
    return size > 0 ? [(v - y) / size, (x - u) / size] : [1, 0];
  }));
  return Math.min(...axes.map(axis => {
    const [u, v] = quads.map(points => points.map(([x, y]) => x * axis[0] + y * axis[1]));
    return Math.min(Math.max(...u), Math.max(...v)) - Math.max(Math.min(...u), Math.min(...v));
  }));
}

function plan(wall, { from, to, atStart, atEnd }) {
  const edges = t => [from + (atStart ? shortAtStart(wall, t) : 0), to - (atEnd ? shortAtEnd(wall, t) : 0)];
  const faces = [0, wall.thickness], room = faces.map(t => edges(t)[1] - edges(t)[0]);
  // A piece shorter than its slant ends in a point between the faces, where its ends meet.
  const point = wall.thickness * room[0] / (room[0] - room[1]);
  const [left, right] = faces.map((t, i) => room[i] < 0 && room[1 - i] > 0 ? point : t);
  return [[edges(left)[0], left], [edges(left)[1], left], [edges(right)[1], right], [edges(right)[0], right]].map(([s, t]) => inPlan(wall, s, t));
}

// Where wall b's layer crosses wall a's line: [from, to] along a's run; of runs in line the end of a that is nearer to b.
function crossing(a, b) {
  const sine = a.direction[0] * b.direction[1] - a.direction[1] * b.direction[0];
  if (Math.abs(sine) < PARALLEL) {
    const middle = inFrame(a, inPlan(b, b.length / 2, b.thickness / 2))[0];
    return middle > a.length / 2 ? [a.length - MARGIN, a.length + MARGIN] : [-MARGIN, MARGIN];
  }
  const places = [0, b.thickness].flatMap(across => [0, a.thickness].map(t => {
    // The s at which the point (s, t) of a has that offset across b.
    const offset = s => inFrame(b, inPlan(a, s, t))[1];
    return (across - offset(0)) / (offset(1) - offset(0));
  }));
  return [Math.min(...places), Math.max(...places)];
}

// Middles and depths of the bands between all edges near a place, those of joints left out.
function levelsOf(members, zones) {
  const edges = new Set();
  members.forEach((wall, i) => {
    const [from, to] = zones[i];
    for (const item of [...wall.stones, ...wall.fills]) {
      if (item.to < from || item.from > to) continue;
      for (const z of [item.bottom, item.top, ...(item.outline ?? []).map(p => p[1])]) edges.add(Math.round((z + wall.origin[2]) * 100) / 100);
    }
    for (const [, z] of wall.outline) edges.add(Math.round((z + wall.origin[2]) * 100) / 100);
  });
  const sorted = [...edges].sort((a, b) => a - b);
  return sorted.slice(1).flatMap((z, i) => z - sorted[i] > Math.max(bedJoint, headJointMax) + 0.5 ? [{ height: (z + sorted[i]) / 2, depth: z - sorted[i] }] : []);
}

let levelCount = 0, pointCount = 0;

function faultsOf(junction) {
  const members = junction.walls.map(id => walls.get(id)).filter(Boolean);
  if (members.length < 2) return [];
  const zones = members.map(a => {
    const all = members.filter(b => b !== a).map(b => crossing(a, b));
    return [Math.min(...all.map(c => c[0])) - MARGIN, Math.max(...all.map(c => c[1])) + MARGIN];
  });
  const levels = levelsOf(members, zones);
  levelCount += levels.length;
  return [...overlaps(members, zones, levels), ...holes(members, zones, levels, junction.kind)];
}

function overlaps(members, zones, levels) {
  const found = [];
  for (const { height } of levels) {
    members.forEach((a, i) => members.slice(i + 1).forEach((b, k) => {
      const j = i + 1 + k, near = (wall, [low, high]) => at(wall, height).stones.filter(p => p.to > low && p.from < high);
      for (const p of near(a, zones[i])) for (const q of near(b, zones[j])) {
        const size = depth(a, p, b, q);
        if (size > headJointMax + 0.01) {
          const middle = (Math.max(p.from, zones[i][0]) + Math.min(p.to, zones[i][1])) / 2;
          found.push({ fault: 'overlap', height, size, courses: [p.course, q.course], place: inPlan(a, middle, a.thickness / 2), walls: [a, b] });
        }
      }
    }));
  }
  return found;
}

function holes(members, zones, levels, kind) {
  const found = [];
  const near = [...walls.values()].filter(wall => members.some((a, i) => touches(wall, a, zones[i])));
  for (const { height, depth } of levels) {
    const open = members.flatMap((a, i) => gridOf(a, zones[i], height, members, kind)).filter(point => {
      pointCount++;
      return !near.some(wall => isClosed(wall, height, point));
    });
    if (open.length) {
      const courses = members.map(wall => wall.stones.find(p => height - wall.origin[2] > p.bottom - p.down && height - wall.origin[2] < p.top + bedJoint)?.course ?? null);
      const named = depth < STRIP ? members.some(wall => wall.unfilled) : open.every(point => near.some(wall => isLeftOpen(wall, height, point)));
      found.push({ fault: 'hole', height, named, size: open.length, courses, place: open[open.length >> 1], walls: members });
    }
  }
  return found;
}

function touches(wall, a, [from, to]) {
  const corners = [[from, 0], [to, 0], [from, a.thickness], [to, a.thickness]].map(([s, t]) => inFrame(wall, inPlan(a, s, t)));
  const [s, t] = [0, 1].map(k => corners.map(c => c[k]));
  const reach = MARGIN + headJointMax;
  return Math.max(...s) > -reach && Math.min(...s) < wall.length + reach && Math.max(...t) > 0 && Math.min(...t) < wall.thickness;
}

// Points of a wall's own layer in the zone, and of the place beyond its end that belongs to the junction.
function gridOf(wall, [low, high], height, members, kind) {
  const { outline } = at(wall, height), points = [];
  if (outline.length === 0) return points;
  const others = members.filter(other => other !== wall && at(other, height).outline.length);
  for (let s = low; s <= high; s += ALONG) {
    for (let k = 0; k < ACROSS; k++) {
      const t = RIM + (wall.thickness - 2 * RIM) * k / (ACROSS - 1), point = inPlan(wall, s, t);
      if (outline.some(r => covers(wall, r, s, t, -RIM)) || others.some(other => kind === 'corner' ? isCorner(wall, s, other, point, height)
        : kind === 'tee' && isWedge(wall, s, other, point, height))) points.push(point);
    }
  }
  return points;
}

const nearly = (x, ranges, reach) => ranges.some(({ from, to }) => x > from - reach && x < to + reach);

// At a corner all of the place where the two layers cross, where both walls have that height.
function isCorner(wall, s, other, point, height) {
  const [u, t] = inFrame(other, point), reach = Math.max(wall.thickness, other.thickness);
  return t > RIM && t < other.thickness - RIM && nearly(u, at(other, height).outline, reach) && nearly(s, at(wall, height).outline, reach);
}

// At a tee what a skew end leaves between the abutting wall and its host's face.
function isWedge(wall, s, host, point, height) {
  const end = s < 0 ? wall.ends.start : s > wall.length ? wall.ends.end : null;
  if (end?.kind !== 'tee' || !end.with.includes(host.id)) return false;
  const [u, t] = inFrame(host, point), comesFrom = inFrame(host, inPlan(wall, wall.length / 2, wall.thickness / 2))[1];
  const before = comesFrom < host.thickness / 2 ? t < -RIM : t > host.thickness + RIM;
  return before && nearly(u, at(host, height).outline, 0) && nearly(s, at(wall, height).outline, wall.thickness);
}

// A place that a wall leaves open and tells of: over a head, where nothing carries a piece, or on a strip too short for a piece.
function isLeftOpen(wall, height, point) {
  const [s, t] = inFrame(wall, point);
  if (!wall.unfilled || t < -RIM || t > wall.thickness + RIM) return false;
  const z = height - wall.origin[2], { outline, closed } = at(wall, height);
  if (wall.heads.some(h => s > h.from && s < h.to && z > h.bottom && z < h.top)) return true;
  return outline.some(r => covers(wall, r, s, t, 0)
    && Math.min(r.to, ...closed.map(c => c.from).filter(from => from > s)) - Math.max(r.from, ...closed.map(c => c.to).filter(to => to < s)) < STRIP);
}

const out = [];
for (const junction of layout.junctions) {
  const faults = faultsOf(junction);
  for (const fault of ['overlap', 'hole']) {
    const all = faults.filter(f => f.fault === fault);
    if (all.length === 0) continue;
    const worst = all.reduce((a, b) => b.size > a.size ? b : a);
    out.push({ junction: junction.id, kind: junction.kind, walls: junction.walls, fault, named: fault === 'hole' && all.every(f => f.named),
      courses: worst.courses, levels: all.length, size: Math.round(worst.size * 10) / 10, at: [...worst.place, worst.height].map(v => Math.round(v * 10) / 10) });
  }
}
const curved = new Set(layout.walls.filter(wall => wall.frame?.curve).map(wall => wall.globalId));
out.push({ junctions: layout.junctions.length, curved: layout.junctions.filter(j => j.walls.some(id => curved.has(id))).length, levels: levelCount, points: pointCount });
fs.writeSync(1, out.map(line => JSON.stringify(line)).join('\n') + '\n');
