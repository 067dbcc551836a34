// Orthographic projection of an item's faces and edges, like a workshop drawing: x right, y down on screen, depth towards
// the viewer positive. Pure geometry of a picture; no quantity of the job is computed here.
import type { Edge, Face, Furniture, Point } from '../engine/shapes';

export interface View { yaw: number; pitch: number }
export interface Spot { x: number; y: number; depth: number }
export interface DrawnFace { name: string; part: string; points: Spot[]; shade: number; depth: number }
export interface Run { visible: boolean; points: Spot[] }
export interface DrawnEdge { edge: Edge; runs: Run[]; points: Spot[]; seen: number }
export interface Drawing { faces: DrawnFace[]; edges: DrawnEdge[] }
interface Plane { a: number; b: number; c: number; points: Spot[]; x0: number; x1: number; y0: number; y1: number }

/** Half the diagonal and half the height around a centre: a picture that keeps its scale while it turns. */
export interface Extent { centre: Point; radius: number; halfHeight: number }

export function rotate([x, y, z]: Point, { yaw, pitch }: View, [cx, cy, cz]: Point): Spot {
  const dx = x - cx, dy = y - cy, dz = z - cz;
  const right = dx * Math.cos(yaw) - dy * Math.sin(yaw);
  const away = dx * Math.sin(yaw) + dy * Math.cos(yaw);
  return {
    x: right,
    y: -(dz * Math.cos(pitch) + away * Math.sin(pitch)),
    depth: dz * Math.sin(pitch) - away * Math.cos(pitch),
  };
}

export function extentOf(points: Point[]): Extent {
  const low: Point = [Infinity, Infinity, Infinity], high: Point = [-Infinity, -Infinity, -Infinity];
  for (const point of points) {
    for (const axis of [0, 1, 2] as const) {
      low[axis] = Math.min(low[axis], point[axis]);
      high[axis] = Math.max(high[axis], point[axis]);
    }
  }
  const centre: Point = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  return {
    centre,
    radius: Math.max(0.05, Math.hypot(high[0] - low[0], high[1] - low[1]) / 2),
    halfHeight: Math.max(0.02, (high[2] - low[2]) / 2),
  };
}

/** Points of a part (or of everything when `part` is null): its faces' vertices and its edges' points. */
export function pointsOf(furniture: Furniture, part: string | null): Point[] {
  const points: Point[] = [];
  for (const face of furniture.faces) {
    if (part === null || face.part === part) for (const index of face.vertices) points.push(furniture.vertices_metres[index]!);
  }
  for (const edge of furniture.edges) if (part === null || edge.part === part) points.push(...edge.points_metres);
  return points;
}

function normalDepth(points: Spot[]): { nx: number; ny: number; nz: number } {
  let nx = 0, ny = 0, nz = 0;
  for (let i = 0; i < points.length; i++) {
    const p = points[i]!, q = points[(i + 1) % points.length]!;
    nx += (p.y - q.y) * (p.depth + q.depth);
    ny += (p.depth - q.depth) * (p.x + q.x);
    nz += (p.x - q.x) * (p.y + q.y);
  }
  const size = Math.hypot(nx, ny, nz) || 1;
  return { nx: nx / size, ny: ny / size, nz: nz / size };
}

function inside(points: Spot[], x: number, y: number): boolean {
  let within = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const p = points[i]!, q = points[j]!;
    if (p.y > y !== q.y > y && x < ((q.x - p.x) * (y - p.y)) / (q.y - p.y) + p.x) within = !within;
  }
  return within;
}

function planeOf(points: Spot[]): Plane | null {
  const { nx, ny, nz } = normalDepth(points);
  if (Math.abs(nz) < 1e-3) return null;
  const first = points[0]!;
  const a = -nx / nz, b = -ny / nz;
  return {
    a, b, c: first.depth - a * first.x - b * first.y, points,
    x0: Math.min(...points.map((p) => p.x)), x1: Math.max(...points.map((p) => p.x)),
    y0: Math.min(...points.map((p) => p.y)), y1: Math.max(...points.map((p) => p.y)),
  };
}

const k_clearance_metres = 0.012;
const k_run_metres = 0.06;

