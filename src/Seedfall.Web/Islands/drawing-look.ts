// How shapes look on the sheet: spruce ink on warm paper, straw for grass, soil for beds, blue for water only, red for stop only.

import type { FeatureLike } from "ol/Feature";
import LineString from "ol/geom/LineString";
import Point from "ol/geom/Point";
import { Circle, Fill, RegularShape, Stroke, Style, Text } from "ol/style";
import { bearing, distance, type Corner, type Ring, type Shape } from "./drawing-model";
import { sides } from "./drawing-geometry";
import { lengthShort, type System } from "./drawing-text";

const token = (name: string): string => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();

export const ink = { paper: token("paper"), leaf: token("leaf"), ink: token("ink"), spruce: token("spruce"), straw: token("straw"), pencil: token("pencil"), soil: token("soil"), water: token("water"), stop: token("stop"), soft: token("soft"), shade: token("shade") };

const sans = getComputedStyle(document.body).fontFamily;
const font = (px: number, weight = 600): string => `${weight} ${px}px ${sans}`;

/** A pattern of lines, so that kinds differ by more than color. */
function hatch(color: string, kind: "lines" | "cross" | "dots" | "waves"): CanvasPattern | string {
  const cell = document.createElement("canvas");
  cell.width = cell.height = 12;
  const c = cell.getContext("2d");
  if (!c) return color;
  c.fillStyle = c.strokeStyle = color;
  c.globalAlpha = 0.16;
  c.fillRect(0, 0, 12, 12);
  c.globalAlpha = 0.75;
  c.lineWidth = 1.3;
  c.beginPath();
  if (kind === "lines" || kind === "cross") { c.moveTo(-3, 9); c.lineTo(9, -3); c.moveTo(3, 15); c.lineTo(15, 3); }
  if (kind === "cross") { c.moveTo(-3, 3); c.lineTo(9, 15); c.moveTo(3, -3); c.lineTo(15, 9); }
  if (kind === "waves") { c.moveTo(0, 6); c.bezierCurveTo(3, 2, 3, 2, 6, 6); c.bezierCurveTo(9, 10, 9, 10, 12, 6); }
  c.stroke();
  if (kind === "dots") { c.fillRect(2, 2, 2, 2); c.fillRect(8, 8, 2, 2); }
  return c.createPattern(cell, "repeat") ?? color;
}

const HOLES: Record<string, { line: string; fill: CanvasPattern | string }> = {
  bed: { line: ink.soil, fill: hatch(ink.soil, "lines") },
  house: { line: ink.ink, fill: hatch(ink.ink, "cross") },
  drive: { line: ink.soft, fill: hatch(ink.soft, "dots") },
  path: { line: ink.soft, fill: hatch(ink.soft, "dots") },
  water: { line: ink.water, fill: hatch(ink.water, "waves") },
  other: { line: ink.soil, fill: hatch(ink.soil, "cross") },
};

const GRASS = "rgba(201, 169, 78, 0.20)";
const PATCH = "rgba(28, 58, 46, 0.14)";

const coordinate = (c: Corner): number[] => [c.e, c.n];

const halo = (): Stroke => new Stroke({ color: ink.leaf, width: 4 });

/** Line and fill of a shape; the one meant is drawn heavier. */
export function shapeStyle(shape: Shape, meant: boolean): Style[] {
  const hole = shape.kind === "hole" ? (HOLES[shape.hole ?? ""] ?? HOLES["other"]!) : null;
  const line = hole ? hole.line : ink.spruce;
  const fill = hole ? hole.fill : shape.kind === "edge" ? GRASS : PATCH;
  const dash = shape.kind === "patch" ? { lineDash: [9, 6] } : {};
  const stroke = new Stroke({ color: line, width: meant ? 3.5 : 2, lineJoin: "round", ...dash });
  const z = (meant ? 10 : 0) + (shape.kind === "edge" ? 0 : shape.kind === "patch" ? 1 : 2);
  return [
    new Style({ stroke: new Stroke({ color: "rgba(255, 250, 240, 0.75)", width: (meant ? 3.5 : 2) + 3 }), zIndex: z }),
    new Style({ stroke, fill: new Fill({ color: fill }), zIndex: z }),
    ...(meant ? [] : [new Style({
      // The edge is named above its top, so that what lies in it has room.
      ...(shape.kind === "edge" ? { geometry: topOf(shape.ring) } : {}),
      zIndex: 21,
      text: new Text({ offsetY: shape.kind === "edge" ? -12 : 0,  text: shape.name, font: font(13), fill: new Fill({ color: ink.ink }), stroke: halo(), overflow: false }),
    })]),
  ];
}

function topOf(ring: Ring): Point {
  const top = ring.reduce((a, b) => (b.n > a.n ? b : a), ring[0] ?? { e: 0, n: 0 });
  return new Point(coordinate(top));
}

/** Handles on the corners of the shape meant, numbered as in the list. */
export function cornerStyles(ring: Ring, selected: number | null, coarse: boolean): Style[] {
  const few = ring.length <= 40;
  return ring.map((c, i) => {
    const on = i === selected;
    const radius = on ? (coarse ? 13 : 11) : few ? (coarse ? 10 : 8) : 4;
    return new Style({
      geometry: new Point(coordinate(c)),
      zIndex: on ? 40 : 30,
      image: new Circle({ radius, fill: new Fill({ color: on ? ink.spruce : ink.leaf }), stroke: new Stroke({ color: on ? ink.leaf : ink.spruce, width: 2 }) }),
      ...(few || on ? { text: new Text({ text: String(i + 1), font: font(on ? 13 : 11, 700), fill: new Fill({ color: on ? ink.leaf : ink.ink }), offsetY: 1 }) } : {}),
    });
  });
}

