// Keeping today's and tomorrow's sheets on this phone, and forgetting them.

import { lawnToday, type SheetFacts } from "./day-clock.js";
import type { Shelf } from "./day-store.js";

export interface Kept { path: string; lawn: string; name: string; date: string; until: number }

const CHOSEN = "keep/";
const NOT_ALL = "The phone's storage is full: not all of it could be kept. Make room and try again.";

const nextDay = (iso: string): string => new Date(Date.parse(`${iso}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);

const when = (ms: number): string => new Date(ms).toLocaleDateString("en-US", { weekday: "short", month: "short", day: "numeric" });

export class Keep {
  constructor(private readonly shelf: Shelf, private readonly sheet: SheetFacts | null) {}

  async start(): Promise<void> {
    const chosen = await this.shelf.marks(CHOSEN);
    document.getElementById("keep")?.addEventListener("click", () => void this.choose());
    document.getElementById("forget")?.addEventListener("click", () => void this.forget());
    if (!("serviceWorker" in navigator)) {
      this.say("This browser cannot keep sheets here: it needs an address that begins with https, or this very machine.");
      return;
    }
    if (chosen.size === 0 && !(await navigator.serviceWorker.getRegistration("/"))) return;
    await this.worker();
    const full = this.sheet !== null && chosen.has(this.sheet.lawn) && await this.keep();
    await this.show();
    if (full) this.add(NOT_ALL);
  }

  private async choose(): Promise<void> {
    if (!this.sheet) return;
    const noted = await this.shelf.mark(CHOSEN + this.sheet.lawn, this.sheet.name);
    const lasting = await navigator.storage?.persist?.() ?? false;
    if (!(await this.worker())) {
      this.say("This sheet could not be kept: the phone's storage is full, or the signal went. Make room and try again.");
      return;
    }
    const full = await this.keep();
    await this.show();
    if (full || !noted) this.add(NOT_ALL);
    else if (!lasting) this.add("The browser may clear it when the phone runs short of room.");
  }

  /** Today and tomorrow by the lawn's clock, and the sheet that is open. True where there was no room for all of it. */
  private async keep(): Promise<boolean> {
    if (!this.sheet) return false;
    const today = lawnToday(this.sheet);
    const dates = [...new Set([today, nextDay(today), this.sheet.date])];
    const heard = await ask<{ full: boolean }>({ kind: "keep", lawn: this.sheet.lawn, name: this.sheet.name, still: this.sheet.still, dates });
    return heard?.full ?? false;
  }

  private async show(): Promise<void> {
    const kept = await ask<Kept[]>({ kind: "list" }) ?? [];
    const mine = kept.filter((k) => k.lawn === this.sheet?.lawn);
    if (mine.length > 0) this.say(`Kept on this phone: ${mine.map((k) => when(Date.parse(`${k.date}T12:00:00`))).join(", ")}, until ${when(Math.min(...mine.map((k) => k.until)))}.`);
    const list = document.getElementById("kept-list");
    list?.replaceChildren(...kept.map((k) => {
      const [li, link] = [document.createElement("li"), document.createElement("a")];
      link.href = k.path;
      link.textContent = `${k.name}, ${when(Date.parse(`${k.date}T12:00:00`))}`;
      li.append(link, ` kept until ${when(k.until)}`);
      return li;
    }));
    const none = document.getElementById("kept-none");
    if (none) none.hidden = kept.length > 0;
    const room = document.getElementById("room");
    const { quota, usage } = await navigator.storage?.estimate?.() ?? {};
    if (room && quota !== undefined && usage !== undefined) room.textContent = `This browser uses ${mb(usage)} here of ${mb(quota)} it may.`;
  }

  /** False where it could not be set up. */
  private async worker(): Promise<boolean> {
    const registration = await navigator.serviceWorker.register("/sw.js", { updateViaCache: "none" });
    const fresh = (): void => {
      if (registration.waiting && navigator.serviceWorker.controller) this.offer(registration);
    };
    registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", fresh));
    fresh();
    if (registration.active) return true;
    const coming = registration.installing;
    const failed = new Promise<boolean>((done) => coming?.addEventListener("statechange", () => { if (coming.state === "redundant") done(false); }));
    return Promise.race([navigator.serviceWorker.ready.then(() => true), failed]);
  }

  /** Only on a tap: a sheet must not change under wet hands. */
  private offer(registration: ServiceWorkerRegistration): void {
    const fresh = document.getElementById("fresh");
    if (!fresh || !fresh.hidden) return;
    fresh.hidden = false;
    fresh.querySelector("button")?.addEventListener("click", () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      registration.waiting?.postMessage({ kind: "take-over" });
    });
  }

  private async forget(): Promise<void> {
    const [warns, button] = [document.getElementById("forget-warns"), document.getElementById("forget")];
    const unsent = (await this.shelf.items()).length;
    if (unsent > 0 && button && button.dataset.sure === undefined) {
      button.dataset.sure = "";
      button.textContent = `Forget, and lose ${unsent} not sent`;
      if (warns) warns.textContent = `${unsent === 1 ? "One thing" : `${unsent} things`} written here ${unsent === 1 ? "has" : "have"} not been delivered and would be lost. Send them, or save them as a file, first.`;
      return;
    }
    if ("serviceWorker" in navigator) {
      for (const registration of await navigator.serviceWorker.getRegistrations()) await registration.unregister();
    }
    for (const name of "caches" in window ? await caches.keys() : []) if (name.startsWith("seedfall-")) await caches.delete(name);
    await this.shelf.wipe();
    location.assign("/day");
  }

  private add(words: string): void {
    const said = document.getElementById("kept");
    if (said) said.textContent += ` ${words}`;
  }

  private say(words: string): void {
    const said = document.getElementById("kept");
    if (said) said.textContent = words;
  }
}

const mb = (bytes: number): string => bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${Math.round(bytes / 1e6).toLocaleString("en-US")} MB`;

async function ask<T>(message: object): Promise<T | null> {
  const worker = (await navigator.serviceWorker.ready).active;
  if (!worker) return null;
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = (e: MessageEvent<T>) => done(e.data);
    worker.postMessage(message, [port2]);
  });
}
