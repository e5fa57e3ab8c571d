// Numbers as the server writes and reads them, in the unit system the viewer asked for.

export type System = "us" | "metric";

export const METERS_PER_FOOT = 0.3048;
const SQ_FT_PER_M2 = 1 / 0.09290304;

/** Three significant digits, grouped, no trailing zeros: as the figures on every page. */
export function significant(value: number): string {
  const size = Math.abs(value);
  if (size === 0) return "0";
  const decimals = Math.min(Math.max(2 - Math.floor(Math.log10(size)), 0), 6);
  return grouped(value, decimals);
}

function grouped(value: number, decimals: number): string {
  const [whole = "0", part = ""] = Math.abs(value).toFixed(decimals).split(".");
  const digits = part.replace(/0+$/, "");
  const text = whole.replace(/\B(?=(\d{3})+$)/g, ",") + (digits.length > 0 ? `.${digits}` : "");
  return value < 0 && text !== "0" ? `-${text}` : text;
}

const both = (us: string, metric: string, system: System): string => (system === "us" ? `${us} (${metric})` : `${metric} (${us})`);

export const areaText = (m2: number, system: System): string => both(`${grouped(m2 * SQ_FT_PER_M2, 0)} sq ft`, `${significant(m2)} m2`, system);

/** The area alone, in the viewer's system. */
export const areaShort = (m2: number, system: System): string => (system === "us" ? `${grouped(m2 * SQ_FT_PER_M2, 0)} sq ft` : `${significant(m2)} m2`);

export const lengthText = (m: number, system: System): string => both(`${significant(m / METERS_PER_FOOT)} ft`, `${significant(m)} m`, system);

export const lengthShort = (m: number, system: System): string => (system === "us" ? `${significant(m / METERS_PER_FOOT)} ft` : `${significant(m)} m`);

export const unitOf = (system: System): string => (system === "us" ? "ft" : "m");

export const toUnit = (m: number, system: System): number => (system === "us" ? m / METERS_PER_FOOT : m);

export const fromUnit = (value: number, unit: string): number => (unit === "ft" ? value * METERS_PER_FOOT : value);

/** For a field: two decimals, no trailing zeros. */
export const fieldText = (m: number, system: System): string => String(Number(toUnit(m, system).toFixed(2)));

/** Numbers as people type them: grouping commas, a decimal comma, a fraction such as 2 3/4. */
export function parseNumber(text: string): number | null {
  const t = text.trim().replace(/−/g, "-");
  const fraction = /^(?:(\d{1,6})\s+)?(\d{1,4})\s*\/\s*(\d{1,4})$/.exec(t);
  if (fraction) {
    const below = Number(fraction[3]);
    return below === 0 ? null : Number(fraction[1] ?? 0) + Number(fraction[2]) / below;
  }
  const plain = /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(t) ? t.replace(/,/g, "") : /^[+-]?\d*,\d+$/.test(t) ? t.replace(",", ".") : t;
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}
