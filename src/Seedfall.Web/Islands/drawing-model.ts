// What lies on the sheet, in meters east and north. Every change makes a new drawing; nothing is changed in place.

export interface Corner { readonly e: number; readonly n: number }
export type Ring = readonly Corner[];

/** How the corners were taken, as the lawn file names it; `band` is half the range of the area, as a share of it. */
export interface Taken { readonly by: string; readonly band: number | null }

export interface Shape {
  /** Stable on this page: edge, hole-1, patch-front. */
  readonly key: string;
  readonly kind: "edge" | "hole" | "patch";
  readonly name: string;
  /** What a hole is. */
  readonly hole?: string;
  /** Id of a patch in the notes. */
  readonly patch?: string;
  readonly ring: Ring;
  readonly taken: Taken | null;
}

/** A picture under the sheet: its pixel (x right, y down) lies at `east`, `north`, turned clockwise. */
export interface Picture {
  readonly file: string;
  readonly width: number;
  readonly height: number;
  /** Where the middle of the picture lies. */
  readonly east: number;
  readonly north: number;
  readonly metersPerPixel: number;
  readonly turnDeg: number;
  /** The two known points as pixels and their distance; null until scaled. */
  readonly scale: { readonly a: readonly [number, number]; readonly b: readonly [number, number]; readonly meters: number } | null;
}

/** Where the sheet's point 0, 0 lies on the earth. */
export interface Origin { readonly lat: number; readonly lon: number }

export interface Drawing {
  readonly shapes: readonly Shape[];
  readonly picture: Picture | null;
  readonly origin: Origin | null;
}

/** To the millimeter: finer than any lawn is drawn, and the same after a round trip through the form. */
export const mm = (value: number): number => Math.round(value * 1000) / 1000 + 0;

export const cornerAt = (e: number, n: number): Corner => ({ e: mm(e), n: mm(n) });

export const shapeOf = (drawing: Drawing, key: string): Shape | undefined => drawing.shapes.find((s) => s.key === key);

export const withRing = (drawing: Drawing, key: string, ring: Ring): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.map((s) => (s.key === key ? { ...s, ring } : s)),
});

/** With a corner behind the one numbered `after`; behind the last where that is null. */
export const insert = (ring: Ring, after: number | null, corner: Corner): Ring => {
  const at = after === null ? ring.length : after + 1;
  return [...ring.slice(0, at), corner, ...ring.slice(at)];
};

export const remove = (ring: Ring, index: number): Ring => ring.filter((_, i) => i !== index);

export const replace = (ring: Ring, index: number, corner: Corner): Ring => ring.map((c, i) => (i === index ? corner : c));

export const same = (a: Drawing, b: Drawing): boolean => JSON.stringify(a) === JSON.stringify(b);

/** A corner from the one before it: distance in meters, bearing in degrees clockwise from north. */
export const along = (from: Corner, meters: number, bearingDeg: number): Corner => {
  const turn = (bearingDeg * Math.PI) / 180;
  return cornerAt(from.e + meters * Math.sin(turn), from.n + meters * Math.cos(turn));
};

export const distance = (a: Corner, b: Corner): number => Math.hypot(b.e - a.e, b.n - a.n);

/** Degrees clockwise from north, 0 to under 360. */
export const bearing = (a: Corner, b: Corner): number => ((Math.atan2(b.e - a.e, b.n - a.n) * 180) / Math.PI + 360) % 360;
