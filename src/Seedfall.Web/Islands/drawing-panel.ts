// Beside the sheet: which shape is meant, the areas, what is wrong, and what the tools are doing.

import { bandOf, type Errors } from "./drawing-band";
import { edgeM } from "./drawing-geometry";
import type { Shape } from "./drawing-model";
import { grassM2, type Problem } from "./drawing-problems";
import type { Session, Tool } from "./drawing-session";
import type { Sheet } from "./drawing-sheet";
import { areaShort, areaText, lengthShort, lengthText } from "./drawing-text";
import { make, need, Voice } from "./drawing-words";

const HINTS: Record<Tool, string> = {
  add: "Tap to set corners, one after the other. The outline closes by itself.",
  move: "Drag a corner, or drag a side to put a corner into it. Tap a corner to choose it.",
  scale: "Tap two points of the picture whose distance you know.",
  picture: "Drag the picture to where it belongs. Two fingers still zoom.",
};

export class Panel {
  private readonly choice = need("draw-shape", HTMLSelectElement);
  private readonly area = need("draw-area", HTMLParagraphElement);
  private readonly problems = need("draw-problems", HTMLOListElement);
  private readonly hint = need("draw-hint", HTMLParagraphElement);
  private readonly kept = need("draw-kept", HTMLParagraphElement);
  private readonly rows: HTMLTableSectionElement;
  private readonly voice = new Voice(need("draw-voice", HTMLParagraphElement));
  private readonly ground = need("draw-ground", HTMLDivElement);

  constructor(private readonly session: Session, private readonly sheet: () => Sheet, private readonly stored: string, private readonly errors: Errors) {
    this.rows = need("draw-table", HTMLTableElement).tBodies[0]!;
    this.choice.addEventListener("change", () => this.session.choose(this.choice.value));
    this.button("tool-add", () => session.use("add"));
    this.button("tool-move", () => session.use("move"));
    this.button("do-undo", () => session.undo());
    this.button("do-redo", () => session.redo());
    this.button("zoom-in", () => sheet().zoom(1.5));
    this.button("zoom-out", () => sheet().zoom(1 / 1.5));
    this.button("zoom-fit", () => sheet().fit());
    session.onChange((change) => {
      if (change === "pencil") return;
      if (change !== "drag") this.show();
      this.figures(change !== "drag");
    });
    this.show();
    this.figures(false);
  }

  private button(id: string, press: () => void): void { need(id, HTMLButtonElement).addEventListener("click", press); }

  private show(): void {
    const { session } = this;
    const { shapes } = session.drawing;
    this.choice.replaceChildren(...shapes.map((s) => new Option(s.ring.length > 0 ? s.name : `${s.name} (not drawn)`, s.key, false, s.key === session.active)));
    for (const [id, tool] of [["tool-add", "add"], ["tool-move", "move"]] as const) need(id, HTMLButtonElement).setAttribute("aria-pressed", String(session.tool === tool));
    need("do-undo", HTMLButtonElement).disabled = !session.history.canUndo;
    need("do-redo", HTMLButtonElement).disabled = !session.history.canRedo;
    this.hint.textContent = session.picks.length === 2 && session.tool === "scale" ? "Now type the distance between A and B below." : HINTS[session.tool];
    this.rows.replaceChildren(...shapes.map((s) => this.row(s)));
    this.listProblems(session.problems);
    this.offers();
    const changed = JSON.stringify(session.history.now) !== this.stored;
    this.kept.textContent = !changed ? "Nothing to save: this is what is stored." : session.keeps ? "Not saved yet. It is kept on this device meanwhile." : "Not saved yet, and this browser keeps nothing: save before you leave the page.";
  }

