// The lawn's clock on a phone: instants with the offset of the lawn's own zone, over changes of the clock; and how far off the phone is.

export interface SheetFacts {
  lawn: string;
  name: string;
  date: string;
  zone: string;
  /** The day the clock of an invented lawn stands still on; empty for others. */
  still: string;
  version: string;
}

const pad = (n: number): string => String(n).padStart(2, "0");

/** Minutes the zone's clock is ahead of UTC at an instant. */
export function offsetAt(zone: string, ms: number): number {
  const whole = Math.floor(ms / 1000) * 1000;
  const parts = new Map(new Intl.DateTimeFormat("en-US", {
    timeZone: zone, hourCycle: "h23", year: "numeric", month: "numeric", day: "numeric", hour: "numeric", minute: "numeric", second: "numeric",
  }).formatToParts(whole).map((p) => [p.type, Number(p.value)]));
  const n = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
  return Math.round((Date.UTC(n("year"), n("month") - 1, n("day"), n("hour"), n("minute"), n("second")) - whole) / 60_000);
}

function written(wallMs: number, offset: number): string {
  const size = Math.abs(offset);
  return `${new Date(wallMs).toISOString().slice(0, 19)}${offset < 0 ? "-" : "+"}${pad(Math.floor(size / 60))}:${pad(size % 60)}`;
}

/** An instant by the zone's clock, as the log writes it. */
export function stamp(zone: string, ms: number): string {
  const offset = offsetAt(zone, ms);
  return written(Math.floor(ms / 1000) * 1000 + offset * 60_000, offset);
}

/** What a clock showed, as an instant: of an hour that comes twice the later, of one that is skipped the clock as it was before. */
export function fromWall(zone: string, wall: string): string {
  const ms = Date.parse(`${wall.length === 16 ? `${wall}:00` : wall}Z`);
  const [before, after] = [offsetAt(zone, ms - 86_400_000), offsetAt(zone, ms + 86_400_000)];
  const fits = [after, before].find((offset) => offsetAt(zone, ms - offset * 60_000) === offset);
  return written(ms, fits ?? before);
}

export function lawnNow(sheet: SheetFacts): string {
  const now = stamp(sheet.zone, Date.now());
  return sheet.still ? fromWall(sheet.zone, `${sheet.still}${now.slice(10, 19)}`) : now;
}

export const lawnToday = (sheet: SheetFacts): string => lawnNow(sheet).slice(0, 10);

/** Milliseconds the phone's clock is ahead of the server's; null where the server was not reached. */
export async function clockAhead(): Promise<number | null> {
  const from = Date.now();
  try {
    const answer = await fetch("/api/now", { cache: "no-store" });
    const to = Date.now();
    return answer.ok ? (from + to) / 2 - ((await answer.json()) as { now: number }).now : null;
  } catch {
    return null;
  }
}

/** Null where it is near enough. */
export function clockWords(aheadMs: number): string | null {
  const minutes = Math.round(Math.abs(aheadMs) / 60_000);
  if (minutes < 5) return null;
  const size = minutes < 120 ? `${minutes} min` : minutes < 2 * 1440 ? `${Math.round(minutes / 60)} h` : `${Math.round(minutes / 1440)} days`;
  return `phone clock ${size} ${aheadMs > 0 ? "ahead of" : "behind"} the server's when it was delivered`;
}

/** An id that sorts by the time it was made (UUID version 7). */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let ms = Date.now();
  for (let i = 5; i >= 0; i--) {
    bytes[i] = ms % 256;
    ms = Math.floor(ms / 256);
  }
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f);
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
  const hex = [...bytes].map((b) => b.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
