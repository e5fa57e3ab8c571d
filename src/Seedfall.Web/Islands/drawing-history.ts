// Undo, redo, and the draft that outlives the page until it is saved.

import { same, type Drawing } from "./drawing-model";

const MOST = 500;

export class History {
  private past: Drawing[] = [];
  private future: Drawing[] = [];

  constructor(public now: Drawing) {}

  get canUndo(): boolean { return this.past.length > 0; }

  get canRedo(): boolean { return this.future.length > 0; }

  take(next: Drawing): boolean {
    if (same(next, this.now)) return false;
    this.past.push(this.now);
    if (this.past.length > MOST) this.past.shift();
    this.future = [];
    this.now = next;
    return true;
  }

  undo(): boolean {
    const before = this.past.pop();
    if (!before) return false;
    this.future.push(this.now);
    this.now = before;
    return true;
  }

  redo(): boolean {
    const after = this.future.pop();
    if (!after) return false;
    this.past.push(this.now);
    this.now = after;
    return true;
  }
}

export interface Draft {
  readonly drawing: Drawing;
  /** Stamp of what was stored when the drawing was begun. */
  readonly stamp: string;
  readonly at: number;
  /** Sent to be saved; a page that says it was saved drops it. */
  readonly sent: boolean;
}

/** A private window may refuse storage: then the draft lives only as long as the page. */
export class DraftBox {
  constructor(private readonly name: string) {}

  read(): Draft | null {
    try {
      const text = localStorage.getItem(this.name);
      const draft = text === null ? null : (JSON.parse(text) as Draft);
      return draft !== null && Array.isArray(draft.drawing?.shapes) && typeof draft.stamp === "string" ? draft : null;
    } catch {
      return null;
    }
  }

  /** False where the browser keeps nothing. */
  keep(draft: Draft): boolean {
    try {
      localStorage.setItem(this.name, JSON.stringify(draft));
      return true;
    } catch {
      return false;
    }
  }

  drop(): void {
    try {
      localStorage.removeItem(this.name);
    } catch {
      // Nothing was kept.
    }
  }
}
