// Elements of the page by id, and small words.

export function need<T extends HTMLElement>(id: string, kind: new () => T): T {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`the page lacks #${id}`);
  return found;
}

export function make<K extends keyof HTMLElementTagNameMap>(tag: K, text = "", attributes: Record<string, string> = {}): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  element.textContent = text;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** Says something aloud for those who listen, once what is being done pauses. */
export class Voice {
  private timer = 0;

  constructor(private readonly place: HTMLElement) {}

  say(text: string, after = 500): void {
    window.clearTimeout(this.timer);
    this.timer = window.setTimeout(() => { if (this.place.textContent !== text) this.place.textContent = text; }, after);
  }
}
