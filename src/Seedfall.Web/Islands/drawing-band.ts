// How far off an area may be, nine times in ten, as a share of it: by the same formulas as the server.

import { areaM2 } from "./drawing-geometry";
import type { Drawing, Picture, Ring, Shape } from "./drawing-model";
import { grassM2, holesIn } from "./drawing-problems";

const PICK_PX = 3;
const TAPED_DISTANCE = 0.01;

function spans(ring: Ring): number {
  return ring.reduce((sum, _, i) => {
    const [before, after] = [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
    return sum + (after.e - before.e) ** 2 + (after.n - before.n) ** 2;
  }, 0);
}

/** Every corner off by the same error, each on its own: first-order propagation of the shoelace formula. */
export function cornerShare(rings: readonly Ring[], m2: number, errorM: number): number {
  return m2 > 0 ? (0.5 * errorM * Math.sqrt(rings.reduce((sum, r) => sum + spans(r), 0))) / m2 : 0;
}

/** Range of a scale from two picks on a picture and a taped distance. */
export function scaleBand(picture: Picture): number | null {
  if (!picture.scale) return null;
  const { a, b } = picture.scale;
  const apart = Math.hypot(a[0] - b[0], a[1] - b[1]);
  return Math.sqrt(2 * (PICK_PX / apart) ** 2 + TAPED_DISTANCE ** 2);
}

export type Errors = Readonly<Record<string, { readonly corner: number; readonly whole: number }>>;

/** A picture is taken where nobody said how an outline was made, as the plan does. */
export function bandOf(drawing: Drawing, shape: Shape, errors: Errors): number | null {
  const by = shape.taken?.by ?? "picture";
  const scale = by === "picture" && drawing.picture ? scaleBand(drawing.picture) : null;
  if (scale === null && shape.taken?.band != null) return shape.taken.band;
  const rings = [shape.ring, ...(shape.kind === "hole" ? [] : holesIn(drawing, shape).map((h) => h.ring))];
  const m2 = shape.kind === "hole" ? areaM2(shape.ring) : grassM2(drawing, shape);
  if (scale !== null && drawing.picture) return Math.min(1, Math.hypot(2 * scale, cornerShare(rings, m2, PICK_PX * drawing.picture.metersPerPixel)));
  const error = errors[by];
  return error ? Math.min(1, Math.hypot(error.whole, cornerShare(rings, m2, error.corner))) : null;
}
