// A kept page that speaks of hours ahead: how old its forecast is by now, which of its hours are over, and which lead nowhere here.

const HOUR_MS = 3_600_000;

/** As old as the server calls one old. */
const OLD_MS = 24 * HOUR_MS;

/** Sentences for the note on top of the page; none where it holds no forecast. */
export function ages(keptAt: number): string[] {
  const held = document.querySelector<HTMLElement>("[data-issued]");
  if (!held) return [];
  const then = Date.parse(held.dataset.now ?? "");
  // From the server's clock and the time gone by since: a phone whose clock is wrong finds the same.
  const now = then + Math.max(0, Date.now() - keptAt);
  for (const part of document.querySelectorAll<HTMLElement>("[data-over]")) if (Date.parse(part.dataset.over ?? "") <= now) over(part);
  void leads();
  const issued = Date.parse(held.dataset.issued ?? "");
  const age = now - (Number.isNaN(issued) ? then : issued);
  const words = Number.isNaN(issued) ? `Its hours were drawn ${size(age)} ago, out of whole days: rough.` : `Its forecast was made ${size(age)} ago.`;
  return [age > OLD_MS ? `${words} That is too old to mix by: judge the moment on the lawn.` : words];
}

function over(part: HTMLElement): void {
  const said = Object.assign(document.createElement("em"), { className: "gone-by", textContent: part.dataset.overWords ?? "over" });
  (part instanceof HTMLTableRowElement ? part.cells[0] ?? part : part).append(" ", said);
}

/** An hour that is not kept is named, but leads nowhere. */
async function leads(): Promise<void> {
  for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-hour]")) {
    if (!(await caches.match(link.pathname))) {
      const named = document.createElement("span");
      named.textContent = `${link.textContent?.replace(/[←→]/g, "").trim()} (needs a signal)`;
      link.replaceWith(named);
    }
  }
}

function size(ms: number): string {
  const minutes = Math.max(0, Math.round(ms / 60_000));
  if (minutes < 120) return `${minutes} min`;
  return minutes < 2 * 1440 ? `${Math.round(minutes / 60)} h` : `${Math.round(minutes / 1440)} days`;
}
