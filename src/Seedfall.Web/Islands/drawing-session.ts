// What is open on this page: the drawing with its history, which shape and corner are meant, which tool is in hand.

import { areaM2, edgeM } from "./drawing-geometry";
import { DraftBox, History } from "./drawing-history";
import { cornerAt, insert, remove, replace, shapeOf, withRing, type Corner, type Drawing, type Picture, type Ring, type Shape } from "./drawing-model";
import type { System } from "./drawing-text";
import { problemsOf, type Problem } from "./drawing-problems";

export type Tool = "add" | "move" | "scale" | "picture";

export type Change = "drawing" | "choice" | "drag" | "pencil";

export class Session {
  readonly history: History;
  tool: Tool = "add";
  active: string;
  corner: number | null = null;
  /** Where the keyboard's pencil stands; null until it is used. */
  pencil: Corner | null = null;
  /** Points picked on the picture, on the sheet. */
  picks: Corner[] = [];
  /** The drawing as it looks in the middle of a drag. */
  private dragged: Drawing | null = null;
  private found: Problem[] | null = null;
  private readonly listeners: ((change: Change) => void)[] = [];

  constructor(drawing: Drawing, readonly system: System, private stamp: string, private readonly drafts: DraftBox) {
    this.history = new History(drawing);
    this.active = drawing.shapes[0]?.key ?? "";
  }

  get drawing(): Drawing { return this.dragged ?? this.history.now; }

  get shape(): Shape | undefined { return shapeOf(this.drawing, this.active); }

  get ring(): Ring { return this.shape?.ring ?? []; }

  get problems(): Problem[] { return (this.found ??= problemsOf(this.drawing, this.system)); }

  get base(): string { return this.stamp; }

  /** False where the browser keeps no draft. */
  keeps = true;

  onChange(listener: (change: Change) => void): void { this.listeners.push(listener); }

  say(change: Change): void { for (const listener of this.listeners) listener(change); }

  /** Goes on from a draft begun on an older page. */
  resume(drawing: Drawing, stamp: string): void {
    this.history.take(drawing);
    this.stamp = stamp;
    this.changed();
  }

  take(next: Drawing): void {
    this.dragged = null;
    if (this.history.take(next)) this.changed();
    else this.say("drawing");
  }

  /** Shows a drawing without keeping it: the middle of a drag. */
  drag(next: Drawing): void {
    this.dragged = next;
    this.found = null;
    this.say("drag");
  }

  takeRing(ring: Ring, key = this.active): void {
    const touched = withRing(this.drawing, key, ring);
    this.take({ ...touched, shapes: touched.shapes.map((s) => (s.key === key ? { ...s, taken: this.takenBy(s) } : s)) });
  }

  /** Puts a corner behind the one meant and means the new one. */
  add(at: Corner): void {
    if (!this.shape) return;
    const after = this.corner !== null && this.corner < this.ring.length ? this.corner : null;
    this.corner = after === null ? this.ring.length : after + 1;
    this.takeRing(insert(this.ring, after, cornerAt(at.e, at.n)));
  }

  moveCorner(east: number, north: number): void {
    const at = this.corner === null ? undefined : this.ring[this.corner];
    if (at && this.corner !== null) this.takeRing(replace(this.ring, this.corner, cornerAt(at.e + east, at.n + north)));
  }

  putCorner(index: number, at: Corner): void {
    this.corner = index;
    this.takeRing(replace(this.ring, index, cornerAt(at.e, at.n)));
  }

  removeCorner(): void {
    if (this.corner === null || this.corner >= this.ring.length) return;
    const [ring, at] = [this.ring, this.corner];
    this.corner = ring.length === 1 ? null : Math.max(0, at - 1);
    this.takeRing(remove(ring, at));
  }

  choose(key: string): void {
    if (!shapeOf(this.drawing, key)) return;
    this.active = key;
    this.corner = this.ring.length > 0 ? this.ring.length - 1 : null;
    this.say("choice");
  }

  select(index: number | null): void {
    this.corner = index;
    this.say("choice");
  }

  use(tool: Tool): void {
    this.tool = tool;
    this.picks = [];
    this.say("choice");
  }

  movePencil(to: Corner): void {
    this.pencil = to;
    this.say("pencil");
  }

  /** Puts a shape on the sheet at a place in the list and means it. */
  addShape(shape: Shape, at: number): void {
    const { shapes } = this.drawing;
    this.active = shape.key;
    this.corner = null;
    this.tool = "add";
    this.take({ ...this.drawing, shapes: [...shapes.slice(0, at), shape, ...shapes.slice(at)] });
  }

  /** Leaves what an older page had drawn; undo brings it back. */
  rebase(drawing: Drawing, stamp: string): void {
    this.stamp = stamp;
    this.corner = null;
    this.take(drawing);
  }

  /** Takes a hole off the sheet; an edge or a patch only loses its corners. */
  clear(key: string): void {
    const shape = shapeOf(this.drawing, key);
    if (!shape) return;
    this.corner = null;
    const shapes = shape.kind === "hole" ? this.drawing.shapes.filter((s) => s.key !== key) : this.drawing.shapes.map((s) => (s.key === key ? { ...s, ring: [], taken: null } : s));
    if (shape.kind === "hole") this.active = shapes[0]?.key ?? "";
    this.take({ ...this.drawing, shapes });
  }

  setPicture(picture: Picture | null): void { this.take({ ...this.drawing, picture }); }

  undo(): void { if (this.history.undo()) this.stepped(); }

  redo(): void { if (this.history.redo()) this.stepped(); }

  /** Marks the draft as sent, so that the page after saving can drop it. */
  sent(): void { this.keep(true); }

  /** Area inside a shape with the holes in it taken out is the server's to say; this is the ring alone. */
  figures(shape: Shape): { m2: number; m: number } { return { m2: areaM2(shape.ring), m: edgeM(shape.ring) }; }

  private takenBy(shape: Shape): Shape["taken"] {
    if (shape.taken?.by === "phoneWalk" || shape.taken?.by === "file") return shape.taken;
    return { by: this.drawing.picture ? "picture" : "tape", band: null };
  }

  private stepped(): void {
    this.dragged = null;
    if (!this.shape) this.active = this.drawing.shapes[0]?.key ?? "";
    if (this.corner !== null && this.corner >= this.ring.length) this.corner = this.ring.length > 0 ? this.ring.length - 1 : null;
    this.changed();
  }

  private changed(): void {
    this.found = null;
    this.keep(false);
    this.say("drawing");
  }

  private keep(sent: boolean): void {
    this.keeps = this.drafts.keep({ drawing: this.history.now, stamp: this.stamp, at: Date.now(), sent });
  }
}
