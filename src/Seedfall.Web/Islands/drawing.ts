// The drawing page. Without this script the page shows the drawing as it is stored and takes corners as text.

import { listen } from "./drawing-keys";
import { CornerList } from "./drawing-list";
import { DraftBox } from "./drawing-history";
import { same } from "./drawing-model";
import { readPage, type PageData } from "./drawing-page";
import { Panel } from "./drawing-panel";
import { PictureControls } from "./drawing-picture";
import { formFields } from "./drawing-save";
import { Session } from "./drawing-session";
import { Sheet } from "./drawing-sheet";
import { Walk } from "./drawing-walk";
import { make, need } from "./drawing-words";

/** What is stored, then what an older page left unsaved, then what this page was sent with: undo leads back through them. */
function open(page: PageData): { session: Session; resumed: number | null } {
  const drafts = new DraftBox(`seedfall-drawing-${page.lawn}`);
  const stored = page.stored ?? page.drawing;
  const session = new Session(stored, page.system, page.stamp, drafts);
  const draft = drafts.read();
  const here = page.source === "stored" || page.source === "saved";
  if (draft && page.source === "saved" && draft.sent) {
    drafts.drop();
    return { session, resumed: null };
  }
  let resumed: number | null = null;
  if (draft && page.source !== "posted") {
    // A picture laid under the sheet meanwhile takes the place of the draft's.
    const picture = draft.drawing.picture?.file === stored.picture?.file || !stored.picture ? draft.drawing.picture : stored.picture;
    const drawing = { ...draft.drawing, picture: stored.picture ? picture : null };
    if (same(drawing, stored)) drafts.drop();
    else {
      session.resume(drawing, draft.stamp);
      resumed = here ? draft.at : null;
    }
  }
  if (!here) session.take(page.drawing);
  return { session, resumed };
}

function addKinds(page: PageData, session: Session): void {
  const box = need("holes-kinds", HTMLDivElement);
  for (const kind of page.kinds) {
    const button = make("button", kind.words, { type: "button" });
    button.addEventListener("click", () => {
      const holes = session.drawing.shapes.filter((s) => s.kind === "hole");
      const name = [kind.words, ...holes.map((_, i) => `${kind.words} ${i + 2}`)].find((n) => holes.every((h) => h.name !== n)) ?? kind.words;
      const number = Math.max(0, ...session.drawing.shapes.map((s) => Number(/^hole-(\d+)$/.exec(s.key)?.[1] ?? 0))) + 1;
      const { shapes } = session.drawing;
      const last = shapes.map((s) => s.kind).lastIndexOf("hole");
      const hole = { key: `hole-${number}`, kind: "hole" as const, name, hole: kind.key, ring: [], taken: null };
      session.addShape(hole, last < 0 ? 1 : last + 1);
      need("sheet", HTMLDivElement).focus({ preventScroll: false });
    });
    box.append(button);
  }
}

/** Runs once the box has a size: the style sheet may come later than the script. */
function onceSized(box: HTMLElement, run: () => void): void {
  if (box.clientWidth > 0 && box.clientHeight > 0) { run(); return; }
  const watch = new ResizeObserver(() => {
    if (box.clientWidth === 0 || box.clientHeight === 0) return;
    watch.disconnect();
    run();
  });
  watch.observe(box);
}

function start(page: PageData, box: HTMLDivElement): void {
  const { session, resumed } = open(page);

  let sheet: Sheet | null = null;
  const current = (): Sheet => sheet!;
  let walk: Walk | null = null;
  let picture: PictureControls | null = null;
  sheet = new Sheet(box, session, {
    paper: () => ({ picture: session.drawing.picture, image: picture?.image ?? null, strength: picture?.strength ?? 0.75, system: session.system }),
    walk: () => walk?.track() ?? [],
  });
  new Panel(session, current, JSON.stringify(page.stored ?? page.drawing), page.errors);
  new CornerList(session, current);
  picture = new PictureControls(session, current, page.lawn);
  walk = new Walk(session, current, page.lawn);
  addKinds(page, session);
  listen(box, session, sheet);
  sheet.fit();

  if (resumed !== null) {
    const note = make("p", `What you drew ${new Date(resumed).toLocaleString("en-US", { dateStyle: "medium", timeStyle: "short" })} and did not save is back. `, { class: "draw-saved", role: "status" });
    const drop = make("button", "Go back to what is saved", { type: "button", class: "plain" });
    drop.addEventListener("click", () => { session.rebase(page.stored ?? page.drawing, page.stamp); note.remove(); });
    note.append(drop);
    need("draw", HTMLDivElement).before(note);
  }
  document.getElementById("draw-theirs")?.addEventListener("click", () => new DraftBox(`seedfall-drawing-${page.lawn}`).drop());
  if (page.source === "saved") history.replaceState(null, "", location.pathname);

  need("typed", HTMLDetailsElement).remove();
  const fill = (form: HTMLFormElement): void => {
    // The server reads the same fields a page without script posts.
    form.querySelectorAll("[data-drawn]").forEach((e) => e.remove());
    const fields = formFields(session.history.now);
    for (const field of fields) field.dataset["drawn"] = "";
    form.append(...fields);
    const stamp = form.elements.namedItem("stamp");
    if (stamp instanceof HTMLInputElement) stamp.value = session.base;
  };
  const form = need("draw-form", HTMLFormElement);
  form.addEventListener("submit", () => { fill(form); session.sent(); });
  const file = need("draw-file", HTMLFormElement);
  file.addEventListener("submit", () => fill(file));
}

const page = readPage();
if (page) {
  const box = need("sheet", HTMLDivElement);
  for (const element of document.querySelectorAll<HTMLElement>(".draw .scripted")) element.hidden = false;
  document.getElementById("still")?.setAttribute("hidden", "");
  // Never flat, not even in the moment a page is laid out anew without its style.
  box.style.minHeight = "19rem";
  onceSized(box, () => start(page, box));
}
