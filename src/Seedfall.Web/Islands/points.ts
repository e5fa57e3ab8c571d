// Points put on a picture by mouse, finger or keyboard: the four corners of an overview, or places to call green or not.
// Without script the picture is a button that sends each tap by itself.

interface Point { x: number; y: number }

const SVG = "http://www.w3.org/2000/svg";
const MOST_TAPS = 10;

/** A picture with dots on it; tells where it was pointed at, in shares of its width and height. */
class Board {
  readonly element = document.createElement("div");
  private readonly dots = document.createElementNS(SVG, "svg");
  private readonly cross: SVGElement;
  private at: Point = { x: 0.5, y: 0.5 };

  constructor(source: string, label: string, private readonly put: (at: Point) => void) {
    const picture = document.createElement("img");
    picture.src = source;
    picture.alt = "";
    picture.draggable = false;
    this.dots.setAttribute("viewBox", "0 0 100 100");
    this.dots.setAttribute("preserveAspectRatio", "none");
    this.dots.setAttribute("aria-hidden", "true");
    this.cross = this.line("cross");
    this.element.className = "board";
    this.element.tabIndex = 0;
    this.element.setAttribute("role", "application");
    this.element.setAttribute("aria-label", `${label}. Arrow keys move the cross, Enter puts a point.`);
    this.element.append(picture, this.dots);

    this.element.addEventListener("click", (event) => {
      const { left, top, width, height } = this.element.getBoundingClientRect();
      this.point({ x: (event.clientX - left) / width, y: (event.clientY - top) / height });
    });
    this.element.addEventListener("keydown", (event) => this.key(event));
  }

  show(points: readonly { at: Point; text: string; kind?: string }[], closed: boolean): void {
    this.element.querySelectorAll(".dot").forEach((dot) => dot.remove());
    this.dots.querySelectorAll(".outline").forEach((line) => line.remove());
    if (closed && points.length > 1) {
      const line = document.createElementNS(SVG, "polygon");
      line.setAttribute("class", "outline");
      line.setAttribute("points", points.map(({ at }) => `${100 * at.x},${100 * at.y}`).join(" "));
      this.dots.append(line);
    }
    for (const { at, text, kind } of points) {
      const dot = document.createElement("span");
      dot.className = `dot ${kind ?? ""}`;
      dot.textContent = text;
      dot.style.left = `${100 * at.x}%`;
      dot.style.top = `${100 * at.y}%`;
      this.element.append(dot);
    }
  }

  private line(name: string): SVGElement {
    const path = document.createElementNS(SVG, "path");
    path.setAttribute("class", name);
    this.dots.append(path);
    return path;
  }

  private key(event: KeyboardEvent): void {
    const step = event.shiftKey ? 0.05 : 0.005;
    const moves: Record<string, Point> = { ArrowLeft: { x: -step, y: 0 }, ArrowRight: { x: step, y: 0 }, ArrowUp: { x: 0, y: -step }, ArrowDown: { x: 0, y: step } };
    const move = moves[event.key];
    if (move) {
      this.at = { x: Math.min(Math.max(this.at.x + move.x, 0), 1), y: Math.min(Math.max(this.at.y + move.y, 0), 1) };
      this.cross.setAttribute("d", `M${100 * this.at.x} 0V100M0 ${100 * this.at.y}H100`);
    } else if (event.key === "Enter") {
      this.point(this.at);
    } else {
      return;
    }
    event.preventDefault();
  }

  private point(at: Point): void {
    if (at.x >= 0 && at.x <= 1 && at.y >= 0 && at.y <= 1) this.put(at);
  }
}

function tell(board: Board): HTMLElement {
  const said = document.createElement("p");
  said.className = "hint";
  said.setAttribute("role", "status");
  board.element.after(said);
  return said;
}

function button(text: string, press: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  made.addEventListener("click", press);
  return made;
}

function corners(form: HTMLFormElement, picker: Element, image: HTMLInputElement): void {
  const names = ["near left", "near right", "far right", "far left"];
  const field = (i: number, axis: string): HTMLInputElement => form.elements.namedItem(`m${i + 1}${axis}`) as HTMLInputElement;
  const read = (): (Point | null)[] => names.map((_, i) => {
    const [x, y] = [field(i, "x").value, field(i, "y").value];
    return x === "" || y === "" ? null : { x: Number(x) / 100, y: Number(y) / 100 };
  });
  const set = (i: number, at: Point | null): void => {
    field(i, "x").value = at ? (100 * at.x).toFixed(2) : "";
    field(i, "y").value = at ? (100 * at.y).toFixed(2) : "";
  };

  const board = new Board(image.src, "The picture to mark corners on", (at) => {
    const marks = read();
    const free = marks.findIndex((m) => m === null);
    // With all four marked, the nearest moves.
    const index = free >= 0 ? free : nearest(marks as Point[], at);
    set(index, at);
    show();
  });
  picker.replaceChildren(board.element);
  const said = tell(board);
  said.after(button("Mark them anew", () => { names.forEach((_, i) => set(i, null)); show(); }));
  form.querySelector(".marked")?.remove();
  form.parentElement?.querySelector(".next-mark")?.remove();
  form.addEventListener("input", () => show());

  function show(): void {
    const marks = read();
    const free = marks.findIndex((m) => m === null);
    board.show(marks.flatMap((at, i) => (at ? [{ at, text: String(i + 1) }] : [])), true);
    said.textContent = free >= 0 ? `Now the ${names[free]} corner.` : "All four are marked. Point beside one to move it.";
  }
  show();
}

function nearest(points: readonly Point[], at: Point): number {
  let best = 0;
  points.forEach((p, i) => {
    const to = points[best];
    if (to && Math.hypot(p.x - at.x, p.y - at.y) < Math.hypot(to.x - at.x, to.y - at.y)) best = i;
  });
  return best;
}

function taps(form: HTMLFormElement, picker: Element, image: HTMLInputElement): void {
  const kept: { at: Point; text: string; kind: string; value: string }[] = [];
  const held = document.createElement("div");
  const send = document.createElement("button");
  send.className = "go";
  send.textContent = "Measure again";
  const board = new Board(image.src, "The picture to tap", (at) => {
    if (kept.length >= MOST_TAPS) return;
    const value = new FormData(form).get("tapped") === "not" ? "not" : "green";
    kept.push({ at, value, text: value === "green" ? "✓" : "✕", kind: value });
    show();
  });
  picker.replaceChildren(board.element);
  const said = tell(board);
  const buttons = document.createElement("div");
  buttons.className = "buttons";
  buttons.append(send, button("Take the last one back", () => { kept.pop(); show(); }));
  said.after(held, buttons);

  function show(): void {
    board.show(kept, false);
    held.replaceChildren(...kept.flatMap(({ at, value }, i) => [hidden(`at.${i}`, `${at.x.toFixed(5)} ${at.y.toFixed(5)}`), hidden(`answer.${i}`, value)]));
    send.disabled = kept.length === 0;
    said.textContent = kept.length >= MOST_TAPS ? "Ten points: that is plenty. Measure again." : `${kept.length} of ten points.`;
  }
  show();
}

function hidden(name: string, value: string): HTMLInputElement {
  const input = document.createElement("input");
  input.type = "hidden";
  input.name = name;
  input.value = value;
  return input;
}

for (const form of document.querySelectorAll<HTMLFormElement>("form[data-picks]")) {
  const picker = form.querySelector(".picker");
  const image = picker?.querySelector<HTMLInputElement>("input[type=image]");
  if (picker && image) (form.dataset["picks"] === "corners" ? corners : taps)(form, picker, image);
}
