// Pictures from the spots: made smaller, kept on the phone, sent when there is a signal.

import { lawnNow, newId, type SheetFacts } from "./day-clock.js";
import { isFull, type Shelf } from "./day-store.js";

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
    const said = input.parentElement?.querySelector<HTMLElement>(".mine");
    const file = input.files?.[0];
    if (!file || input.dataset.busy !== undefined) return;
    input.dataset.busy = "";
    try {
      const blob = await smaller(file);
      if (await short(blob.size)) throw new DOMException("little room", "QuotaExceededError");
      const now = lawnNow(this.sheet);
      await this.shelf.put({
        id: newId(), lawnId: this.sheet.lawn, lawnName: this.sheet.name, kind: "photo",
        payload: { spot: input.dataset.spot as string, taken: now.slice(0, 10), name: input.dataset.name ?? "", type: blob.type || "image/jpeg" },
        blob, capturedAt: now, appVersion: this.sheet.version, state: "waiting", why: [], sealed: false,
        label: `Picture: ${input.dataset.name}, ${now.slice(11, 16)}`, page: location.pathname, record: `spot/${input.dataset.spot}`, values: {},
      });
      input.value = "";
      this.written();
    } catch (error) {
      if (said) said.textContent = isFull(error) ? "The phone's storage is nearly full: the picture is not kept here. Entries go first. Keep it in the camera's own album and send it later." : "The picture could not be read. Take it again.";
    } finally {
      delete input.dataset.busy;
    }
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
