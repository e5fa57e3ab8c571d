// Shows the area while the measures are typed. The form works the same without it.

const SQ_FT_PER_M2 = 1 / 0.09290304;
const METERS: Record<string, number> = { ft: 0.3048, m: 1 };
const SQUARE_METERS: Record<string, number> = { sqft: 0.09290304, m2: 1, acre: 4046.8564224, ha: 10000 };

/** Numbers as the server reads them: grouping commas, a decimal comma, or a fraction such as 2 3/4. */
function number(text: string): number | null {
  const t = text.trim();
  const fraction = /^(?:(\d{1,6})\s+)?(\d{1,4})\s*\/\s*(\d{1,4})$/.exec(t);
  if (fraction) {
    const below = Number(fraction[3]);
    return below === 0 ? null : Number(fraction[1] ?? 0) + Number(fraction[2]) / below;
  }
  const plain = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(t) ? t.replace(/,/g, "") : /^[+-]?\d*,\d+$/.test(t) ? t.replace(",", ".") : t;
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

function start(form: HTMLFormElement): void {
  const text = (name: string): string => {
    const field = form.elements.namedItem(name);
    return field instanceof HTMLInputElement || field instanceof HTMLSelectElement || field instanceof RadioNodeList ? field.value : "";
  };
  const meters = (name: string): number | null => {
    const value = number(text(name));
    const unit = METERS[text(`${name}.unit`)];
    return value === null || unit === undefined ? null : value * unit;
  };

  /** Offsets rule: step times the sum of the widths, the first and last counted half. */
  const offsets = (): number | null => {
    const step = meters("step");
    const unit = METERS[text("step.unit")];
    const widths = text("widths").trim().split(/[\s;]+/).map(number);
    if (step === null || unit === undefined || widths.length < 2) return null;
    let sum = 0;
    for (const [i, width] of widths.entries()) {
      if (width === null) return null;
      sum += i === 0 || i === widths.length - 1 ? width / 2 : width;
    }
    return step * sum * unit;
  };

  const product = (a: string, b: string, factor: number): number | null => {
    const [x, y] = [meters(a), meters(b)];
    return x === null || y === null ? null : x * y * factor;
  };

  const area = (): number | null => {
    switch (text("shape")) {
      case "rectangle": return product("long", "wide", 1);
      case "triangle": return product("base", "height", 0.5);
      case "circle": return product("across", "across", Math.PI / 4);
      case "offsets": return offsets();
      case "typed": {
        const value = number(text("area"));
        const unit = SQUARE_METERS[text("area.unit")];
        return value === null || unit === undefined ? null : value * unit;
      }
      default: return null;
    }
  };

  const line = document.createElement("p");
  line.className = "measured";
  line.setAttribute("role", "status");
  const parts = form.querySelectorAll(".when");
  parts[parts.length - 1]?.after(line);

  const show = (): void => {
    const m2 = area();
    line.textContent = m2 !== null && m2 > 0
      ? `That is ${Math.round(m2 * SQ_FT_PER_M2).toLocaleString("en-US")} sq ft (${Number(m2.toPrecision(3)).toLocaleString("en-US")} m²), before any slope.`
      : "";
  };
  form.addEventListener("input", show);
  form.addEventListener("change", show);
  show();
}

const form = document.querySelector<HTMLFormElement>("form.leaf");
if (form) start(form);
