// The plain sign of what is not sent yet, on every step, and the list behind it.

import { send, type Heard } from "./day-send.js";
import type { Entry, Item, Shelf } from "./day-store.js";

export class Waiting implements Heard {
  constructor(private readonly shelf: Shelf, private readonly mend: (item: Item) => void) {
    document.getElementById("send-now")?.addEventListener("click", () => void this.go());
    document.getElementById("save-queue")?.addEventListener("click", () => void this.save());
    const lasting = document.getElementById("lasting");
    if (lasting) lasting.hidden = shelf.lasting;
    shelf.told = () => void this.show();
    window.addEventListener("online", () => void this.go());
    window.addEventListener("offline", () => void this.show());
    document.addEventListener("visibilitychange", () => { if (document.visibilityState === "visible") void this.go(); });
  }

  async go(): Promise<void> {
    await this.show();
    await send(this.shelf, this);
    await this.show();
  }

  changed(): void { void this.show(); }

  clock(words: string | null): void {
    const off = document.getElementById("clock-off");
    if (!off) return;
    off.hidden = words === null;
    off.textContent = words ? `Look at this phone's clock: ${words.replace(" when it was delivered", "")}. Entries keep the phone's time, and say so.` : "";
  }

  async show(): Promise<void> {
    const items = await this.shelf.items();
    this.sign(items);
    const list = document.getElementById("queue");
    list?.replaceChildren(...items.map((item) => this.line(item)));
    const none = document.getElementById("queue-none");
    if (none) none.hidden = items.length > 0;
    await this.beside(items);
  }

  private sign(items: Item[]): void {
    const link = document.querySelector<HTMLElement>("#sent a");
    if (!link) return;
    const [waiting, parked] = [items.filter((i) => i.state === "waiting").length, items.filter((i) => i.state === "parked").length];
    const words = [
      waiting > 0 ? `${waiting} waiting to send` : "",
      parked > 0 ? `${parked} refused: look` : "",
    ].filter(Boolean).join(", ") || "All sent";
    const { lasting, full } = this.shelf;
    link.textContent = `${navigator.onLine ? "" : "No signal. "}${words}${lasting ? "" : ". Nothing is kept"}${full ? ". Storage full" : ""}`;
    const noRoom = document.getElementById("no-room");
    if (noRoom) noRoom.hidden = !full;
    link.closest(".bar")?.classList.toggle("parked", parked > 0);
    link.closest(".bar")?.classList.toggle("waits", waiting > 0 || full);
  }

  private line(item: Item): HTMLLIElement {
    const li = document.createElement("li");
    li.dataset.id = item.id;
    li.className = item.state;
    const what = document.createElement("p");
    what.textContent = `${item.label}. ${item.lawnName}, ${item.capturedAt.slice(0, 10)}`;
    li.append(what);
    for (const reason of item.why) {
      const why = document.createElement("p");
      why.className = "problem";
      why.textContent = reason;
      li.append(why);
    }
    const buttons = document.createElement("p");
    buttons.className = "mend";
    if (item.state === "parked") {
      if (item.kind === "entry") buttons.append(this.button("Change it", () => this.mend(item)));
      buttons.append(this.button("Send again", () => void this.shelf.change({ ...item, state: "waiting", why: [] }).then(() => this.go())));
    }
    if (item.blob) buttons.append(this.button("Save the picture", () => download(item.blob as Blob, `${item.capturedAt.slice(0, 10)}-${item.id}.jpg`)));
    if (buttons.childElementCount > 0) li.append(buttons);
    return li;
  }

  /** Under each form and picture what was written from it. */
  private async beside(items: Item[]): Promise<void> {
    const sent = await this.shelf.marks(`sent/${location.pathname}/`);
    const lines = new Map<string, string[]>();
    const add = (record: string, text: string): void => void lines.set(record, [...lines.get(record) ?? [], text]);
    for (const [key, value] of sent) add(key.slice(0, key.lastIndexOf("/")), `${(JSON.parse(value) as { label: string }).label}: sent`);
    for (const item of items.filter((i) => i.page === location.pathname)) add(item.record, `${item.label}: ${item.state === "parked" ? `refused: ${item.why.join(" ")}` : "waiting to send"}`);
    for (const form of document.querySelectorAll<HTMLFormElement>("form.record")) {
      const mine = lines.get(form.dataset.record ?? "") ?? [];
      const list = form.querySelector(".mine");
      list?.replaceChildren(...mine.map((text) => Object.assign(document.createElement("li"), { textContent: text })));
      if (mine.length > 0 && form.dataset.id === undefined && form.dataset.more === undefined) form.classList.add("done");
      if (mine.length > 0 && list) list.append(this.another(form));
      const fold = form.closest<HTMLDetailsElement>("details.aside-note");
      if (mine.length > 0 && fold) fold.open = true;
    }
    for (const input of document.querySelectorAll<HTMLInputElement>("input[data-spot]")) {
      const said = input.parentElement?.querySelector(".mine");
      const mine = lines.get(`spot/${input.dataset.spot}`) ?? [];
      if (said && mine.length > 0) said.textContent = mine.join("; ");
    }
  }

  private another(form: HTMLFormElement): HTMLLIElement {
    const li = document.createElement("li");
    const born = Date.now();
    // A second tap meant for the first button must not open the form again.
    li.append(this.button("Write another", () => {
      if (Date.now() - born < 700) return;
      form.dataset.more = "";
      form.classList.remove("done");
    }));
    li.className = "more";
    return li;
  }

  private button(text: string, act: () => void): HTMLButtonElement {
    const button = Object.assign(document.createElement("button"), { type: "button", textContent: text });
    button.addEventListener("click", act);
    return button;
  }

  /** The entries that wait, as log files, one a lawn; pictures are saved one by one. */
  async save(): Promise<void> {
    const entries = (await this.shelf.items()).filter((i) => i.kind === "entry");
    for (const lawn of new Set(entries.map((i) => i.lawnId))) {
      const file = { format: "seedfall-log/1", lawn, entries: entries.filter((i) => i.lawnId === lawn).map((i) => i.payload as Entry) };
      download(new Blob([JSON.stringify(file, null, 2)], { type: "application/json" }), `${lawn}.waiting.log.json`);
    }
  }
}

export function download(blob: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
