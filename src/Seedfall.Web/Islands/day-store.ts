// What this phone keeps of the day's work: the outbox and the marks. In IndexedDB; in memory only where the browser keeps nothing.

export type Entry = { id: string; at: string; patch?: string; remark?: string; what: Record<string, unknown> };

export interface PhotoNote { spot: string; taken: string; name: string; type: string }

export interface Item {
  seq?: number;
  id: string;
  lawnId: string;
  lawnName: string;
  kind: "entry" | "photo";
  payload: Entry | PhotoNote;
  blob?: Blob;
  capturedAt: string;
  appVersion: string;
  state: "waiting" | "parked";
  why: string[];
  /** True once its words are final: set before the first attempt to send. */
  sealed: boolean;
  label: string;
  /** Where it was written, so that it can be mended there. */
  page: string;
  record: string;
  values: Record<string, string>;
}

export interface Shelf {
  /** False where nothing outlives the page. */
  readonly lasting: boolean;
  /** True where the last thing written down found no room. */
  readonly full: boolean;
  /** Called when that changes. */
  told: () => void;
  /** In the order written. */
  items(): Promise<Item[]>;
  /** Adds, or takes the place of the unsent one with the same id. Throws where there is no room. */
  put(item: Item): Promise<void>;
  /** How far something that is kept has come. Where there is no room it holds as long as the page. */
  change(item: Item): Promise<void>;
  drop(id: string): Promise<void>;
  marks(prefix: string): Promise<Map<string, string>>;
  /** False where there was no room: then it holds as long as the page. */
  mark(key: string, value: string | null): Promise<boolean>;
  wipe(): Promise<void>;
}

const NAME = "seedfall-field";
const KEEP_MS = 7 * 86_400_000;

interface Mark { value: string; at: number }

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error ?? new Error("storage failed"));
  });
}

/** Settles with the transaction. What a request stumbled over is known only when all of it is undone. */
function ended(tx: IDBTransaction): Promise<void> {
  return new Promise((done, failed) => {
    tx.oncomplete = () => done();
    tx.onabort = () => failed(tx.error ?? new Error("storage failed"));
  });
}

class DiskShelf implements Shelf {
  readonly lasting = true;
  full = false;
  told: () => void = () => undefined;
  /** What found no room, as long as the page. */
  private readonly changed = new Map<string, Item>();
  private readonly loose = new Map<string, string>();

  constructor(private readonly db: IDBDatabase) {}

  async items(): Promise<Item[]> {
    const kept = await asked(this.db.transaction("outbox").objectStore("outbox").getAll() as IDBRequest<Item[]>);
    return kept.map((item) => this.changed.get(item.id) ?? item);
  }

  async put(item: Item): Promise<void> {
    await this.add("outbox", async (box) => {
      const seq = await asked(box.index("id").getKey(item.id));
      box.put(seq === undefined ? item : { ...item, seq: seq as number });
    });
    this.changed.delete(item.id);
  }

  async change(item: Item): Promise<void> {
    try {
      await this.put(item);
    } catch (error) {
      if (!isFull(error)) throw error;
      this.changed.set(item.id, item);
    }
  }

  async drop(id: string): Promise<void> {
    await this.write("outbox", async (box) => {
      const seq = await asked(box.index("id").getKey(id));
      if (seq !== undefined) box.delete(seq);
    });
    this.changed.delete(id);
  }

  async marks(prefix: string): Promise<Map<string, string>> {
    const store = this.db.transaction("marks").objectStore("marks");
    const range = IDBKeyRange.bound(prefix, prefix + "\uffff");
    const [keys, values] = await Promise.all([asked(store.getAllKeys(range)), asked(store.getAll(range) as IDBRequest<Mark[]>)]);
    const kept = keys.map((key, i): [string, string] => [String(key), values[i]?.value ?? ""]);
    return new Map([...kept, ...this.loose].filter(([key]) => key.startsWith(prefix)).map(([key, value]) => [key.slice(prefix.length), value]));
  }

  async mark(key: string, value: string | null): Promise<boolean> {
    this.loose.delete(key);
    if (value === null) {
      await this.write("marks", async (marks) => void marks.delete(key));
      return true;
    }
    try {
      await this.add("marks", async (marks) => void marks.put({ value, at: Date.now() } satisfies Mark, key));
      return true;
    } catch (error) {
      if (!isFull(error)) throw error;
      this.loose.set(key, value);
      return false;
    }
  }

  async wipe(): Promise<void> {
    this.db.close();
    await new Promise<void>((done, failed) => {
      const gone = indexedDB.deleteDatabase(NAME);
      gone.onsuccess = () => done();
      gone.onerror = () => failed(gone.error ?? new Error("storage failed"));
    });
  }

  /** Marks of days long past go by themselves. */
  async prune(): Promise<void> {
    await this.write("marks", async (marks) => {
      const cursor = marks.openCursor();
      cursor.onsuccess = () => {
        const at = cursor.result;
        if (!at) return;
        if (Date.now() - (at.value as Mark).at > KEEP_MS) at.delete();
        at.continue();
      };
    });
  }

  /** A write that needs room, which tells whether there is any. */
  private async add(store: string, work: (to: IDBObjectStore) => Promise<void>): Promise<void> {
    const before = this.full;
    try {
      await this.write(store, work);
      this.full = false;
    } catch (error) {
      this.full ||= isFull(error);
      throw error;
    } finally {
      if (this.full !== before) this.told();
    }
  }

  private async write(store: string, work: (to: IDBObjectStore) => Promise<void>): Promise<void> {
    const tx = this.db.transaction(store, "readwrite", { durability: "strict" });
    await Promise.all([ended(tx), work(tx.objectStore(store))]);
  }
}

class LooseShelf implements Shelf {
  readonly lasting = false;
  readonly full = false;
  told: () => void = () => undefined;
  private readonly box = new Map<string, Item>();
  private readonly notes = new Map<string, string>();

  async items(): Promise<Item[]> { return [...this.box.values()]; }

  async put(item: Item): Promise<void> { this.box.set(item.id, item); }

  async change(item: Item): Promise<void> { this.box.set(item.id, item); }

  async drop(id: string): Promise<void> { this.box.delete(id); }

  async marks(prefix: string): Promise<Map<string, string>> {
    return new Map([...this.notes].filter(([key]) => key.startsWith(prefix)).map(([key, value]) => [key.slice(prefix.length), value]));
  }

  async mark(key: string, value: string | null): Promise<boolean> {
    if (value === null) this.notes.delete(key);
    else this.notes.set(key, value);
    return true;
  }

  async wipe(): Promise<void> {
    this.box.clear();
    this.notes.clear();
  }
}

export async function openShelf(): Promise<Shelf> {
  try {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("outbox", { keyPath: "seq", autoIncrement: true }).createIndex("id", "id", { unique: true });
      request.result.createObjectStore("marks");
    };
    const db = await asked(request);
    db.onversionchange = () => db.close();
    const shelf = new DiskShelf(db);
    void shelf.prune().catch(() => undefined);
    return shelf;
  } catch {
    return new LooseShelf();
  }
}

/** What to do then. */
export const NO_ROOM = "Make room on the phone (what waits here leaves by itself with a signal)";

/** True where the storage is full. */
export function isFull(error: unknown): boolean {
  return error instanceof DOMException && (error.name === "QuotaExceededError" || error.name === "NS_ERROR_DOM_QUOTA_REACHED");
}
