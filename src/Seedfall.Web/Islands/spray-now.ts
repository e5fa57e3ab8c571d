// The judgment on the spot, the same as the server's SprayNow and SprayRules, for a phone without a signal. Every limit, table and word
// comes in the page's data block; nothing is written here a second time. A browser test holds this file and the server together.

export type Weight = "go" | "wait" | "stop";

export interface Reason { id: string; weight: Weight; value: number | null; limit: number | null }

export interface Judgment { verdict: Weight; reasons: Reason[] }

export interface Reading {
  windMs: number | null;
  held: "atNozzle" | "overhead";
  force: number | null;
  gustMs: number | null;
  airC: number | null;
  humidityPct: number | null;
  morningLowC: number | null;
  sky: "clear" | "broken" | "overcast" | null;
  hangs: boolean;
  wetLeaves: boolean | null;
  rainInMinutes: number | null;
  noRainInSight: boolean;
}

export interface Limits {
  preferredNozzleMs: number; wallMs: number; wallFromLabel: boolean; leastMs: number | null; calmMs: number; warmedC: number; morningMinutes: number;
  eveningMinutes: number; overcastPct: number; gustNozzleMs: number; rainFreeMinutes: number; rainFreeFromLabel: boolean; lowestC: number;
  lowestFromLabel: boolean; highestC: number; highestFromLabel: boolean; dampDeltaC: number; dryingDeltaC: number; dryDeltaC: number;
  wetHumidityPct: number; nozzleShare: number; twoMeterShare: number; nozzleM: number;
}

export interface Words { kind: "speed" | "temperature" | "temperatureDifference" | "minutes"; short: string; statement: string; instead: string }

export interface Data {
  limits: Limits;
  sun: { noonUtcHour: number; halfDayHours: number };
  beaufort: { force: number; leastMph: number; mostMph: number }[];
  metersPerSecondPerMph: number;
  windProfile: number[];
  cloudPct: Record<"clear" | "broken" | "overcast", number>;
  wetBulb: { coefficients: number[]; coldestC: number; hottestC: number; driestPct: number; dampestPct: number };
  texts: Record<string, Words>;
}

interface Moment {
  wallMs: number | null; nozzleMs: number | null; stillMs: number | null; gustWallMs: number | null; gustNozzleMs: number | null;
  airC: number | null; humidityPct: number | null; cloudPct: number | null; afterSunriseMinutes: number; beforeSunsetMinutes: number;
  warmedC: number | null; hangs: boolean; wetLeaves: boolean | null; rainInMinutes: number | null; rainKnown: boolean;
}

const RANK: Record<Weight, number> = { go: 0, wait: 1, stop: 2 };

/** Limits for another height of the nozzle, m. */
export function atHeight(data: Data, meters: number): Data {
  const [factor = NaN, slope = NaN, offset = NaN] = data.windProfile;
  return { ...data, limits: { ...data.limits, nozzleM: meters, nozzleShare: Math.log(slope * meters - offset) / factor } };
}

/** Go, wait or stop at an instant (milliseconds since 1970), the weightiest reason first. */
export function judge(reading: Reading, data: Data, atMs: number): Judgment {
  const moment = momentOf(reading, data, atMs);
  const reasons = [...wind(moment, data.limits), ...layers(moment, data.limits), ...rain(moment, data.limits), ...air(moment, data)];
  reasons.sort((a, b) => RANK[b.weight] - RANK[a.weight]);
  return { verdict: reasons[0]?.weight ?? "go", reasons };
}

/** A reason as a sentence, US units first. */
export function say(reason: Reason, data: Data): string {
  const words = data.texts[reason.id];
  if (!words) return reason.id;

  const number = (value: number | null): string => {
    if (value === null) return "not known";
    const tenth = (n: number): string => String(Math.round(n * 10) / 10);
    switch (words.kind) {
      case "speed": return `${tenth(value / data.metersPerSecondPerMph)} mph (${tenth(value)} m/s)`;
      case "temperature": return `${Math.round(value * 1.8 + 32)} °F (${Math.round(value)} °C)`;
      case "temperatureDifference": return `${tenth(value * 1.8)} °F (${tenth(value)} °C)`;
      default: return value < 60 ? `${Math.round(value)} min` : `${tenth(value / 60)} h`;
    }
  };
  return words.statement.replace("{value}", number(reason.value)).replace("{limit}", number(reason.limit));
}

function momentOf(r: Reading, data: Data, atMs: number): Moment {
  const { limits, sun } = data;
  const utcHour = (atMs % 86_400_000) / 3_600_000;
  const fromNoon = remainder(utcHour - sun.noonUtcHour, 24);
  const signs = r.windMs === null && r.force !== null ? data.beaufort.find(b => b.force === r.force) : undefined;
  const nozzle = r.held === "atNozzle";
  const most = signs ? signs.mostMph * data.metersPerSecondPerMph * limits.twoMeterShare : null;
  const middle = signs ? 0.5 * (signs.leastMph + signs.mostMph) * data.metersPerSecondPerMph * limits.twoMeterShare : null;
  return {
    wallMs: r.windMs ?? most,
    nozzleMs: r.windMs !== null ? (nozzle ? r.windMs : r.windMs * limits.nozzleShare) : most !== null ? most * limits.nozzleShare : null,
    stillMs: r.windMs !== null ? (nozzle ? r.windMs / limits.nozzleShare : r.windMs) : middle,
    gustWallMs: r.gustMs,
    gustNozzleMs: r.gustMs === null ? null : nozzle ? r.gustMs : r.gustMs * limits.nozzleShare,
    airC: r.airC,
    humidityPct: r.humidityPct,
    cloudPct: r.sky === null ? null : data.cloudPct[r.sky],
    afterSunriseMinutes: 60 * (sun.halfDayHours + fromNoon),
    beforeSunsetMinutes: 60 * (sun.halfDayHours - fromNoon),
    warmedC: r.airC !== null && r.morningLowC !== null && fromNoon < 0 ? r.airC - r.morningLowC : null,
    hangs: r.hangs,
    wetLeaves: r.wetLeaves,
    rainInMinutes: r.rainInMinutes,
    rainKnown: r.noRainInSight,
  };
}

