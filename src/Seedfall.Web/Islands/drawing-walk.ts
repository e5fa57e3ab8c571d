// Walking the edge: the phone's positions with what it says of their accuracy, kept on the phone until they are an outline.

import { areaM2 } from "./drawing-geometry";
import { mm, type Corner, type Origin, type Ring } from "./drawing-model";
import { toGround } from "./drawing-plane";
import type { Session } from "./drawing-session";
import type { Sheet } from "./drawing-sheet";
import { areaText, lengthText } from "./drawing-text";
import { make, need, Voice } from "./drawing-words";

/** Latitude, longitude, accuracy in meters, unix milliseconds. */
type Fix = readonly [number, number, number, number];

interface Answer { refused: string | null; ring: [number, number][] | null; origin: [number, number] | null; band: number; kept: number; remarks: string[] }

/** A silence longer than this means the phone slept. */
const GAP_MS = 15_000;

export class Walk {
  private fixes: Fix[] = [];
  private watch: number | null = null;
  private lock: WakeLockSentinel | null = null;
  private kept = 0;
  private readonly box = need("walk-body", HTMLDivElement);
  private readonly state = make("p", "", { class: "walk-state" });
  private readonly said = new Voice(this.box.appendChild(make("p", "", { class: "hint", role: "status" })));
  private readonly start = this.button("Start walking", () => this.go());
  private readonly done = this.button("Make it the outline", () => void this.finish());
  private readonly drop = this.button("Throw this walk away", () => this.throwAway(), "stop");

