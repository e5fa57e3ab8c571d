// The paper itself: the picture underneath, squared lines at round distances, and the scale bar.

import Layer from "ol/layer/Layer";
import type { FrameState } from "ol/Map";
import { ink } from "./drawing-look";
import type { Picture } from "./drawing-model";
import { METERS_PER_FOOT, significant, type System } from "./drawing-text";

/** 1, 2 or 5 times a power of ten of the unit, at least `least` units. */
export function round125(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const lead = least / power;
  return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
}

export interface PaperSight { picture: Picture | null; image: HTMLImageElement | null; strength: number; system: System }

export class Paper extends Layer {
  private readonly canvas = document.createElement("canvas");

  constructor(private readonly sight: () => PaperSight) {
    super({});
    this.canvas.className = "paper-canvas";
  }

  override getSourceState(): "ready" { return "ready"; }

  override render(frame: FrameState | null): HTMLElement {
    if (frame) this.draw(frame);
    return this.canvas;
  }

  private draw(frame: FrameState): void {
    const [width = 0, height = 0] = frame.size;
    const ratio = frame.pixelRatio;
    const [w, h] = [Math.round(width * ratio), Math.round(height * ratio)];
    if (this.canvas.width !== w || this.canvas.height !== h) { this.canvas.width = w; this.canvas.height = h; }
    const c = this.canvas.getContext("2d");
    if (!c) return;
    const { resolution, center } = frame.viewState;
    const [east = 0, north = 0] = center;
    const sight = this.sight();
    c.setTransform(ratio, 0, 0, ratio, 0, 0);
    c.fillStyle = ink.leaf;
    c.fillRect(0, 0, width, height);
    if (sight.picture && sight.image?.complete && sight.image.naturalWidth > 0) {
      const p = sight.picture;
      c.save();
      c.translate(width / 2 + (p.east - east) / resolution, height / 2 - (p.north - north) / resolution);
      c.rotate((p.turnDeg * Math.PI) / 180);
      c.scale(p.metersPerPixel / resolution, p.metersPerPixel / resolution);
      c.globalAlpha = sight.strength;
      c.drawImage(sight.image, -p.width / 2, -p.height / 2, p.width, p.height);
      c.restore();
    }
    const unit = sight.system === "us" ? METERS_PER_FOOT : 1;
    const step = round125((26 * resolution) / unit) * unit;
    this.lines(c, width, height, east, north, resolution, step, 0.5);
    this.lines(c, width, height, east, north, resolution, step * 5, 1.1);
  }

  private lines(c: CanvasRenderingContext2D, width: number, height: number, east: number, north: number, resolution: number, step: number, weight: number): void {
    c.strokeStyle = ink.pencil;
    c.globalAlpha = 0.6;
    c.lineWidth = weight;
    c.beginPath();
    const west = east - (width / 2) * resolution;
    for (let x = Math.ceil(west / step) * step; x < west + width * resolution; x += step) {
      const px = Math.round((x - west) / resolution) + 0.5;
      c.moveTo(px, 0);
      c.lineTo(px, height);
    }
    const top = north + (height / 2) * resolution;
    for (let y = Math.floor(top / step) * step; y > top - height * resolution; y -= step) {
      const py = Math.round((top - y) / resolution) + 0.5;
      c.moveTo(0, py);
      c.lineTo(width, py);
    }
    c.stroke();
    c.globalAlpha = 1;
  }
}

/** One bar that says a round distance in feet and, below, a round one in meters. */
export class ScaleBar {
  private readonly bars: { el: HTMLElement; unit: string; meters: number }[];

  constructor(parent: HTMLElement, system: System) {
    const box = document.createElement("div");
    box.className = "scale-bar";
    box.setAttribute("aria-hidden", "true");
    const units = [{ unit: "ft", meters: METERS_PER_FOOT }, { unit: "m", meters: 1 }];
    if (system === "metric") units.reverse();
    this.bars = units.map((u) => {
      const el = document.createElement("div");
      box.append(el);
      return { el, ...u };
    });
    parent.append(box);
  }

  show(resolution: number): void {
    for (const bar of this.bars) {
      const length = round125((44 * resolution) / bar.meters);
      bar.el.style.width = `${(length * bar.meters) / resolution}px`;
      bar.el.textContent = `${significant(length)} ${bar.unit}`;
    }
  }
}
