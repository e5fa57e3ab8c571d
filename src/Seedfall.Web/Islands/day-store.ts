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
  /** In the order written. */
  items(): Promise<Item[]>;
  /** Adds, or takes the place of the unsent one with the same id. */
  put(item: Item): Promise<void>;
  drop(id: string): Promise<void>;
  marks(prefix: string): Promise<Map<string, string>>;
  mark(key: string, value: string | null): Promise<void>;
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

function ended(tx: IDBTransaction): Promise<void> {
  return new Promise((done, failed) => {
    tx.oncomplete = () => done();
    tx.onabort = () => failed(tx.error ?? new Error("storage failed"));
    tx.onerror = () => failed(tx.error ?? new Error("storage failed"));
  });
}

class DiskShelf implements Shelf {
  readonly lasting = true;

  constructor(private readonly db: IDBDatabase) {}

  async items(): Promise<Item[]> {
    return asked(this.db.transaction("outbox").objectStore("outbox").getAll() as IDBRequest<Item[]>);
  }

  async put(item: Item): Promise<void> {
    const tx = this.write("outbox");
    const done = ended(tx);
    const box = tx.objectStore("outbox");
    const seq = await asked(box.index("id").getKey(item.id));
    box.put(seq === undefined ? item : { ...item, seq: seq as number });
    await done;
  }

  async drop(id: string): Promise<void> {
    const tx = this.write("outbox");
    const done = ended(tx);
    const seq = await asked(tx.objectStore("outbox").index("id").getKey(id));
    if (seq !== undefined) tx.objectStore("outbox").delete(seq);
    await done;
  }

  async marks(prefix: string): Promise<Map<string, string>> {
    const store = this.db.transaction("marks").objectStore("marks");
    const range = IDBKeyRange.bound(prefix, prefix + "\uffff");
    const [keys, values] = await Promise.all([asked(store.getAllKeys(range)), asked(store.getAll(range) as IDBRequest<Mark[]>)]);
    return new Map(keys.map((key, i) => [String(key).slice(prefix.length), values[i]?.value ?? ""]));
  }

  async mark(key: string, value: string | null): Promise<void> {
    const tx = this.write("marks");
    const done = ended(tx);
    if (value === null) tx.objectStore("marks").delete(key);
    else tx.objectStore("marks").put({ value, at: Date.now() } satisfies Mark, key);
    await done;
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
    const tx = this.write("marks");
    const done = ended(tx);
    const cursor = tx.objectStore("marks").openCursor();
    cursor.onsuccess = () => {
      const at = cursor.result;
      if (!at) return;
      if (Date.now() - (at.value as Mark).at > KEEP_MS) at.delete();
      at.continue();
    };
    await done;
  }

  private write(store: string): IDBTransaction {
    return this.db.transaction(store, "readwrite", { durability: "strict" });
  }
}

class LooseShelf implements Shelf {
  readonly lasting = false;
  private readonly box = new Map<string, Item>();
  private readonly notes = new Map<string, string>();

  async items(): Promise<Item[]> { return [...this.box.values()]; }

  async put(item: Item): Promise<void> { this.box.set(item.id, item); }

  async drop(id: string): Promise<void> { this.box.delete(id); }

  async marks(prefix: string): Promise<Map<string, string>> {
    return new Map([...this.notes].filter(([key]) => key.startsWith(prefix)).map(([key, value]) => [key.slice(prefix.length), value]));
  }

  async mark(key: string, value: string | null): Promise<void> {
    if (value === null) this.notes.delete(key);
    else this.notes.set(key, value);
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

/** True where the storage is full. */
export function isFull(error: unknown): boolean {
  return error instanceof DOMException && (error.name === "QuotaExceededError" || error.name === "NS_ERROR_DOM_QUOTA_REACHED");
}
