// Check marks, done steps and clocks, kept so that a phone that dies in the middle goes on where it was.

import type { Shelf } from "./day-store.js";

export class Steps {
  constructor(private readonly shelf: Shelf) {}

  private readonly prefix = `mark/${location.pathname}/`;

  async start(): Promise<void> {
    const marks = await this.shelf.marks(this.prefix);
    for (const box of document.querySelectorAll<HTMLInputElement>("input[data-check]")) {
      const key = `check/${box.dataset.check}`;
      box.checked = marks.get(key) === "1";
      box.addEventListener("change", () => void this.shelf.mark(this.prefix + key, box.checked ? "1" : null));
    }
    for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-done]")) {
      const step = link.dataset.done as string;
      if (marks.get(`done/${step}`) === "1") this.show(step);
      link.addEventListener("click", () => {
        this.show(step);
        void this.shelf.mark(`${this.prefix}done/${step}`, "1");
      });
    }
    for (const box of document.querySelectorAll<HTMLElement>("[data-timer]")) new Clock(box, this.shelf, `${this.prefix}clock/`, marks);
    window.addEventListener("hashchange", () => this.focus());
    if (!location.hash) this.goOn(marks);
  }

  private show(step: string): void {
    document.querySelector(`.todo [data-for="${CSS.escape(step)}"]`)?.classList.add("done");
  }

  /** The first button leads to the first step not done yet. */
  private goOn(marks: Map<string, string>): void {
    const steps = [...document.querySelectorAll<HTMLElement>("section[data-step]")];
    const next = steps.find((s) => marks.get(`done/${s.dataset.step}`) !== "1");
    const begin = document.querySelector<HTMLAnchorElement>("#steps .thumb .go");
    if (!begin || !next || next === steps[0]) return;
    begin.href = `#${next.id}`;
    begin.textContent = "Go on";
  }

  private focus(): void {
    const target = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
    if (!target?.classList.contains("step")) return;
    target.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
    if (matchMedia("(max-width: 47.99rem)").matches) scrollTo(0, 0);
  }
}

class Clock {
  private ends = 0;
  private ticking = 0;
  private readonly ms: number;
  private readonly shown: HTMLOutputElement;
  private readonly button: HTMLButtonElement;

  constructor(private readonly box: HTMLElement, private readonly shelf: Shelf, private readonly prefix: string, marks: Map<string, string>) {
    this.ms = Number(box.dataset.minutes) * 60_000;
    this.shown = box.querySelector("output") as HTMLOutputElement;
    this.button = box.querySelector("button") as HTMLButtonElement;
    this.button.addEventListener("click", () => (this.ends ? this.stop() : this.run(Date.now() + this.ms)));
    const ends = Number(marks.get(`clock/${box.dataset.timer}`) ?? "0");
    if (ends > 0) this.run(ends);
  }

  private run(ends: number): void {
    this.ends = ends;
    void this.shelf.mark(this.prefix + this.box.dataset.timer, String(ends));
    this.label("Stop");
    this.box.classList.add("running");
    this.ticking = window.setInterval(() => this.tick(), 500);
    this.tick();
  }

  private stop(): void {
    window.clearInterval(this.ticking);
    this.ends = 0;
    void this.shelf.mark(this.prefix + this.box.dataset.timer, null);
    this.box.classList.remove("running", "up");
    this.label("Start");
    this.write(this.ms);
  }

  private tick(): void {
    const left = this.ends - Date.now();
    if (left > 0) {
      this.write(left);
      return;
    }
    window.clearInterval(this.ticking);
    this.shown.textContent = "Time is up";
    this.box.classList.add("up");
    this.label("Again");
    if (left > -5_000) {
      navigator.vibrate?.([400, 200, 400]);
      beep();
    }
  }

  private write(ms: number): void {
    const seconds = Math.ceil(ms / 1000);
    this.shown.textContent = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  }

  private label(word: string): void {
    this.button.textContent = word;
    this.button.setAttribute("aria-label", `${this.box.querySelector(".clocked")?.textContent}: ${word.toLowerCase()} the clock`);
  }
}

function beep(): void {
  try {
    const sound = new AudioContext();
    const tone = sound.createOscillator();
    tone.connect(sound.destination);
    tone.frequency.value = 880;
    tone.start();
    tone.stop(sound.currentTime + 0.6);
    tone.onended = () => void sound.close();
  } catch {
    // No sound here: the screen says it.
  }
}

/** The measured height picks its row of the table; nothing is reckoned here. */
export function cuts(): void {
  for (const box of document.querySelectorAll<HTMLElement>(".cuts")) {
    const input = box.querySelector<HTMLInputElement>("[data-stands]");
    const unit = box.querySelector<HTMLSelectElement>(".field select");
    const said = box.querySelector<HTMLElement>(".cut");
    if (!input || !unit || !said) continue;
    const rows = [...box.querySelectorAll<HTMLTableRowElement>("tr[data-mm]")];
    const pick = (): void => {
      const mm = Number(input.value.replace(",", ".")) * Number(unit.value);
      const first = Number(rows[0]?.dataset.mm);
      const row = mm > 0 ? rows.find((r) => Number(r.dataset.mm) >= mm - 0.1) ?? rows[rows.length - 1] : undefined;
      said.textContent = !row ? "" : mm < first ? rows[0]?.cells[1]?.textContent ?? "" : row.cells[1]?.textContent ?? "";
      said.classList.toggle("beyond", row?.classList.contains("beyond") ?? false);
      for (const r of rows) r.classList.toggle("picked", r === row);
    };
    input.addEventListener("input", pick);
    unit.addEventListener("change", pick);
  }
}
