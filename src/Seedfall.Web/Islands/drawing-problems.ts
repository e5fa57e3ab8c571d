// What cannot be right on the sheet, where, and in which words. The server judges by the same rules and words.

import { areaM2, contains, meet, selfCrossings, sides, toRing, toSide, type Crossing } from "./drawing-geometry";
import type { Corner, Drawing, Ring, Shape } from "./drawing-model";
import { METERS_PER_FOOT, type System } from "./drawing-text";

export interface Problem { readonly text: string; readonly at: Corner | null; readonly keys: readonly string[] }

/** Lines closer than this lie on each other: a corner set on an edge is neither in nor out. */
const SAME_LINE_M = 0.05;

/** Pieces of a ring between its meetings with another, each with its middle well inside, well outside or on the other. */
interface Piece { readonly from: Corner; readonly middle: Corner; readonly lies: "in" | "out" | "on" }

function pieces(ring: Ring, other: Ring): Piece[] {
  const others = sides(other);
  return sides(ring).flatMap(([a, b]) => {
    const [de, dn] = [b.e - a.e, b.n - a.n];
    const square = de * de + dn * dn;
    if (square === 0) return [];
    const along = (p: Corner): number => Math.min(1, Math.max(0, ((p.e - a.e) * de + (p.n - a.n) * dn) / square));
    const cuts = [0, 1];
    for (const [c, d] of others) {
      const at = meet(a, b, c, d);
      if (at) cuts.push(along(at));
      if (toSide(a, b, c) < SAME_LINE_M) cuts.push(along(c));
    }
    cuts.sort((x, y) => x - y);
    return cuts.slice(1).flatMap((to, i) => {
      const from = cuts[i]!;
      if (to - from < 1e-9) return [];
      const point = (t: number): Corner => ({ e: a.e + t * de, n: a.n + t * dn });
      const middle = point((from + to) / 2);
      const lies = toRing(other, middle) < SAME_LINE_M ? "on" : contains(other, middle) ? "in" : "out";
      return [{ from: point(from), middle, lies } as const];
    });
  });
}

function boxOf(ring: Ring): { west: number; south: number; east: number; north: number } {
  const box = { west: Infinity, south: Infinity, east: -Infinity, north: -Infinity };
  for (const { e, n } of ring) {
    box.west = Math.min(box.west, e);
    box.east = Math.max(box.east, e);
    box.south = Math.min(box.south, n);
    box.north = Math.max(box.north, n);
  }
  return box;
}

/** Where a ring leaves another it should stay inside; null where it stays. */
export function leaves(ring: Ring, other: Ring): Corner | null {
  const all = pieces(ring, other);
  const out = all.find((p, i) => p.lies === "out" && all[(i + all.length - 1) % all.length]!.lies !== "out") ?? all.find((p) => p.lies === "out");
  return out ? (toRing(other, out.from) < SAME_LINE_M ? out.from : out.middle) : null;
}

/** Where two rings take the same ground; null where they lie apart or only touch. */
export function overlaps(ring: Ring, other: Ring): Corner | null {
  const [a, b] = [boxOf(ring), boxOf(other)];
  if (a.east < b.west || b.east < a.west || a.north < b.south || b.north < a.south) return null;
  for (const [one, two] of [[ring, other], [other, ring]] as const) {
    const all = pieces(one, two);
    const inside = all.find((p, i) => p.lies === "in" && all[(i + all.length - 1) % all.length]!.lies !== "in") ?? all.find((p) => p.lies === "in");
    if (inside) return toRing(two, inside.from) < SAME_LINE_M ? inside.from : inside.middle;
  }
  return pieces(ring, other).every((p) => p.lies === "on") && pieces(other, ring).every((p) => p.lies === "on") ? (ring[0] ?? null) : null;
}

