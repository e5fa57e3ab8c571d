// The corners as a list one can type in: east and north of each, the side that follows, and a new one by distance and bearing.

import { along, bearing, cornerAt, distance, type Corner } from "./drawing-model";
import type { Session } from "./drawing-session";
import type { Sheet } from "./drawing-sheet";
import { fieldText, fromUnit, lengthShort, parseNumber, unitOf } from "./drawing-text";
import { make, need } from "./drawing-words";

export class CornerList {
  private readonly box = need("corners-list", HTMLDivElement);
  private readonly name = need("corners-name", HTMLSpanElement);
  private readonly body: HTMLTableSectionElement;
  private readonly unit: "ft" | "m";

  constructor(private readonly session: Session, private readonly sheet: () => Sheet) {
    this.unit = unitOf(session.system) as "ft" | "m";
    const table = make("table", "", { class: "corners" });
    const head = table.createTHead().insertRow();
    for (const [text, kind] of [["", "Corner"], [`East, ${this.unit}`, ""], [`North, ${this.unit}`, ""], ["Next side", ""]] as const) {
      const cell = make("th", text, { scope: "col" });
      if (kind) cell.append(make("span", kind, { class: "voice" }));
      head.append(cell);
    }
    this.body = table.createTBody();
    const wide = make("div", "", { class: "corner-scroll", role: "region", "aria-label": "Corners", tabindex: "0" });
    wide.append(table);
    this.box.append(wide, this.buttons(), this.adding());
    session.onChange((change) => { if (change !== "pencil" && change !== "drag") this.show(); });
    this.show();
  }

  private show(): void {
    const { session } = this;
    this.name.textContent = session.shape?.name ?? "";
    const { ring } = session;
    while (this.body.rows.length > ring.length) this.body.deleteRow(-1);
    for (const [i, corner] of ring.entries()) {
      const row = this.body.rows[i] ?? this.row(i);
      row.classList.toggle("chosen", i === session.corner);
      const [east, north] = row.querySelectorAll("input");
      this.put(east, fieldText(corner.e, session.system));
      this.put(north, fieldText(corner.n, session.system));
      const next = ring[(i + 1) % ring.length]!;
      row.cells[3]!.textContent = ring.length > 1 ? `${lengthShort(distance(corner, next), session.system)} at ${Math.round(bearing(corner, next)) % 360}°` : "";
      row.cells[0]!.querySelector("button")?.setAttribute("aria-pressed", String(i === session.corner));
    }
  }

  /** A field being typed in keeps what is typed. */
  private put(field: HTMLInputElement | undefined, text: string): void {
    if (field && !(document.activeElement === field && field.dataset["typing"] === "yes")) { field.value = text; field.removeAttribute("aria-invalid"); }
  }

  private row(i: number): HTMLTableRowElement {
    const row = this.body.insertRow();
    const number = make("th", "", { scope: "row" });
    const choose = make("button", String(i + 1), { type: "button", "aria-label": `Corner ${i + 1}` });
    choose.addEventListener("click", () => { this.session.select(i); this.look(); });
    number.append(choose);
    row.append(number);
    for (const side of ["east", "north"] as const) {
      const field = make("input", "", { inputmode: "decimal", autocomplete: "off", "aria-label": `Corner ${i + 1}, ${this.unit === "ft" ? "feet" : "meters"} ${side}` });
      field.addEventListener("focus", () => { if (this.session.corner !== i) this.session.select(i); });
      field.addEventListener("input", () => { field.dataset["typing"] = "yes"; });
      field.addEventListener("change", () => this.typed(i, side, field));
      field.addEventListener("keydown", (e) => { if (e.key === "Enter") { e.preventDefault(); this.typed(i, side, field); } });
      row.insertCell().append(field);
    }
    row.insertCell().className = "side";
    return row;
  }

  private typed(i: number, side: "east" | "north", field: HTMLInputElement): void {
    delete field.dataset["typing"];
    const corner = this.session.ring[i];
    const value = parseNumber(field.value);
    if (!corner || value === null || Math.abs(value) > 100_000) { field.setAttribute("aria-invalid", "true"); return; }
    field.removeAttribute("aria-invalid");
    // What is shown is rounded: a field left as it was must not move the corner.
    if (field.value === fieldText(side === "east" ? corner.e : corner.n, this.session.system)) return;
    const meters = fromUnit(value, this.unit);
    this.session.putCorner(i, side === "east" ? { ...corner, e: meters } : { ...corner, n: meters });
    this.look();
  }

  private look(): void {
    const corner = this.session.corner === null ? undefined : this.session.ring[this.session.corner];
    if (corner) this.sheet().keepInSight(corner);
  }

  private buttons(): HTMLElement {
    const box = make("div", "", { class: "corner-buttons" });
    const button = (text: string, press: () => void): void => {
      const b = make("button", text, { type: "button" });
      b.addEventListener("click", press);
      box.append(b);
    };
    button("Insert behind", () => {
      const { ring, corner } = this.session;
      const [from, to] = [ring[corner ?? ring.length - 1], ring[((corner ?? ring.length - 1) + 1) % Math.max(1, ring.length)]];
      if (from && to) this.session.add(ring.length > 1 ? { e: (from.e + to.e) / 2, n: (from.n + to.n) / 2 } : { e: from.e + 1, n: from.n });
    });
    button("Delete corner", () => this.session.removeCorner());
    return box;
  }

  /** A new corner typed: east and north, or distance and bearing from the corner chosen. */
  private adding(): HTMLElement {
    const form = make("form", "", { class: "corner-new", novalidate: "" });
    const how = make("select", "", { "aria-label": "How the new corner is given" });
    how.append(new Option("East and north", "at"), new Option("Distance and bearing from the chosen corner", "way"));
    const field = (label: string): [HTMLLabelElement, HTMLInputElement] => {
      const l = make("label", "");
      const text = make("span", label);
      const input = make("input", "", { inputmode: "decimal", autocomplete: "off" });
      l.append(text, input);
      return [l, input];
    };
    const [[oneLabel, one], [twoLabel, two]] = [field(`East, ${this.unit}`), field(`North, ${this.unit}`)];
    const said = make("p", "", { class: "problem", hidden: "" });
    how.addEventListener("change", () => {
      const way = how.value === "way";
      oneLabel.firstElementChild!.textContent = way ? `Distance, ${this.unit}` : `East, ${this.unit}`;
      twoLabel.firstElementChild!.textContent = way ? "Bearing, ° from north" : `North, ${this.unit}`;
    });
    form.append(how, oneLabel, twoLabel, make("button", "Add this corner"), said);
    form.addEventListener("submit", (e) => {
      e.preventDefault();
      const at = this.newCorner(how.value === "way", parseNumber(one.value), parseNumber(two.value.replace("°", "")));
      said.hidden = typeof at !== "string";
      if (typeof at === "string") { said.textContent = at; return; }
      this.session.add(at);
      this.sheet().keepInSight(at);
      one.value = two.value = "";
      one.focus();
    });
    return form;
  }

  private newCorner(way: boolean, a: number | null, b: number | null): Corner | string {
    if (a === null || b === null || Math.abs(a) > 100_000) return "Two numbers are needed.";
    if (!way) return cornerAt(fromUnit(a, this.unit), fromUnit(b, this.unit));
    const { ring, corner } = this.session;
    const from = ring[corner ?? ring.length - 1];
    if (!from) return "Set the first corner by east and north.";
    return a >= 0 ? along(from, fromUnit(a, this.unit), b) : "A distance is zero or more.";
  }
}
