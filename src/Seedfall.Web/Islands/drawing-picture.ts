// The picture under the sheet: scaled by two points, moved, turned, made fainter.

import { mm, type Corner, type Picture } from "./drawing-model";
import type { Session } from "./drawing-session";
import type { Sheet } from "./drawing-sheet";
import { fromUnit, lengthText, parseNumber, unitOf } from "./drawing-text";
import { scaleBand } from "./drawing-band";
import { make, need } from "./drawing-words";

/** The pixel under a point of the sheet. */
export function pixelAt(p: Picture, at: Corner): [number, number] {
  const turn = (p.turnDeg * Math.PI) / 180;
  const [right, up] = [(at.e - p.east) / p.metersPerPixel, (at.n - p.north) / p.metersPerPixel];
  return [right * Math.cos(turn) - up * Math.sin(turn) + p.width / 2, -(right * Math.sin(turn) + up * Math.cos(turn)) + p.height / 2];
}

/** The point of the sheet a pixel lies on. */
export function pointAt(p: Picture, [x, y]: readonly [number, number]): Corner {
  const turn = (p.turnDeg * Math.PI) / 180;
  const [right, up] = [(x - p.width / 2) * p.metersPerPixel, (p.height / 2 - y) * p.metersPerPixel];
  return { e: p.east + right * Math.cos(turn) + up * Math.sin(turn), n: p.north - right * Math.sin(turn) + up * Math.cos(turn) };
}

export class PictureControls {
  strength = 0.75;
  image: HTMLImageElement | null = null;
  private picked = 0;
  private readonly box = need("picture-body", HTMLDivElement);
  private readonly state = make("p", "", { class: "picture-state" });
  private readonly unit = make("select", "", { "aria-label": "Unit of the distance" });
  private readonly known = make("input", "", { id: "picture-known", inputmode: "decimal", autocomplete: "off" });
  private readonly turn = make("input", "", { id: "picture-turn", inputmode: "decimal", autocomplete: "off" });
  private readonly wrong = make("p", "", { class: "problem", hidden: "" });
  private readonly pick: HTMLButtonElement;
  private readonly move: HTMLButtonElement;

  constructor(private readonly session: Session, private readonly sheet: () => Sheet, lawn: string) {
    this.unit.append(new Option("ft", "ft"), new Option("m", "m"));
    this.unit.value = unitOf(session.system);
    this.pick = this.button("Pick two points", () => session.use(session.tool === "scale" ? "add" : "scale"));
    this.move = this.button("Move the picture", () => session.use(session.tool === "picture" ? "add" : "picture"));
    const faint = make("input", "", { type: "range", min: "10", max: "100", value: "75", id: "picture-strength" });
    faint.addEventListener("input", () => { this.strength = Number(faint.value) / 100; this.sheet().redraw(); });
    this.turn.addEventListener("change", () => this.turned());
    const measure = make("div", "", { class: "measure" });
    measure.append(this.known, this.unit, this.button("Scale it", () => this.scale()));
    const buttons = make("div", "", { class: "walk-buttons" });
    buttons.append(this.pick, this.move);
    this.box.append(
      this.state, buttons,
      make("label", "Distance between A and B", { for: "picture-known" }), measure, this.wrong,
      make("label", "Turned clockwise, degrees", { for: "picture-turn" }), this.turn,
      make("label", "How strong it shows", { for: "picture-strength" }), faint,
      this.button("Take the picture away", () => session.setPicture(null), "stop"),
    );
    session.onChange((change) => { if (change !== "pencil" && change !== "drag") this.show(); });
    const { picture } = session.drawing;
    if (picture) {
      this.image = new Image();
      this.image.addEventListener("load", () => this.sheet().redraw());
      this.image.src = `/lawns/${lawn}/draw/picture/${picture.file}`;
    }
    this.show();
  }

  private button(text: string, press: () => void, kind = ""): HTMLButtonElement {
    const b = make("button", text, { type: "button", ...(kind ? { class: kind } : {}) });
    b.addEventListener("click", press);
    return b;
  }

  private show(): void {
    const { session } = this;
    const p = session.drawing.picture;
    this.box.hidden = !p;
    if (!p) return;
    this.pick.setAttribute("aria-pressed", String(session.tool === "scale"));
    if (session.tool === "scale" && session.picks.length === 2 && this.picked < 2) {
      this.known.scrollIntoView({ block: "center" });
      this.known.focus({ preventScroll: true });
    }
    this.picked = session.picks.length;
    this.move.setAttribute("aria-pressed", String(session.tool === "picture"));
    if (document.activeElement !== this.turn) this.turn.value = String(p.turnDeg);
    const band = scaleBand(p);
    this.state.textContent = band === null
      ? "Not scaled yet: its size is a guess, and so is every area drawn on it."
      : `Scaled by ${lengthText(p.scale!.meters, session.system)} between two points: lengths are good to ${(band * 100).toFixed(1)} %, areas to ${(band * 200).toFixed(1)} %. Points far apart do better.`;
  }

  /** Makes the two picked points as far apart as typed; the first stays where it is, and so does what is drawn. */
  private scale(): void {
    const p = this.session.drawing.picture;
    const [a, b] = this.session.picks;
    const value = parseNumber(this.known.value);
    const problem = !a || !b ? "Pick two points on the picture first." : value === null || value <= 0 ? "Type the distance between A and B." : null;
    const pixels = p && a && b ? ([pixelAt(p, a), pixelAt(p, b)] as const) : null;
    const apart = pixels ? Math.hypot(pixels[0][0] - pixels[1][0], pixels[0][1] - pixels[1][1]) : 0;
    const close = problem === null && apart < 10 ? "A and B are too close together on the picture." : null;
    this.wrong.hidden = !(problem ?? close);
    this.wrong.textContent = problem ?? close ?? "";
    if (problem || close || !p || !a || !pixels || value === null) return;
    const meters = fromUnit(value, this.unit.value);
    const sized = { ...p, metersPerPixel: meters / apart, scale: { a: pixels[0], b: pixels[1], meters } };
    const moved = pointAt(sized, pixels[0]);
    this.session.tool = "add";
    this.session.picks = [];
    this.session.setPicture({ ...sized, east: mm(sized.east + a.e - moved.e), north: mm(sized.north + a.n - moved.n) });
    this.sheet().fit();
  }

  private turned(): void {
    const p = this.session.drawing.picture;
    const value = parseNumber(this.turn.value);
    if (p && value !== null && Math.abs(value) <= 360) this.session.setPicture({ ...p, turnDeg: value });
  }

}

