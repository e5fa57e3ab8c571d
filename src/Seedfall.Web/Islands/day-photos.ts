// Pictures from the spots: made smaller, kept on the phone, sent when there is a signal.

import { lawnNow, newId, type SheetFacts } from "./day-clock.js";
import { NO_ROOM, isFull, type Item, type Shelf } from "./day-store.js";
import { download } from "./day-waiting.js";

/** The server keeps no more pixels than this along the longer side. */
const LONG_SIDE = 2000;

/** Room left for entries: pictures give way to them. */
const ROOM_BYTES = 8 << 20;

export class Photos {
  constructor(private readonly shelf: Shelf, private readonly sheet: SheetFacts, private readonly written: () => void) {}

  start(input: HTMLInputElement): void {
    input.addEventListener("change", () => void this.take(input));
  }

  private async take(input: HTMLInputElement): Promise<void> {
    const file = input.files?.[0];
    if (!file || input.dataset.busy !== undefined) return;
    input.dataset.busy = "";
    try {
      const blob = await smaller(file);
      const now = lawnNow(this.sheet);
      await this.keep(input, {
        id: newId(), lawnId: this.sheet.lawn, lawnName: this.sheet.name, kind: "photo",
        payload: { spot: input.dataset.spot as string, taken: now.slice(0, 10), name: input.dataset.name ?? "", type: blob.type || "image/jpeg" },
        blob, capturedAt: now, appVersion: this.sheet.version, state: "waiting", why: [], sealed: false,
        label: `Picture: ${input.dataset.name}, ${now.slice(11, 16)}`, page: location.pathname, record: `spot/${input.dataset.spot}`, values: {},
      }, blob);
    } catch {
      const said = input.parentElement?.querySelector<HTMLElement>(".mine");
      if (said) said.textContent = "The picture could not be read. Take it again.";
    } finally {
      delete input.dataset.busy;
    }
  }

  /** The same picture under the same id, however often it is tried. */
  private async keep(input: HTMLInputElement, item: Item, blob: Blob): Promise<void> {
    const box = document.getElementById(`unkept-${item.id}`);
    try {
      if (await short(blob.size)) throw new DOMException("little room", "QuotaExceededError");
      await this.shelf.put(item);
      box?.remove();
      input.value = "";
      this.written();
    } catch (error) {
      const words = isFull(error)
        ? `The phone's storage is nearly full: this picture is not kept, nor sent. ${NO_ROOM} and try again, or save it.`
        : "This picture could not be kept on the phone. Try again, or save it.";
      const problem = box?.querySelector(".problem");
      if (problem) problem.textContent = words;
      else input.after(this.unkept(input, item, blob, words));
    }
  }

  /** A picture that found no room: it is held as long as the page is open, and says so. */
  private unkept(input: HTMLInputElement, item: Item, blob: Blob, words: string): HTMLElement {
    const box = document.createElement("div");
    box.id = `unkept-${item.id}`;
    box.className = "unkept";
    const problem = Object.assign(document.createElement("p"), { className: "problem", textContent: words });
    problem.setAttribute("role", "alert");
    const name = Object.assign(document.createElement("p"), { textContent: `${item.label}. It is lost when this page closes.` });
    const [again, save] = ["Try to keep it again", "Save the picture"].map((text) => Object.assign(document.createElement("button"), { type: "button", textContent: text })) as [HTMLButtonElement, HTMLButtonElement];
    again.addEventListener("click", async () => {
      if (again.disabled) return;
      again.disabled = true;
      await this.keep(input, item, blob);
      again.disabled = false;
    });
    save.addEventListener("click", () => download(blob, `${item.capturedAt.slice(0, 10)}-${item.id}.jpg`));
    const buttons = Object.assign(document.createElement("p"), { className: "mend" });
    buttons.append(again, save);
    box.append(problem, name, buttons);
    return box;
  }
}

async function short(size: number): Promise<boolean> {
  if (!navigator.storage?.estimate) return false;
  const { quota, usage } = await navigator.storage.estimate();
  return quota !== undefined && usage !== undefined && quota - usage < size + ROOM_BYTES;
}

/** As a JPEG no longer than the server keeps; as it came where this browser cannot read it. The place goes with the rest of what the camera wrote. */
async function smaller(file: File): Promise<Blob> {
  try {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONG_SIDE / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
    canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const small = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", 0.92));
    return small ?? file;
  } catch {
    if (!file.type.startsWith("image/")) throw new Error("no picture");
    return file;
  }
}
