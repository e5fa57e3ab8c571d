// Delivers what waits, in order. What arrives leaves the outbox; what is refused is parked with the reason; all else stays.

import { clockAhead, clockWords } from "./day-clock.js";
import type { Entry, Item, PhotoNote, Shelf } from "./day-store.js";

const BATCH = 40;
const HEADERS = { "X-Seedfall": "day-sheet" };

interface Result { id: string; result: "added" | "known" | "refused"; problems: string[] }

/** What the page hears of it. */
export interface Heard {
  changed(): void;
  clock(words: string | null): void;
}

let running = false;
let again = false;

export async function send(shelf: Shelf, heard: Heard): Promise<void> {
  if (running) {
    again = true;
    return;
  }
  running = true;
  try {
    do {
      again = false;
      await alone(() => deliver(shelf, heard));
    } while (again);
  } finally {
    running = false;
  }
}

/** One window at a time, where the browser can say so; the server takes a second delivery for what it is in any case. */
async function alone(work: () => Promise<void>): Promise<void> {
  if (navigator.locks) await navigator.locks.request("seedfall-send", work);
  else await work();
}

async function deliver(shelf: Shelf, heard: Heard): Promise<void> {
  if ((await shelf.items()).every((i) => i.state !== "waiting")) return;
  const ahead = await clockAhead();
  if (ahead === null) return;
  heard.clock(clockWords(ahead));
  for (;;) {
    const waiting = (await shelf.items()).filter((i) => i.state === "waiting");
    const first = waiting[0];
    if (!first) return;
    const rest = waiting.findIndex((i) => i.kind !== "entry" || i.lawnId !== first.lawnId);
    const batch = first.kind === "entry" ? waiting.slice(0, Math.min(BATCH, rest < 0 ? BATCH : rest)) : [first];
    for (const item of batch) await seal(shelf, item, ahead);
    const went = first.kind === "entry" ? await entries(shelf, batch) : await photo(shelf, first);
    heard.changed();
    if (!went) return;
  }
}

/** The words of an entry are final before it is sent the first time, so that a second delivery is the same to the letter. */
async function seal(shelf: Shelf, item: Item, ahead: number): Promise<void> {
  if (item.sealed) return;
  const words = clockWords(ahead);
  if (words && item.kind === "entry") {
    const entry = item.payload as Entry;
    entry.remark = entry.remark ? `${entry.remark} (${words})` : words;
  }
  item.sealed = true;
  await shelf.change(item);
}

async function entries(shelf: Shelf, batch: Item[]): Promise<boolean> {
  const answer = await post(`/api/lawns/${batch[0]?.lawnId}/log`, "application/json", JSON.stringify(batch.map((i) => i.payload)));
  if (!answer || stays(answer.status)) return false;
  const body = await json<{ results?: Result[]; problems?: string[] }>(answer);
  for (const item of batch) {
    const result = body?.results?.find((r) => r.id === item.id);
    if (result && result.result !== "refused") await arrived(shelf, item);
    else if (result || answer.status >= 400) await park(shelf, item, result?.problems ?? body?.problems ?? [`the server refused it (${answer.status})`]);
    else return false;
  }
  return true;
}

async function photo(shelf: Shelf, item: Item): Promise<boolean> {
  const note = item.payload as PhotoNote;
  if (!item.blob) {
    await park(shelf, item, ["the picture itself is no longer on this phone"]);
    return true;
  }
  const answer = await post(`/api/lawns/${item.lawnId}/photos/${item.id}?spot=${note.spot}&taken=${note.taken}`, note.type, item.blob);
  if (!answer || stays(answer.status)) return false;
  if (answer.ok) await arrived(shelf, item);
  else await park(shelf, item, (await json<{ problems?: string[] }>(answer))?.problems ?? [`the server refused it (${answer.status})`]);
  return true;
}

/** Not refused, only not taken now: signing in, too many at once, a fault on the other side. */
const stays = (status: number): boolean => status >= 500 || status === 401 || status === 408 || status === 429;

async function post(address: string, type: string, body: BodyInit): Promise<Response | null> {
  try {
    return await fetch(address, { method: "POST", headers: { ...HEADERS, "Content-Type": type }, body, cache: "no-store", redirect: "error" });
  } catch {
    return null;
  }
}

async function json<T>(answer: Response): Promise<T | null> {
  try {
    return await answer.json() as T;
  } catch {
    return null;
  }
}

async function arrived(shelf: Shelf, item: Item): Promise<void> {
  const note = (): Promise<boolean> => shelf.mark(`sent/${item.page}/${item.record}/${item.id}`, JSON.stringify({ label: item.label, at: item.capturedAt }));
  const noted = await note();
  await shelf.drop(item.id);
  // Where storage is full, what left makes room for the note.
  if (!noted) await note();
}

async function park(shelf: Shelf, item: Item, why: string[]): Promise<void> {
  await shelf.change({ ...item, state: "parked", why });
}
