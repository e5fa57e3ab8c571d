// On pages that are kept on the phone beside the day sheet: says that what is shown was kept, and which forms need a signal.
// A kept page's own forms are closed from the start, so that nothing is typed that could not be sent.

import { ages } from "./kept-forecast.js";

const keptAt = Number(document.documentElement.dataset.kept ?? "0");
const main = document.querySelector("main");

function paragraph(words: string): HTMLParagraphElement {
  const p = document.createElement("p");
  p.textContent = words;
  return p;
}

function note(): HTMLElement {
  const box = document.createElement("div");
  box.className = "no-signal";
  box.setAttribute("role", "status");
  const when = new Date(keptAt).toLocaleString("en-US", { weekday: "short", month: "short", day: "numeric", hour: "numeric", minute: "2-digit" });
  box.append(paragraph(`No signal, or no answer in time. This page stands as this phone kept it on ${when}.`));
  if (location.search) box.append(paragraph("Another job, day or figure than the page first opens with needs a signal."));
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "Try the signal again";
  again.addEventListener("click", () => location.reload());
  box.append(again);
  return box;
}

/** Closed where it asks the server; where a script judges on the spot only the server's button goes. */
function close(form: HTMLFormElement): void {
  if (form.dataset.here !== undefined) {
    form.querySelector(".buttons")?.replaceWith(paragraph("Judged here on the phone, with the limits and the sun of the day it was kept. The working needs a signal."));
    return;
  }
  form.inert = true;
  form.hidden = true;
  if (!main?.contains(form)) return;
  const p = paragraph(form.dataset.needs ?? (form.method === "post" ? "Writing this down needs a signal. Until there is one, write it as a note on the day sheet: it is delivered by itself." : "Working this out for other figures needs a signal."));
  p.className = "needs-signal";
  form.before(p);
}

/** A page opened with a signal that has gone since. */
function guard(form: HTMLFormElement): void {
  form.addEventListener("submit", (e) => {
    if (navigator.onLine) return;
    e.preventDefault();
    const said = form.querySelector(".needs-signal") ?? paragraph("");
    said.className = "needs-signal";
    said.setAttribute("role", "alert");
    said.textContent = form.dataset.here !== undefined ? "No signal: the verdict above is judged here on the phone." : "This needs a signal, and there is none. What you typed stays here.";
    form.append(said);
  });
}

if (main) {
  const forms = [...document.forms];
  if (keptAt > 0) {
    const box = note();
    main.prepend(box);
    for (const words of ages(keptAt)) box.querySelector("p")?.after(paragraph(words));
    forms.forEach(close);
  } else {
    forms.forEach(guard);
  }
}
