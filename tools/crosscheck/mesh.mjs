// What a triangle mesh tells of a wall. A mesh is { origin: [x, y, z], triangles: [x, y, z of each corner, ...] }: mm, z up,
// the triangles relative to the origin, because in far-away coordinates a volume loses its digits.

export const EMPTY = { origin: [0, 0, 0], triangles: [] };

// All of one element: closed and volume (m3), box (mm, model axes), and the pair of faces that make it a wall.
export function measured(mesh) {
  const sides = sidesOf(mesh), { volume, closed } = volumeOf(mesh);
  if (sides.length === 0) return null;
  const { low, high } = boxOf(mesh.triangles);
  const shifted = p => p.map((v, k) => v + mesh.origin[k]);
  return { volume, closed, min: shifted(low), max: shifted(high), faces: facesOf(mesh, sides, volume * 1e9, closed) };
}

export function boxOf(xyz) {
  const low = [Infinity, Infinity, Infinity], high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < xyz.length; i++) {
    low[i % 3] = Math.min(low[i % 3], xyz[i]);
    high[i % 3] = Math.max(high[i % 3], xyz[i]);
  }
  return { low, high };
}

// By the divergence theorem; the area vectors of a closed mesh cancel, and it holds no more than its box.
function volumeOf({ triangles }) {
  let volume = 0, area = 0;
  const vector = [0, 0, 0];
  for (let i = 0; i < triangles.length; i += 9) {
    const normal = normalOf(triangles, i);
    volume += (triangles[i] * normal[0] + triangles[i + 1] * normal[1] + triangles[i + 2] * normal[2]) / 6;
    area += Math.hypot(...normal) / 2;
    normal.forEach((v, k) => { vector[k] += v / 2; });
  }
  const { low, high } = boxOf(triangles);
  const box = high.reduce((product, v, k) => product * (v - low[k]), 1);
  return { volume: Math.abs(volume) / 1e9, closed: Math.hypot(...vector) < 1e-4 * area && Math.abs(volume) <= box * 1.0001 };
}

// Twice the area, along the normal.
function normalOf(t, i) {
  const u = [t[i + 3] - t[i], t[i + 4] - t[i + 1], t[i + 5] - t[i + 2]], v = [t[i + 6] - t[i], t[i + 7] - t[i + 1], t[i + 8] - t[i + 2]];
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}

// Faces that lie in one plane and look the same way, with their area in mm2; floors and tops left out.
function sidesOf({ triangles }) {
  const sides = [];
  for (let i = 0; i < triangles.length; i += 9) {
    const double = normalOf(triangles, i), size = Math.hypot(...double);
    if (size < 1e-3) continue;
    const normal = double.map(v => v / size);
    if (Math.abs(normal[2]) > 0.7) continue;
    const at = normal[0] * triangles[i] + normal[1] * triangles[i + 1] + normal[2] * triangles[i + 2];
    const known = sides.find(s => s.normal[0] * normal[0] + s.normal[1] * normal[1] + s.normal[2] * normal[2] > 0.99999 && Math.abs(s.at - at) < 1);
    if (known) known.area += size / 2;
    else sides.push({ normal, at, area: size / 2 });
  }
  return sides;
}

// The two faces that look away from each other and hold the largest slab of the body between them, among those parallel to the
// largest face. share: of the body's volume in that slab: near 1 on a plain wall, near 0 on a round one, whose faces are facets;
// two faces of which no part looks through the body at the other would make more than 1 of it. run, across and height: from and
// to, mm, along the faces, to their left and upwards, in model axes.
function facesOf({ origin, triangles }, sides, volume, closed) {
  const main = sides.reduce((a, b) => b.area > a.area ? b : a).normal;
  const like = s => s.normal[0] * main[0] + s.normal[1] * main[1] + s.normal[2] * main[2];
  const front = sides.filter(s => like(s) > 0.99999), back = sides.filter(s => like(s) < -0.99999);
  let best = null;
  for (const f of front) for (const b of back) {
    const thickness = f.at + b.at, slab = Math.min(f.area, b.area) * thickness;
    if (thickness > 1 && (slab <= volume * 1.01 || !closed) && !(best?.slab >= slab * 1.001)) best = { slab, thickness, area: Math.min(f.area, b.area) };
  }
  if (best === null) return null;
  const plan = Math.hypot(main[0], main[1]), along = [-main[1] / plan, main[0] / plan];
  const extent = (x, y, z) => {
    const range = [Infinity, -Infinity];
    for (let i = 0; i < triangles.length; i += 3) {
      const v = triangles[i] * x + triangles[i + 1] * y + triangles[i + 2] * z;
      range[0] = Math.min(range[0], v); range[1] = Math.max(range[1], v);
    }
    return range.map(v => v + origin[0] * x + origin[1] * y + origin[2] * z);
  };
  return { direction: along, lean: Math.abs(main[2]), thickness: best.thickness, area: best.area / 1e6, share: best.slab / volume,
    run: extent(...along, 0), across: extent(-along[1], along[0], 0), height: extent(0, 0, 1) };
}

// [left, right, bottom, top] of what lies inside a wall's masonry layer, in its frame's s and z; null where nothing does.
export function boxInLayer({ origin, triangles }, { origin: start, direction, normal, thickness }) {
  const [dx, dy, dz] = origin.map((v, k) => v - start[k]), box = [Infinity, -Infinity, Infinity, -Infinity];
  const inFrame = i => {
    const [x, y, z] = [triangles[i] + dx, triangles[i + 1] + dy, triangles[i + 2] + dz];
    return [x * direction[0] + y * direction[1], -(x * normal[0] + y * normal[1]), z];
  };
  for (let i = 0; i < triangles.length; i += 9) {
    for (const [s, , z] of clipped(clipped([inFrame(i), inFrame(i + 3), inFrame(i + 6)], p => p[1]), p => thickness - p[1])) {
      box[0] = Math.min(box[0], s); box[1] = Math.max(box[1], s);
      box[2] = Math.min(box[2], z); box[3] = Math.max(box[3], z);
    }
  }
  return box[0] <= box[1] ? box : null;
}

// Whether a closed body is a box or nearly so: seen along a wall's thickness it covers the box around it.
export function isPlain({ triangles }, { direction, normal }) {
  const range = [Infinity, -Infinity, Infinity, -Infinity];
  let covered = 0;
  for (let i = 0; i < triangles.length; i += 9) {
    const [x, y] = normalOf(triangles, i);
    covered += Math.abs(x * normal[0] + y * normal[1]) / 4;
    for (let k = i; k < i + 9; k += 3) {
      const s = triangles[k] * direction[0] + triangles[k + 1] * direction[1], z = triangles[k + 2];
      range[0] = Math.min(range[0], s); range[1] = Math.max(range[1], s);
      range[2] = Math.min(range[2], z); range[3] = Math.max(range[3], z);
    }
  }
  return covered > 0.99 * (range[1] - range[0]) * (range[3] - range[2]);
}

// The part of a polygon where a distance is not negative.
function clipped(points, distance) {
  return points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length], [a, b] = [distance(p), distance(q)];
    const cut = a < 0 === b < 0 ? [] : [p.map((v, k) => v + (q[k] - v) * a / (a - b))];
    return a < 0 ? cut : [p, ...cut];
  });
}