/** Wholly inside, touching allowed. */
export function liesIn(ring: Ring, other: Ring): boolean {
  const [own, outer] = [boxOf(ring), boxOf(other)];
  return own.west > outer.west - SAME_LINE_M && own.east < outer.east + SAME_LINE_M && own.south > outer.south - SAME_LINE_M && own.north < outer.north + SAME_LINE_M && leaves(ring, other) === null;
}

const drawn = (s: Shape): boolean => s.ring.length > 2;

/** Holes that lie in a shape: their ground is not grass. */
export const holesIn = (drawing: Drawing, shape: Shape): Shape[] =>
  drawn(shape) ? drawing.shapes.filter((s) => s.kind === "hole" && drawn(s) && liesIn(s.ring, shape.ring)) : [];

/** m2 of grass in a shape: its ring without the holes in it. */
export const grassM2 = (drawing: Drawing, shape: Shape): number =>
  areaM2(shape.ring) - (shape.kind === "hole" ? 0 : holesIn(drawing, shape).reduce((sum, h) => sum + areaM2(h.ring), 0));

export function pointText(p: Corner, system: System): string {
  const part = (m: number, above: string, below: string): string => {
    const value = system === "us" ? m / METERS_PER_FOOT : m;
    return `${Math.abs(value).toFixed(1)} ${system === "us" ? "ft" : "m"} ${value < 0 ? below : above}`;
  };
  return `${part(p.e, "east", "west")}, ${part(p.n, "north", "south")}`;
}

function own(shape: Shape, system: System): Problem[] {
  const { name, ring, key } = shape;
  if (ring.length === 0) return [];
  const different = new Set(ring.map((c) => `${c.e} ${c.n}`)).size;
  if (different < 3) return [{ text: `${name}: at least three corners are needed, ${different} set.`, at: null, keys: [key] }];
  return selfCrossings(ring).map((c: Crossing) => ({ text: `${name}: side ${c.first} crosses or touches side ${c.second} at ${pointText(c.at, system)}.`, at: c.at, keys: [key] }));
}

/** Every problem, shape by shape and then between shapes that are sound in themselves. */
export function problemsOf(drawing: Drawing, system: System): Problem[] {
  const found = drawing.shapes.flatMap((s) => own(s, system));
  const bad = new Set(found.flatMap((p) => p.keys));
  const sound = drawing.shapes.filter((s) => drawn(s) && !bad.has(s.key));
  const edge = sound.find((s) => s.kind === "edge");
  const [holes, patches] = [sound.filter((s) => s.kind === "hole"), sound.filter((s) => s.kind === "patch")];
  const note = (text: string, at: Corner, a: Shape, b: Shape): void => { found.push({ text: `${text} ${pointText(at, system)}.`, at, keys: [a.key, b.key] }); };
  for (const [i, patch] of patches.entries()) {
    const out = edge ? leaves(patch.ring, edge.ring) : null;
    if (edge && out) note(`${patch.name} leaves the ${edge.name.toLowerCase()} at`, out, patch, edge);
    for (const other of patches.slice(0, i)) {
      const at = overlaps(patch.ring, other.ring);
      if (at) note(`${patch.name} and ${other.name} take the same ground at`, at, patch, other);
    }
    for (const hole of holes) {
      if (liesIn(hole.ring, patch.ring)) continue;
      const at = overlaps(hole.ring, patch.ring);
      if (at) note(`${hole.name} lies only partly in ${patch.name}: it crosses the edge at`, at, hole, patch);
    }
  }
  for (const [i, hole] of holes.entries()) {
    if (edge && !liesIn(hole.ring, edge.ring)) {
      const at = overlaps(hole.ring, edge.ring);
      if (at) note(`${hole.name} lies only partly in the ${edge.name.toLowerCase()}: it crosses it at`, at, hole, edge);
    }
    for (const other of holes.slice(0, i)) {
      const at = overlaps(hole.ring, other.ring);
      if (at) note(`${hole.name} and ${other.name} take the same ground at`, at, hole, other);
    }
  }
  return found;
}
