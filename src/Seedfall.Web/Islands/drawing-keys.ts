// The keyboard does on the sheet what a pointer does.

import { distance, type Corner } from "./drawing-model";
import type { Session } from "./drawing-session";
import type { Sheet } from "./drawing-sheet";
import { METERS_PER_FOOT } from "./drawing-text";

const ARROWS: Record<string, readonly [number, number]> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

export function listen(box: HTMLElement, session: Session, sheet: Sheet): void {
  const fine = session.system === "us" ? METERS_PER_FOOT : 0.25;
  const snap = (at: Corner): Corner => {
    const reach = 10 * sheet.metersPerPixel;
    const near = session.drawing.shapes.flatMap((s) => s.ring).map((c) => ({ c, d: distance(c, at) })).filter((c) => c.d < reach).sort((a, b) => a.d - b.d)[0];
    return near && session.tool === "add" && !session.ring.some((c) => distance(c, near.c) < 0.001) ? near.c : at;
  };
  const pencil = (): Corner => session.pencil ?? sheet.center;

  const arrow = ([east, north]: readonly [number, number], coarse: boolean): void => {
    const step = fine * (coarse ? 10 : 1);
    if (session.tool === "move" && session.corner !== null) {
      session.moveCorner(east * step, north * step);
      const at = session.ring[session.corner];
      if (at) sheet.keepInSight(at);
    } else if (session.tool === "picture" && session.drawing.picture) {
      const p = session.drawing.picture;
      session.setPicture({ ...p, east: p.east + east * step, north: p.north + north * step });
    } else {
      const to = { e: pencil().e + east * step, n: pencil().n + north * step };
      session.movePencil(to);
      sheet.keepInSight(to);
    }
  };

  const choose = (by: number): void => {
    const count = session.ring.length;
    if (count === 0) return;
    session.select(((session.corner ?? (by > 0 ? -1 : 0)) + by + count) % count);
    const at = session.ring[session.corner!];
    if (at) sheet.keepInSight(at);
  };

  const press = (): void => {
    if (session.tool === "add") session.add(snap(pencil()));
    else if (session.tool === "scale") { session.picks = session.picks.length === 2 ? [pencil()] : [...session.picks, pencil()]; session.say("choice"); }
  };

  const between = (): void => {
    const { ring, corner } = session;
    const [a, b] = [ring[corner ?? ring.length - 1], ring[((corner ?? ring.length - 1) + 1) % Math.max(1, ring.length)]];
    if (a && b && ring.length > 1) session.add({ e: (a.e + b.e) / 2, n: (a.n + b.n) / 2 });
  };

  const plain: Record<string, () => void> = {
    Enter: press, " ": press, Insert: between, Delete: () => session.removeCorner(), Backspace: () => session.removeCorner(),
    PageDown: () => choose(1), PageUp: () => choose(-1), Home: () => session.select(session.ring.length > 0 ? 0 : null), End: () => session.select(session.ring.length > 0 ? session.ring.length - 1 : null),
    "+": () => sheet.zoom(1.5), "=": () => sheet.zoom(1.5), "-": () => sheet.zoom(1 / 1.5), "0": () => sheet.fit(),
    a: () => session.use("add"), m: () => session.use("move"), Escape: () => { session.use("add"); session.select(null); },
  };

  box.addEventListener("keydown", (e) => {
    if (e.altKey) return;
    if (e.ctrlKey || e.metaKey) {
      const key = e.key.toLowerCase();
      if (key === "z" && !e.shiftKey) session.undo();
      else if (key === "y" || (key === "z" && e.shiftKey)) session.redo();
      else return;
      e.preventDefault();
      return;
    }
    const way = ARROWS[e.key];
    if (way) arrow(way, e.shiftKey);
    else if (plain[e.key]) plain[e.key]!();
    else return;
    e.preventDefault();
  });
  box.addEventListener("focus", () => { if (!session.pencil && box.matches(":focus-visible")) session.movePencil(sheet.center); else sheet.redraw(); });
  box.addEventListener("blur", () => sheet.redraw());
  document.addEventListener("keydown", (e) => {
    // Undo works wherever no field is being typed in.
    if (e.defaultPrevented || !(e.ctrlKey || e.metaKey) || e.altKey || e.target instanceof HTMLInputElement || e.target instanceof HTMLTextAreaElement) return;
    const key = e.key.toLowerCase();
    if (key === "z" && !e.shiftKey) session.undo();
    else if (key === "y" || (key === "z" && e.shiftKey)) session.redo();
    else return;
    e.preventDefault();
  });
}