/** Between -half and half of the period. */
function remainder(value: number, period: number): number {
  return value - period * Math.round(value / period);
}

function reason(id: string, weight: Weight, value: number | null = null, limit: number | null = null): Reason {
  return { id, weight, value, limit };
}

function* wind(m: Moment, l: Limits): Generator<Reason> {
  if (m.wallMs === null || m.nozzleMs === null) yield reason("wind.unknown", "wait");
  else if (m.wallMs > l.wallMs) yield reason(l.wallFromLabel ? "wind.label" : "wind.usual", "stop", m.wallMs, l.wallMs);
  else if (m.nozzleMs > l.preferredNozzleMs) yield reason("wind.brisk", "wait", m.nozzleMs, l.preferredNozzleMs);

  if (m.gustWallMs !== null && m.gustWallMs > l.wallMs) yield reason(l.wallFromLabel ? "gust.label" : "gust.usual", "stop", m.gustWallMs, l.wallMs);
  else if (m.gustNozzleMs !== null && m.gustNozzleMs > l.gustNozzleMs) yield reason("gust.brisk", "wait", m.gustNozzleMs, l.gustNozzleMs);

  if (l.leastMs !== null && m.stillMs !== null && m.stillMs < l.leastMs) yield reason("wind.least", "stop", m.stillMs, l.leastMs);
}

function* layers(m: Moment, l: Limits): Generator<Reason> {
  const lowSun = m.afterSunriseMinutes < l.morningMinutes || m.beforeSunsetMinutes < l.eveningMinutes || (m.warmedC !== null && m.warmedC < l.warmedC);
  const overcast = m.cloudPct !== null && m.cloudPct >= l.overcastPct;
  if (m.hangs) yield reason("layers.seen", "stop");
  else if (m.stillMs !== null && m.stillMs <= l.calmMs) {
    yield lowSun && !overcast ? reason("layers.likely", "stop", m.stillMs, l.calmMs) : reason("wind.light", "go", m.stillMs, l.calmMs);
  }

  if (m.afterSunriseMinutes < 0 || m.beforeSunsetMinutes < 0) yield reason("dark", "wait");
}

function* rain(m: Moment, l: Limits): Generator<Reason> {
  if (m.rainInMinutes !== null) {
    if (m.rainInMinutes <= 0) yield reason("rain.now", "stop");
    else if (m.rainInMinutes < l.rainFreeMinutes) {
      yield l.rainFreeFromLabel ? reason("rain.label", "stop", m.rainInMinutes, l.rainFreeMinutes) : reason("rain.usual", "wait", m.rainInMinutes, l.rainFreeMinutes);
    }
  } else if (!m.rainKnown && l.rainFreeMinutes > 0) yield reason("rain.unknown", "wait");

  if (m.wetLeaves ?? (m.humidityPct !== null && m.humidityPct >= l.wetHumidityPct)) yield reason("leaves.wet", "wait");
}

function* air(m: Moment, data: Data): Generator<Reason> {
  const l = data.limits;
  if (m.airC === null) return;

  if (m.airC < l.lowestC) yield l.lowestFromLabel ? reason("cold.label", "stop", m.airC, l.lowestC) : reason("cold.usual", "wait", m.airC, l.lowestC);
  else if (m.airC > l.highestC) yield l.highestFromLabel ? reason("hot.label", "stop", m.airC, l.highestC) : reason("hot.usual", "wait", m.airC, l.highestC);

  const delta = deltaC(m.airC, m.humidityPct, data);
  if (delta === null) return;

  if (delta > l.dryDeltaC) yield reason("delta.dry", "wait", delta, l.dryDeltaC);
  else if (delta > l.dryingDeltaC) yield reason("delta.drying", "go", delta, l.dryingDeltaC);
  else if (delta < l.dampDeltaC) yield reason("delta.damp", "go", delta, l.dampDeltaC);
}

/** Air less wet bulb. */
function deltaC(t: number, humidityPct: number | null, { wetBulb }: Data): number | null {
  if (humidityPct === null || t < wetBulb.coldestC || t > wetBulb.hottestC) return null;

  const rh = Math.min(Math.max(humidityPct, wetBulb.driestPct), wetBulb.dampestPct);
  const [a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN, g = NaN] = wetBulb.coefficients;
  return t - (t * Math.atan(a * Math.sqrt(rh + b)) + Math.atan(t + rh) - Math.atan(rh - c) + d * Math.pow(rh, e) * Math.atan(f * rh) - g);
}
