// The forms at a step's end: what is written becomes a log entry in the outbox, once, however often the button is tapped.

import { fromWall, lawnNow, lawnToday, newId, type SheetFacts } from "./day-clock.js";
import { NO_ROOM, isFull, type Entry, type Item, type Shelf } from "./day-store.js";

type Tree = { [key: string]: unknown };

export interface Draft { id: string; values: Record<string, string> }

const LOOSE = "The phone's storage is full: what you type here is lost when this page closes.";

export class Mistake extends Error {
  constructor(readonly field: HTMLElement, message: string) { super(message); }
}

const NUMBER = /^-?\d+([.]\d+)?$/;

export function values(form: HTMLFormElement): Record<string, string> {
  const held: Record<string, string> = {};
  for (const e of form.elements) if ((e instanceof HTMLInputElement || e instanceof HTMLSelectElement) && e.name) held[e.name] = e.value;
  return held;
}

export function fill(form: HTMLFormElement, held: Record<string, string>): void {
  for (const [name, value] of Object.entries(held)) {
    const e = form.elements.namedItem(name);
    if (e instanceof HTMLInputElement || e instanceof HTMLSelectElement) e.value = value;
  }
}

function place(tree: Tree, path: string, value: unknown): void {
  const steps = path.split(".");
  const last = steps.pop() as string;
  let at = tree;
  for (const step of steps) at = (at[step] ??= {}) as Tree;
  if (value === null) delete at[last];
  else at[last] = value;
}

function named(input: HTMLElement): string {
  return document.querySelector(`label[for="${input.id}"]`)?.textContent?.trim() ?? "This";
}

/** The entry a form describes. Throws a Mistake that names the field. */
export function entryOf(form: HTMLFormElement, sheet: SheetFacts, id: string): Entry {
  const entry = JSON.parse(form.dataset.entry ?? "{}") as Tree;
  let scale = 1;
  for (const input of form.querySelectorAll<HTMLInputElement | HTMLSelectElement>("[data-path]")) {
    const path = input.dataset.path as string;
    const text = input.value.trim();
    if (text === "") {
      if (input.dataset.needed !== undefined) throw new Mistake(input, `${named(input)} is needed.`);
      if (path !== "at") place(entry, path, null);
    } else if (input.dataset.instant !== undefined) {
      place(entry, path, fromWall(sheet.zone, text));
    } else if (input instanceof HTMLSelectElement || input.inputMode !== "decimal") {
      place(entry, path, text);
    } else {
      const number = text.replace(",", ".");
      if (!NUMBER.test(number)) throw new Mistake(input, `${named(input)}: a number is needed, like 2.5.`);
      const units = form.elements.namedItem(`${input.name}.unit`);
      const unit = units instanceof HTMLSelectElement ? units.value : input.dataset.unit;
      place(entry, path, `${number} ${unit}`);
      if (input.dataset.scales !== undefined) scale = ratio(input, units, Number(number));
    }
  }
  if (form.querySelector<HTMLInputElement>("[data-path=at]")?.value === "") place(entry, "at", whenWritten(sheet));
  scaleActives(entry, scale);
  entry.id = id;
  return entry as unknown as Entry;
}

/** Now; on the sheet of a day gone by, that day. */
function whenWritten(sheet: SheetFacts): string {
  const now = lawnNow(sheet);
  return sheet.date && sheet.date < lawnToday(sheet) ? fromWall(sheet.zone, `${sheet.date}${now.slice(10, 19)}`) : now;
}

/** What was really put on over what was planned. */
function ratio(input: HTMLInputElement, units: unknown, number: number): number {
  const per = (option: HTMLOptionElement | undefined): number => Number(option?.dataset.per ?? "1");
  const planned = Number(input.defaultValue);
  if (!(units instanceof HTMLSelectElement)) return planned > 0 ? number / planned : 1;
  const plannedCanonical = planned / per(units.options[0]);
  return plannedCanonical > 0 ? number / per(units.selectedOptions[0]) / plannedCanonical : 1;
}

