// Lets the verdict follow every answer of the form on the page "Spray now?", signal or not. Without script the button asks the server.

import { atHeight, judge, say, type Data, type Reading, type Weight } from "./spray-now";

const SIGNS: Record<Weight, [string, string]> = { go: ["●", "Go"], wait: ["◐", "Wait"], stop: ["✕", "Stop"] };

function start(form: HTMLFormElement, data: Data): void {
  const text = (name: string): string => {
    const value = new FormData(form).get(name);
    return typeof value === "string" ? value.trim() : "";
  };
  const number = (name: string): number | null => {
    const typed = text(name).replace(",", ".");
    const value = Number(typed);
    return typed.length > 0 && Number.isFinite(value) ? value : null;
  };
  const speed = (name: string): number | null => {
    const value = number(name);
    if (value === null || value < 0) return null;
    const unit = text(`${name}.unit`);
    return unit === "ms" ? value : unit === "kmh" ? value / 3.6 : value * data.metersPerSecondPerMph;
  };
  const degrees = (name: string): number | null => {
    const value = number(name);
    return value === null ? null : text(`${name}.unit`) === "C" ? value : (value - 32) / 1.8;
  };
  const height = (): number | null => {
    const value = number("height");
    const meters = value === null ? null : text("height.unit") === "cm" ? value * 0.01 : value * 0.0254;
    return meters !== null && meters >= 0.15 && meters <= 2 ? meters : null;
  };
  const reading = (): Reading => {
    const [sky, wet, rain, minutes] = [text("sky"), text("wet"), text("rain"), number("minutes")];
    return {
      windMs: speed("wind"),
      held: text("held") === "overhead" ? "overhead" : "atNozzle",
      force: number("force"),
      gustMs: speed("gust"),
      airC: degrees("air"),
      humidityPct: number("humidity"),
      morningLowC: degrees("low"),
      sky: sky === "clear" || sky === "broken" || sky === "overcast" ? sky : null,
      hangs: text("hangs") === "yes",
      wetLeaves: wet === "wet" ? true : wet === "dry" ? false : null,
      rainInMinutes: rain === "now" ? 0 : rain === "later" ? minutes : null,
      noRainInSight: rain === "none",
    };
  };

  const box = document.createElement("section");
  box.className = "spray-live";
  box.setAttribute("aria-label", "So far");
  const verdict = document.createElement("p");
  verdict.setAttribute("role", "status");
  const why = document.createElement("p");
  why.className = "hint";
  const [more, summary, rest] = [document.createElement("details"), document.createElement("summary"), document.createElement("ul")];
  more.append(summary, rest);
  summary.textContent = "Every reason, and what would change it";
  box.append(verdict, why);
  form.querySelector(".buttons")?.before(box, more);

  const show = (): void => {
    const height_ = height();
    const known = height_ === null ? data : atHeight(data, height_);
    const judged = judge(reading(), known, Date.now());
    const [sign, word] = SIGNS[judged.verdict];
    const mark = document.createElement("strong");
    mark.className = `spray-${judged.verdict}`;
    mark.textContent = `${sign} ${word}`;
    verdict.replaceChildren("So far: ", mark);
    const against = judged.reasons.filter(r => r.weight !== "go");
    why.textContent = against[0] ? say(against[0], known) + (against.length > 1 ? ` And ${against.length - 1} more.` : "") : "";
    more.hidden = against.length === 0;
    rest.replaceChildren(...against.map((r) => {
      const item = document.createElement("li");
      item.textContent = [say(r, known), known.texts[r.id]?.instead].filter(Boolean).join(" ");
      return item;
    }));
  };
  form.addEventListener("input", show);
  show();
}

const form = document.querySelector<HTMLFormElement>("form#spray-now");
const block = document.querySelector<HTMLScriptElement>("script#spray-now-data");
if (form && block?.textContent) start(form, JSON.parse(block.textContent) as Data);
