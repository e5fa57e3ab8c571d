// What the server put into the page for this script.

import type { Errors } from "./drawing-band";
import type { Drawing } from "./drawing-model";
import type { System } from "./drawing-text";

export interface PageData {
  readonly lawn: string;
  readonly stamp: string;
  readonly source: "stored" | "saved" | "posted" | "imported";
  readonly system: System;
  /** The lawn's place: where a walk's sheet is laid when it has no zero point yet. */
  readonly place: { readonly lat: number; readonly lon: number };
  readonly kinds: readonly { readonly key: string; readonly words: string }[];
  /** How far off areas are by the way they were measured: meters for each corner, a share for the whole. */
  readonly errors: Errors;
  readonly drawing: Drawing;
  /** What is stored, where something else is shown. */
  readonly stored: Drawing | null;
}

export function readPage(): PageData | null {
  const text = document.getElementById("drawing-data")?.textContent;
  return text ? (JSON.parse(text) as PageData) : null;
}
