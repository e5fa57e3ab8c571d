// The day sheet's script: one step at a time, marks that last, what is written waiting for a signal. The page reads whole without it.

import { cuts, Steps } from "./day-steps.js";
import { Forms } from "./day-forms.js";
import { Keep } from "./day-keep.js";
import { Photos } from "./day-photos.js";
import { openShelf, type Item } from "./day-store.js";
import { voice } from "./day-voice.js";
import { Waiting } from "./day-waiting.js";
import { lawnNow, lawnToday, type SheetFacts } from "./day-clock.js";

const root = document.getElementById("sheet");
if (root) void start(root);

async function start(root: HTMLElement): Promise<void> {
  const data = root.dataset;
  const sheet: SheetFacts | null = data.lawn
    ? { lawn: data.lawn, name: data.name ?? "", date: data.date ?? "", zone: data.zone ?? "UTC", still: data.still ?? "", version: data.version ?? "" }
    : null;
  const shelf = await openShelf();
  const waiting = new Waiting(shelf, (item) => toForm(item));
  const tell = (): void => void waiting.go();
  const keep = new Keep(shelf, sheet);
  if (!sheet) {
    await Promise.all([waiting.go(), keep.start()]);
    return;
  }

  const [forms, photos] = [new Forms(shelf, sheet, tell), new Photos(shelf, sheet, tell)];
  cuts();
  voice();
  dayGone(sheet);
  asKept();
  const written = document.querySelectorAll<HTMLFormElement>("form.record");
  await Promise.all([new Steps(shelf).start(), ...[...written].map((form) => forms.start(form))]);
  for (const input of document.querySelectorAll<HTMLInputElement>("input[data-spot]")) photos.start(input);
  await mendAsked();
  root.dataset.ready = "";
  await Promise.all([waiting.go(), keep.start()]);

  /** Back to the form something was written in, on whichever sheet that is. */
  function toForm(item: Item): void {
    if (item.page !== location.pathname) {
      location.assign(`${item.page}#mend-${item.id}`);
      return;
    }
    const form = [...written].find((f) => f.dataset.record === item.record);
    if (!form) return;
    location.hash = `#${form.closest("section")?.id}`;
    forms.mend(form, item);
  }

  async function mendAsked(): Promise<void> {
    const id = /^#mend-([0-9a-f-]{36})$/.exec(location.hash)?.[1];
    const item = id ? (await shelf.items()).find((i) => i.id === id) : undefined;
    if (item) toForm(item);
  }
}

/** A sheet that comes from this phone says of when it is, on every step. */
function asKept(): void {
  const [at, said] = [Number(document.documentElement.dataset.kept ?? "0"), document.getElementById("as-kept")];
  if (at > 0 && said) said.textContent = `As kept on ${new Date(at).toLocaleString("en-US", { weekday: "short", month: "short", day: "numeric", hour: "numeric", minute: "2-digit" })}`;
}

/** On the sheet of a day gone by, the time is that day's unless it is changed; the page says which day it is now. */
function dayGone(sheet: SheetFacts): void {
  const today = lawnToday(sheet);
  if (sheet.date >= today) return;
  for (const input of document.querySelectorAll<HTMLInputElement>("input[data-path=at]")) if (!input.value) input.value = `${sheet.date}${lawnNow(sheet).slice(10, 16)}`;
}
