// Plane geometry of rings in meters, by the same formulas as the server, which is the judge.

import { distance, type Corner, type Ring } from "./drawing-model";

/** m2, positive counterclockwise: the shoelace formula, taken about the first corner so that far origins lose no digits. */
function signedM2(ring: Ring): number {
  const origin = ring[0];
  if (!origin || ring.length < 3) return 0;
  let twice = 0;
  for (const [a, b] of sides(ring)) {
    twice += (a.e - origin.e) * (b.n - origin.n) - (b.e - origin.e) * (a.n - origin.n);
  }
  return twice / 2;
}

export const areaM2 = (ring: Ring): number => Math.abs(signedM2(ring));

export const edgeM = (ring: Ring): number => (ring.length < 2 ? 0 : sides(ring).reduce((sum, [a, b]) => sum + distance(a, b), 0));

/** Every side as its two ends; the last runs back to the first corner. */
export function sides(ring: Ring): [Corner, Corner][] {
  return ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a]);
}

const turn = (a: Corner, b: Corner, c: Corner): number => Math.sign((b.e - a.e) * (c.n - a.n) - (b.n - a.n) * (c.e - a.e));

const within = (a: Corner, b: Corner, p: Corner): boolean =>
  p.e >= Math.min(a.e, b.e) && p.e <= Math.max(a.e, b.e) && p.n >= Math.min(a.n, b.n) && p.n <= Math.max(a.n, b.n);

/** A point two closed segments share; null where they share none. */
export function meet(a: Corner, b: Corner, c: Corner, d: Corner): Corner | null {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc !== abd && cda !== cdb && abc * abd <= 0 && cda * cdb <= 0) {
    const [abE, abN, cdE, cdN] = [b.e - a.e, b.n - a.n, d.e - c.e, d.n - c.n];
    const along = ((c.e - a.e) * cdN - (c.n - a.n) * cdE) / (abE * cdN - abN * cdE);
    return { e: a.e + along * abE, n: a.n + along * abN };
  }
  if (abc === 0 && within(a, b, c)) return c;
  if (abd === 0 && within(a, b, d)) return d;
  if (cda === 0 && within(c, d, a)) return a;
  if (cdb === 0 && within(c, d, b)) return b;
  return null;
}

export interface Crossing { readonly first: number; readonly second: number; readonly at: Corner }

interface Side { number: number; from: Corner; to: Corner }

const equal = (a: Corner, b: Corner): boolean => a.e === b.e && a.n === b.n;

const realSides = (ring: Ring): Side[] =>
  sides(ring).map(([from, to], i) => ({ number: i + 1, from, to })).filter((s) => !equal(s.from, s.to));

/** Neighbors share one point by right; they meet again only where the outline folds back on itself. */
function fold(a: Side, b: Side): Corner | null {
  const [shared, tailA, tailB] = equal(a.to, b.from) ? [a.to, a.from, b.to] : [a.from, a.to, b.from];
  if (turn(tailA, shared, tailB) !== 0) return null;
  const dot = (tailA.e - shared.e) * (tailB.e - shared.e) + (tailA.n - shared.n) * (tailB.n - shared.n);
  return dot > 0 ? shared : null;
}

/** Every place where a ring crosses or touches itself, the server's first one first. */
export function selfCrossings(ring: Ring, most = 50): Crossing[] {
  const all = realSides(ring);
  const found: Crossing[] = [];
  for (const [i, a] of all.entries()) {
    for (let j = i + 1; j < all.length; j++) {
      const b = all[j]!;
      const neighbors = j === i + 1 || (i === 0 && j === all.length - 1);
      const at = neighbors ? fold(a, b) : meet(a.from, a.to, b.from, b.to);
      if (at) found.push({ first: a.number, second: b.number, at });
      if (found.length === most) return found;
    }
  }
  return found;
}

/** True when the point lies inside: an eastward ray crosses the ring an odd number of times. */
export function contains(ring: Ring, p: Corner): boolean {
  let inside = false;
  for (const [a, b] of sides(ring)) {
    if (a.n > p.n !== b.n > p.n && p.e < a.e + ((p.n - a.n) / (b.n - a.n)) * (b.e - a.e)) inside = !inside;
  }
  return inside;
}

/** Meters from a point to the nearest place on a side. */
export function toSide(a: Corner, b: Corner, p: Corner): number {
  const [de, dn] = [b.e - a.e, b.n - a.n];
  const square = de * de + dn * dn;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.e - a.e) * de + (p.n - a.n) * dn) / square));
  return Math.hypot(p.e - a.e - t * de, p.n - a.n - t * dn);
}

export const toRing = (ring: Ring, p: Corner): number => sides(ring).reduce((least, [a, b]) => Math.min(least, toSide(a, b, p)), Infinity);