function scaleActives(entry: Tree, scale: number): void {
  const applied = (entry.what as Tree).applied as { actives?: { amount: string }[] } | undefined;
  for (const active of scale === 1 ? [] : applied?.actives ?? []) {
    const space = active.amount.indexOf(" ");
    active.amount = `${Number((Number(active.amount.slice(0, space)) * scale).toPrecision(12))}${active.amount.slice(space)}`;
  }
}

/** How an entry reads in the list of what waits. */
function labelOf(form: HTMLFormElement, entry: Entry): string {
  const main = form.querySelector<HTMLInputElement>("[data-needed]");
  const units = main ? form.elements.namedItem(`${main.name}.unit`) : null;
  const unit = units instanceof HTMLSelectElement ? units.selectedOptions[0]?.textContent : main?.dataset.unit;
  return [form.dataset.label, main?.value ? `${main.value}${unit ? ` ${unit}` : ""}` : "", entry.at.slice(11, 16)].filter(Boolean).join(", ");
}

export class Forms {
  constructor(private readonly shelf: Shelf, private readonly sheet: SheetFacts, private readonly written: () => void) {}

  private readonly key = (form: HTMLFormElement): string => `draft/${location.pathname}/${form.dataset.record}`;

  async start(form: HTMLFormElement): Promise<void> {
    const draft = (await this.shelf.marks(this.key(form))).get("");
    if (draft) {
      const held = JSON.parse(draft) as Draft;
      form.dataset.id = held.id;
      fill(form, held.values);
    }
    form.addEventListener("input", () => void this.keepDraft(form));
    form.addEventListener("submit", (e) => { e.preventDefault(); void this.write(form); });
    for (const button of form.querySelectorAll<HTMLButtonElement>("button[data-now]")) {
      button.addEventListener("click", () => {
        const input = document.getElementById(button.dataset.now as string) as HTMLInputElement;
        input.value = lawnNow(this.sheet).slice(0, 16);
        void this.keepDraft(form);
      });
    }
  }

  /** Puts a parked entry back into its form. */
  mend(form: HTMLFormElement, item: Item): void {
    form.dataset.id = item.id;
    form.classList.remove("done");
    fill(form, item.values);
    this.say(form, item.why.join(" "));
    form.scrollIntoView();
  }

  private async keepDraft(form: HTMLFormElement): Promise<void> {
    form.dataset.id ??= newId();
    const kept = await this.shelf.mark(this.key(form), JSON.stringify({ id: form.dataset.id, values: values(form) } satisfies Draft));
    const said = form.querySelector<HTMLElement>(".problem");
    if (!kept && said?.hidden) this.say(form, LOOSE);
    else if (kept && said?.textContent === LOOSE) this.say(form, "");
  }

  private async write(form: HTMLFormElement): Promise<void> {
    if (form.dataset.busy !== undefined || form.classList.contains("done")) return;
    form.dataset.busy = "";
    try {
      const id = form.dataset.id ??= newId();
      const entry = entryOf(form, this.sheet, id);
      await this.shelf.put({
        id, lawnId: this.sheet.lawn, lawnName: this.sheet.name, kind: "entry", payload: entry, capturedAt: lawnNow(this.sheet), appVersion: this.sheet.version,
        state: "waiting", why: [], sealed: false, label: labelOf(form, entry), page: location.pathname, record: form.dataset.record ?? "", values: values(form),
      });
      await this.shelf.mark(this.key(form), null);
      delete form.dataset.id;
      delete form.dataset.more;
      form.classList.add("done");
      this.say(form, "");
      this.written();
    } catch (error) {
      if (error instanceof Mistake) error.field.focus();
      this.say(form, error instanceof Mistake ? error.message
        : isFull(error) ? `The phone's storage is full: this is not kept, nor sent. ${NO_ROOM}, then tap again. What you typed stays while this page is open.`
        : "This could not be kept on the phone. What you typed stays here: tap again.");
    } finally {
      delete form.dataset.busy;
    }
  }

  private say(form: HTMLFormElement, words: string): void {
    const problem = form.querySelector<HTMLElement>(".problem");
    if (!problem) return;
    problem.textContent = words;
    problem.hidden = words === "";
  }
}
