// Plus and minus beside every count, and one tap a grid point. The form works the same without it.

function button(text: string, label: string, press: () => void, kind = ""): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  if (label !== text) made.setAttribute("aria-label", label);
  if (kind) made.className = kind;
  made.addEventListener("click", press);
  return made;
}

/** The whole number in a field, or null where it holds none. */
function count(input: HTMLInputElement): number | null {
  const text = input.value.trim();
  return /^\d{1,4}$/.test(text) ? Number(text) : null;
}

function put(input: HTMLInputElement, value: number): void {
  input.value = String(value);
  input.dispatchEvent(new Event("input", { bubbles: true }));
}

function addSteps(input: HTMLInputElement): void {
  const row = input.closest(".measure");
  const label = document.querySelector(`label[for="${input.id}"]`)?.firstChild?.textContent?.trim() ?? "";
  if (!row) return;
  row.classList.add("counter");
  const less = button("−", `One less: ${label}`, () => put(input, Math.max(0, (count(input) ?? 0) - 1)));
  const more = button("+", `One more: ${label}`, () => put(input, (count(input) ?? 0) + 1));
  input.before(less);
  input.after(more);
}

type Tap = "living" | "weeds" | "other";

/** Counts a throw point by point: every tap is one crossing, the fields follow. */
function addTapper(form: HTMLFormElement): void {
  const field = (name: string): HTMLInputElement | null => {
    const found = form.elements.namedItem(name);
    return found instanceof HTMLInputElement ? found : null;
  };
  const [points, living, weeds] = [field("points"), field("living"), field("weeds")];
  if (!points || !living || !weeds) return;

  // Kept in this tab until the throw is saved, so that a phone that slept loses no tap.
  const key = `walk ${location.pathname} ${document.querySelector(".throw")?.textContent ?? ""}`;
  const taps: Tap[] = (sessionStorage.getItem(key) ?? "").split(" ").filter((t): t is Tap => t === "living" || t === "weeds" || t === "other");
  let told = taps.includes("weeds");
  const box = document.createElement("section");
  box.className = "tapper";
  box.setAttribute("aria-label", "Count by tapping");
  const line = document.createElement("p");
  line.setAttribute("role", "status");

  const show = (): void => {
    const most = count(points) ?? 0;
    const done = taps.length;
    line.textContent = most === 0 ? "Say how many points the grid has."
      : done === 0 ? `Tap for each of the ${most} points.`
        : done >= most ? `All ${most} points: ${taps.filter(t => t === "living").length} alive.`
          : `${done} of ${most} points, ${taps.filter(t => t === "living").length} alive.`;
    for (const pad of pads) pad.disabled = done >= most;
    back.disabled = done === 0;
  };
  const write = (): void => {
    living.value = String(taps.filter(t => t === "living").length);
    if (told) weeds.value = String(taps.filter(t => t === "weeds").length);
    sessionStorage.setItem(key, taps.join(" "));
    show();
  };
  const tap = (what: Tap): void => {
    if (taps.length >= (count(points) ?? 0)) return;
    told ||= what === "weeds";
    taps.push(what);
    if ("vibrate" in navigator) navigator.vibrate(15);
    write();
  };

  const pads = [
    button("Living turf", "Living turf", () => tap("living"), "hit"),
    button("Weed", "Weed", () => tap("weeds")),
    button("Bare or dead", "Bare or dead", () => tap("other")),
  ];
  const back = button("Take the last tap back", "Take the last tap back", () => { taps.pop(); write(); }, "back");
  const grid = document.createElement("div");
  grid.className = "pads";
  grid.append(...pads, back);
  box.append(line, grid);
  form.querySelector(".group")?.before(box);
  points.addEventListener("input", show);
  for (const typed of [living, weeds]) {
    typed.addEventListener("input", () => {
      taps.length = 0;
      sessionStorage.removeItem(key);
      show();
    });
  }
  form.addEventListener("submit", () => sessionStorage.removeItem(key));
  if (taps.length > 0 && living.value === "") write();
  else { taps.length = 0; show(); }
}

const form = document.querySelector<HTMLFormElement>("form.leaf[data-step]");
if (form) {
  for (const input of form.querySelectorAll<HTMLInputElement>("input[inputmode=numeric]")) addSteps(input);
  if (form.dataset["step"] === "quadrats") addTapper(form);
}