function hidden(planes: Plane[], spot: Spot): boolean {
  for (const plane of planes) {
    if (spot.x <= plane.x0 || spot.x >= plane.x1 || spot.y <= plane.y0 || spot.y >= plane.y1) continue;
    if (plane.a * spot.x + plane.b * spot.y + plane.c > spot.depth + k_clearance_metres && inside(plane.points, spot.x, spot.y)) return true;
  }
  return false;
}

function between(p: Spot, q: Spot, share: number): Spot {
  return { x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share, depth: p.depth + (q.depth - p.depth) * share };
}

function runsOf(points: Spot[], planes: Plane[]): { runs: Run[]; seen: number } {
  const runs: Run[] = [];
  let seen = 0, all = 0;
  for (let i = 1; i < points.length; i++) {
    const p = points[i - 1]!, q = points[i]!;
    const size = Math.hypot(q.x - p.x, q.y - p.y, q.depth - p.depth);
    const pieces = Math.max(1, Math.min(40, Math.ceil(size / k_run_metres)));
    for (let k = 0; k < pieces; k++) {
      const visible = !hidden(planes, between(p, q, (k + 0.5) / pieces));
      const from = between(p, q, k / pieces), to = between(p, q, (k + 1) / pieces);
      all += size / pieces;
      if (visible) seen += size / pieces;
      const last = runs.at(-1);
      if (last && last.visible === visible) last.points.push(to);
      else runs.push({ visible, points: [from, to] });
    }
  }
  return { runs, seen: all > 0 ? seen / all : 0 };
}

/** Faces from back to front with those turned away left out, and edges cut into seen and hidden runs. */
export function draw(furniture: Furniture, part: string | null, view: View, centre: Point): Drawing {
  const spots = furniture.vertices_metres.map((point) => rotate(point, view, centre));
  const faces: DrawnFace[] = [];
  const planes: Plane[] = [];
  const add = (face: Face): void => {
    const points = face.vertices.map((index) => spots[index]!);
    // Faces run counter-clockwise seen from outside; with y downwards on screen their sum comes out negative.
    const { nx, ny, nz } = normalDepth(points);
    if (nz > 0) return;
    const light = Math.max(0, 0.35 * nx + 0.75 * ny - 0.4 * nz);
    faces.push({
      name: face.name, part: face.part, points, shade: Math.min(1, light),
      depth: points.reduce((sum, p) => sum + p.depth, 0) / points.length,
    });
    const plane = planeOf(points);
    if (plane) planes.push(plane);
  };
  for (const face of furniture.faces) if (part === null || face.part === part) add(face);
  faces.sort((p, q) => p.depth - q.depth);
  const edges = furniture.edges.filter((edge) => part === null || edge.part === part).map((edge) => {
    const points = edge.points_metres.map((point) => rotate(point, view, centre));
    return { edge, points, ...runsOf(points, planes) };
  });
  return { faces, edges };
}

export const k_usual_view: View = { yaw: 0.5, pitch: 0.45 };
const k_worth_turning = 1.35;

/** From where to open a part: from the front and above, unless another side shows clearly more of its edges. */
export function bestView(furniture: Furniture, part: string | null): View {
  if (part === null) return k_usual_view;
  const { centre } = extentOf(pointsOf(furniture, part));
  const shown = (view: View): number => draw(furniture, part, view, centre).edges.reduce((sum, one) => sum + one.seen * one.edge.length_metres, 0);
  let best = k_usual_view, most = shown(best) * k_worth_turning;
  for (const view of [{ yaw: -0.5, pitch: 0.45 }, { yaw: Math.PI + 0.5, pitch: 0.45 }, { yaw: 0.5, pitch: -0.6 }]) {
    const seen = shown(view);
    if (seen > most) {
      most = seen;
      best = view;
    }
  }
  return best;
}

/** Distance on screen from a place to a run of points. */
export function distanceTo(points: { x: number; y: number }[], x: number, y: number): number {
  let best = Infinity;
  for (let i = 1; i < points.length; i++) {
    const p = points[i - 1]!, q = points[i]!;
    const dx = q.x - p.x, dy = q.y - p.y;
    const share = Math.max(0, Math.min(1, ((x - p.x) * dx + (y - p.y) * dy) / (dx * dx + dy * dy || 1)));
    best = Math.min(best, Math.hypot(x - p.x - share * dx, y - p.y - share * dy));
  }
  return best;
}