  constructor(private readonly session: Session, private readonly sheet: () => Sheet, private readonly lawn: string) {
    this.fixes = this.read();
    const how = make("p", "Walk once round the edge with the phone held out in front of you, back to where you began. Keep the screen on. Under trees and beside walls a phone is off by many steps; the range says so.", { class: "hint" });
    const row = make("div", "", { class: "walk-buttons" });
    row.append(this.start, this.done, this.drop);
    this.box.prepend(how, this.state, row);
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") this.keep(true);
      else if (this.watch !== null) void this.stayAwake();
    });
    window.addEventListener("pagehide", () => this.keep(true));
    session.onChange((change) => { if (change === "choice") this.show(); });
    this.show();
    if (this.fixes.length > 0) need("walk", HTMLDetailsElement).open = true;
  }

  /** The walk on the sheet. */
  track(): (Corner & { readonly off: number })[] {
    const origin = this.origin();
    return origin ? this.fixes.map(([lat, lon, off]) => ({ ...toGround(origin, lat, lon), off })) : [];
  }

  private origin(): Origin | null {
    const first = this.fixes[0];
    return this.session.drawing.origin ?? (first ? { lat: first[0], lon: first[1] } : null);
  }

  private button(text: string, press: () => void, kind = ""): HTMLButtonElement {
    const b = make("button", text, { type: "button", ...(kind ? { class: kind } : {}) });
    b.addEventListener("click", press);
    return b;
  }

  private show(): void {
    const walking = this.watch !== null;
    this.start.textContent = walking ? "Stop for now" : this.fixes.length > 0 ? "Walk on" : `Start walking round: ${this.session.shape?.name ?? ""}`;
    this.done.hidden = this.fixes.length < 8;
    this.done.textContent = `Make it the outline of: ${this.session.shape?.name ?? ""}`;
    this.drop.hidden = this.fixes.length === 0;
    const last = this.fixes[this.fixes.length - 1];
    const track = this.track();
    const m = track.slice(1).reduce((sum, c, i) => sum + Math.hypot(c.e - track[i]!.e, c.n - track[i]!.n), 0);
    this.state.textContent = last ? `${this.fixes.length} positions, ${lengthText(m, this.session.system)} walked${track.length > 7 ? `, about ${areaText(areaM2(track), this.session.system)} inside so far` : ""}. The last is good to about ${lengthText(last[2], this.session.system)}.` : "";
    this.sheet().redraw();
  }

  private go(): void {
    if (this.watch !== null) { this.stop(); return; }
    if (!("geolocation" in navigator) || !window.isSecureContext) {
      this.said.say("This browser tells no positions here: open the page over https, or on this device itself.", 0);
      return;
    }
    this.watch = navigator.geolocation.watchPosition((p) => this.fix(p), (e) => this.failed(e), { enableHighAccuracy: true, maximumAge: 0, timeout: 30_000 });
    this.said.say("Waiting for the first position…", 0);
    void this.stayAwake();
    this.show();
  }

  private stop(): void {
    if (this.watch !== null) navigator.geolocation.clearWatch(this.watch);
    this.watch = null;
    void this.lock?.release().catch(() => undefined);
    this.lock = null;
    this.keep(true);
    this.show();
  }

  private async stayAwake(): Promise<void> {
    try {
      this.lock = (await navigator.wakeLock?.request("screen")) ?? null;
    } catch {
      this.lock = null;
    }
  }

  private fix({ coords, timestamp }: GeolocationPosition): void {
    const last = this.fixes[this.fixes.length - 1];
    if (last && timestamp <= last[3]) return;
    const slept = last !== undefined && timestamp - last[3] > GAP_MS;
    this.fixes.push([coords.latitude, coords.longitude, Math.max(0, coords.accuracy), timestamp]);
    this.keep(false);
    const first = this.fixes.length === 1;
    this.said.say(
      first ? "Walking. Go round the edge once."
        : slept ? `The phone was silent for ${Math.round((timestamp - last[3]) / 1000)} seconds, perhaps asleep. The outline runs straight from where it fell silent to here: go back there if that cuts a corner.`
          : coords.accuracy > 20 ? "This position is poor: wait a moment under open sky." : `${this.fixes.length} positions.`,
      slept || first ? 0 : 4000,
    );
    this.show();
    if (first || this.fixes.length % 10 === 0) this.sheet().fit();
  }

  private failed(e: GeolocationPositionError): void {
    this.said.say(e.code === e.PERMISSION_DENIED ? "The phone may not tell where it is: allow it for this page, or tape the lawn instead." : "No position just now. Go on; the walk waits.", 0);
    if (e.code === e.PERMISSION_DENIED) this.stop();
  }

  /** The server makes the outline and its range; without a connection the walk waits on this phone. */
  private async finish(): Promise<void> {
    this.stop();
    const { origin } = this.session.drawing;
    const placed = this.session.drawing.shapes.some((s) => s.ring.length > 0 && s.key !== this.session.active);
    let answer: Answer;
    try {
      const reply = await fetch(`/lawns/${this.lawn}/draw/walk`, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ fixes: this.fixes, origin: origin ? [origin.lat, origin.lon] : null }) });
      if (!reply.ok) throw new Error(String(reply.status));
      answer = (await reply.json()) as Answer;
    } catch {
      this.said.say("No connection: the walk is kept on this phone. Try again where there is one.", 0);
      return;
    }
    if (answer.refused !== null || !answer.ring) { this.said.say(answer.refused ?? "No outline.", 0); return; }
    let ring: Ring = answer.ring.map(([e, n]) => ({ e: mm(e), n: mm(n) }));
    let at = origin ?? (answer.origin ? { lat: answer.origin[0], lon: answer.origin[1] } : null);
    if (!origin && placed) {
      // A sheet with something on it and no place on the earth keeps its own zero point.
      const middle = this.sheet().center;
      const [e, n] = [ring.reduce((s, c) => s + c.e, 0) / ring.length, ring.reduce((s, c) => s + c.n, 0) / ring.length];
      ring = ring.map((c) => ({ e: mm(c.e - e + middle.e), n: mm(c.n - n + middle.n) }));
      at = null;
      answer.remarks.push("the sheet has no place on the earth, so the walk was laid in its middle");
    }
    this.fixes = [];
    this.keep(true);
    const { session } = this;
    session.corner = null;
    session.tool = "move";
    session.take({ ...session.drawing, origin: at, shapes: session.drawing.shapes.map((s) => (s.key === session.active ? { ...s, ring, taken: { by: "phoneWalk", band: answer.band } } : s)) });
    this.said.say(`The walk is the outline now, from ${answer.kept} positions: ${answer.remarks.join("; ")}. Its area is good to ${Math.round(answer.band * 100)} % nine times in ten. A tape is better; corners can be moved.`, 0);
    this.show();
    this.sheet().fit();
  }

  private throwAway(): void {
    this.stop();
    this.fixes = [];
    this.keep(true);
    this.said.say("The walk is gone.", 0);
    this.show();
  }

  private get name(): string { return `seedfall-walk-${this.lawn}`; }

  /** Every two seconds at most: a phone writes slowly. */
  private keep(now: boolean): void {
    if (!now && Date.now() - this.kept < 2000) return;
    this.kept = Date.now();
    try {
      if (this.fixes.length > 0) localStorage.setItem(this.name, JSON.stringify(this.fixes));
      else localStorage.removeItem(this.name);
    } catch {
      // Nothing can be kept here; the walk lives as long as the page.
    }
  }

  private read(): Fix[] {
    try {
      const all = JSON.parse(localStorage.getItem(this.name) ?? "[]") as unknown;
      return Array.isArray(all) ? all.filter((f): f is Fix => Array.isArray(f) && f.length === 4 && f.every((v) => typeof v === "number")) : [];
    } catch {
      return [];
    }
  }
}