/** Lengths along the sides, where a side is long enough on the screen to carry one. */
export function sideStyles(ring: Ring, closed: boolean, resolution: number, system: System): Style[] {
  const all = closed ? sides(ring) : sides(ring).slice(0, -1);
  return all.filter(([a, b]) => distance(a, b) / resolution > 70).map(([a, b]) => {
    const turn = ((bearing(a, b) - 90 + 360) % 180) * (Math.PI / 180);
    const upright = turn > Math.PI / 2 ? turn - Math.PI : turn;
    return new Style({
      geometry: new Point([(a.e + b.e) / 2, (a.n + b.n) / 2]),
      zIndex: 20,
      text: new Text({ text: lengthShort(distance(a, b), system), font: font(13), rotation: upright, offsetY: -11, fill: new Fill({ color: ink.ink }), stroke: halo() }),
    });
  });
}

/** The side that would close a ring still being drawn. */
export function closingStyle(ring: Ring): Style[] {
  const [first, last] = [ring[0], ring[ring.length - 1]];
  if (!first || !last || ring.length < 2) return [];
  return [new Style({ geometry: new LineString([coordinate(last), coordinate(first)]), stroke: new Stroke({ color: ink.soft, width: 1.5, lineDash: [3, 6] }), zIndex: 15 })];
}

/** Where something crosses that must not: a cross in a ring, with the number it has in the list. */
export function crossingStyle(at: Corner, number: number): Style[] {
  const geometry = new Point(coordinate(at));
  return [
    new Style({ geometry, zIndex: 50, image: new Circle({ radius: 15, fill: new Fill({ color: "rgba(255, 250, 240, 0.85)" }), stroke: new Stroke({ color: ink.stop, width: 3 }) }) }),
    new Style({ geometry, zIndex: 51, image: new RegularShape({ points: 4, radius: 11, radius2: 0, angle: Math.PI / 4, stroke: new Stroke({ color: ink.stop, width: 3.5 }) }) }),
    new Style({ geometry, zIndex: 52, text: new Text({ text: String(number), font: font(14, 700), fill: new Fill({ color: ink.stop }), stroke: halo(), offsetX: 22, offsetY: -12 }) }),
  ];
}

/** The pencil of the keyboard: a cross hair. */
export function pencilStyle(at: Corner): Style[] {
  const geometry = new Point(coordinate(at));
  const cross = (color: string, width: number, zIndex: number): Style => new Style({ geometry, zIndex, image: new RegularShape({ points: 4, radius: 18, radius2: 0, angle: 0, stroke: new Stroke({ color, width }) }) });
  return [cross(ink.leaf, 5, 60), cross(ink.ink, 2, 61), new Style({ geometry, zIndex: 62, image: new Circle({ radius: 6, stroke: new Stroke({ color: ink.ink, width: 2 }), fill: new Fill({ color: "rgba(255,250,240,0.6)" }) }) })];
}

/** A point picked on the picture, and the line between two. */
export function pickStyles(picks: readonly Corner[], label: string): Style[] {
  const marks = picks.map((p, i) => new Style({
    geometry: new Point(coordinate(p)), zIndex: 55,
    image: new RegularShape({ points: 4, radius: 9, angle: 0, fill: new Fill({ color: ink.straw }), stroke: new Stroke({ color: ink.ink, width: 2 }) }),
    text: new Text({ text: i === 0 ? "A" : "B", font: font(14, 700), offsetY: -18, fill: new Fill({ color: ink.ink }), stroke: halo() }),
  }));
  const [a, b] = picks;
  return a && b ? [...marks, new Style({
    geometry: new LineString([coordinate(a), coordinate(b)]), zIndex: 54, stroke: new Stroke({ color: ink.ink, width: 2, lineDash: [2, 5] }),
    text: new Text({ text: label, placement: "line", font: font(13), fill: new Fill({ color: ink.ink }), stroke: halo(), overflow: true }),
  })] : marks;
}

/** The walk so far, with how far each fix may be off. */
export function walkStyles(track: readonly (Corner & { readonly off: number })[], resolution: number): Style[] {
  if (track.length === 0) return [];
  const line = new Style({ geometry: new LineString(track.map(coordinate)), zIndex: 25, stroke: new Stroke({ color: ink.soil, width: 3 }) });
  const rings = track.slice(-400).map((t) => new Style({
    geometry: new Point(coordinate(t)), zIndex: 24,
    image: new Circle({ radius: Math.min(120, Math.max(3, t.off / resolution)), stroke: new Stroke({ color: "rgba(91, 63, 34, 0.28)", width: 1 }), fill: new Fill({ color: "rgba(91, 63, 34, 0.03)" }) }),
  }));
  return [...rings, line];
}

/** The corner or the place on a side that would be taken hold of. */
export const holdStyle = (_: FeatureLike): Style => new Style({ zIndex: 45, image: new Circle({ radius: 9, fill: new Fill({ color: "rgba(201, 169, 78, 0.7)" }), stroke: new Stroke({ color: ink.ink, width: 2 }) }) });