  private row(shape: Shape): HTMLTableRowElement {
    const { session } = this;
    const row = make("tr", "", { "data-key": shape.key });
    const head = make("th", "", { scope: "row" });
    const pick = make("button", shape.name, { type: "button", class: "plain" });
    pick.setAttribute("aria-pressed", String(shape.key === session.active));
    pick.addEventListener("click", () => session.choose(shape.key));
    head.append(pick);
    row.append(head);
    const bad = session.problems.some((p) => p.keys.length === 1 && p.keys[0] === shape.key);
    if (shape.ring.length > 2 && !bad) {
      const text = areaShort(grassM2(session.drawing, shape), session.system);
      row.append(make("td", shape.kind === "hole" ? `(${text})` : text, { class: "num" }), make("td", lengthShort(edgeM(shape.ring), session.system), { class: "num" }));
    } else {
      row.append(make("td", shape.ring.length === 0 ? "not drawn" : bad && shape.ring.length > 2 ? "crosses itself" : "not closed yet", { class: "num blank", colspan: "2" }));
    }
    return row;
  }

  private figures(aloud: boolean): void {
    const { session } = this;
    const shape = session.shape;
    if (!shape) return;
    const problems = session.problems;
    let text: string;
    if (shape.ring.length < 3) {
      text = shape.ring.length === 2 ? `${shape.name}: first side ${lengthText(edgeM(shape.ring) / 2, session.system)}` : `${shape.name}: ${shape.ring.length === 0 ? "not drawn" : "one corner set"}`;
      this.area.replaceChildren(make("span", text));
    } else if (problems.some((p) => p.keys.length === 1 && p.keys[0] === shape.key)) {
      text = `${shape.name}: no area while it crosses itself`;
      this.area.replaceChildren(make("span", text));
    } else {
      const m2 = grassM2(session.drawing, shape);
      const band = bandOf(session.drawing, shape, this.errors);
      const off = band === null ? "" : ` ± ${areaShort(band * m2, session.system)}`;
      const rest = `${lengthText(edgeM(shape.ring), session.system)} round it`;
      this.area.replaceChildren(make("strong", areaText(m2, session.system)), make("span", off, { class: "off" }), make("span", rest, { class: "round" }));
      text = `${shape.name}: ${areaText(m2, session.system)}${off ? `, give or take ${areaShort(band! * m2, session.system)}` : ""}. ${shape.ring.length} corners, ${lengthText(edgeM(shape.ring), session.system)} round it.`;
    }
    if (!aloud) return;
    const corner = session.corner === null ? undefined : session.ring[session.corner];
    const where = corner ? ` Corner ${session.corner! + 1}.` : "";
    this.voice.say(`${text}${where}${problems.length > 0 ? ` ${problems.length === 1 ? "One thing" : `${problems.length} things`} to put right: ${problems[0]!.text}` : ""}`);
  }

  private listProblems(problems: readonly Problem[]): void {
    this.problems.hidden = problems.length === 0;
    this.problems.replaceChildren(...problems.map((p) => {
      const item = make("li", p.text);
      if (p.at) {
        const look = make("button", "Show it", { type: "button", class: "plain" });
        look.addEventListener("click", () => this.sheet().look(p.at!));
        item.append(" ", look);
      }
      return item;
    }));
  }

  /** What can be done with the shape meant as a whole. */
  private offers(): void {
    const { session } = this;
    const shape = session.shape;
    const offers: HTMLButtonElement[] = [];
    const offer = (text: string, press: () => void, stop = false): void => {
      const button = make("button", text, { type: "button", ...(stop ? { class: "stop" } : {}) });
      button.addEventListener("click", press);
      offers.push(button);
    };
    const edge = session.drawing.shapes.find((s) => s.kind === "edge");
    const only = session.drawing.shapes.filter((s) => s.kind === "patch");
    if (shape && edge && edge.ring.length > 2) {
      const patch = shape.kind === "patch" ? shape : only.length === 1 && shape.kind === "edge" ? only[0]! : null;
      if (patch && JSON.stringify(patch.ring) !== JSON.stringify(edge.ring)) {
        offer(`${patch.name} is the whole lawn`, () => session.take({ ...session.drawing, shapes: session.drawing.shapes.map((s) => (s.key === patch.key ? { ...s, ring: edge.ring, taken: edge.taken } : s)) }));
      }
    }
    if (shape && (shape.ring.length > 0 || shape.kind === "hole")) offer(shape.kind === "hole" ? `Take ${shape.name} off the sheet` : `Rub out ${shape.name === edge?.name ? "the edge" : shape.name}`, () => session.clear(shape.key), true);
    this.ground.replaceChildren(...offers);
  }
}
