// Opens the part an address points at, and adds a slider over the seeding window that moves the date of the what-if form.
// Without script a tap opens the part, and the date field does what the slider does.

const DAY = 86_400_000;

interface Chances { first: string; chances: number[] }

function start(form: HTMLFormElement, chances: Chances): void {
  const date = form.elements.namedItem("seedDown");
  if (!(date instanceof HTMLInputElement) || chances.chances.length < 2) return;

  const first = Date.parse(`${chances.first}T00:00:00Z`);
  const iso = (index: number): string => new Date(first + index * DAY).toISOString().slice(0, 10);
  const words = (index: number): string =>
    new Date(first + index * DAY).toLocaleDateString("en-US", { timeZone: "UTC", month: "long", day: "numeric" });

  const slider = document.createElement("input");
  slider.type = "range";
  slider.min = "0";
  slider.max = String(chances.chances.length - 1);
  slider.id = "whatif-slider";
  const label = document.createElement("label");
  label.htmlFor = slider.id;
  label.textContent = "Slide to another day";
  const said = document.createElement("output");
  said.htmlFor.add(slider.id);
  const box = document.createElement("div");
  box.className = "field slide";
  box.append(label, slider, said);

  const show = (): void => {
    const index = Number(slider.value);
    const chance = chances.chances[index];
    const text = `${words(index)}: chance of a stand ${chance === undefined ? "not known" : `${Math.round(chance * 100)} %`}`;
    said.textContent = text;
    slider.setAttribute("aria-valuetext", text);
  };
  const follow = (): void => {
    const index = Math.round((Date.parse(`${date.value}T00:00:00Z`) - first) / DAY);
    if (Number.isFinite(index)) slider.value = String(Math.min(Math.max(index, 0), chances.chances.length - 1));
    show();
  };

  slider.addEventListener("input", () => { date.value = iso(Number(slider.value)); show(); });
  date.addEventListener("change", follow);
  date.closest(".field")?.before(box);
  follow();
}

const form = document.querySelector<HTMLFormElement>("form#what-if");
const data = document.querySelector<HTMLScriptElement>("script#chances");
if (form && data?.textContent) start(form, JSON.parse(data.textContent) as Chances);

function unfold(): void {
  const target = location.hash.length > 1 ? document.getElementById(decodeURIComponent(location.hash.slice(1))) : null;
  for (let e: Element | null = target; e; e = e.parentElement) if (e instanceof HTMLDetailsElement) e.open = true;
  target?.scrollIntoView();
}

window.addEventListener("hashchange", unfold);
if (location.hash) unfold();
