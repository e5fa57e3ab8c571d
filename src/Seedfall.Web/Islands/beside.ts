// Lays the second picture over the first with a slider between them. Without script, and on paper, they stand side by side.

function start(beside: HTMLElement): void {
  const [before, after] = beside.querySelectorAll("img");
  if (!before || !after) return;

  const stage = document.createElement("div");
  stage.className = "wipe";
  const under = before.cloneNode() as HTMLImageElement;
  const over = after.cloneNode() as HTMLImageElement;
  under.alt = "";
  over.alt = "";
  over.className = "over";
  const edge = document.createElement("div");
  edge.className = "edge";
  stage.append(under, over, edge);

  const slider = document.createElement("input");
  slider.type = "range";
  slider.id = "wipe";
  slider.min = "0";
  slider.max = "100";
  slider.value = "50";
  const label = document.createElement("label");
  label.htmlFor = slider.id;
  label.textContent = "Slide from before to after";
  const box = document.createElement("div");
  box.className = "wiper";
  box.append(stage, label, slider);

  const show = (): void => {
    const share = Number(slider.value);
    over.style.clipPath = `inset(0 0 0 ${100 - share}%)`;
    edge.style.left = `${100 - share}%`;
    slider.setAttribute("aria-valuetext", share === 0 ? "all before" : share === 100 ? "all after" : `${share} % after, from the right`);
  };
  slider.addEventListener("input", show);

  let held = false;
  const follow = (event: PointerEvent): void => {
    const { left, width } = stage.getBoundingClientRect();
    slider.value = String(Math.round(100 - (100 * (event.clientX - left)) / width));
    show();
  };
  stage.addEventListener("pointerdown", (event) => { held = true; stage.setPointerCapture(event.pointerId); follow(event); });
  stage.addEventListener("pointermove", (event) => { if (held) follow(event); });
  stage.addEventListener("pointerup", () => { held = false; });
  stage.addEventListener("pointercancel", () => { held = false; });
  beside.before(box);
  show();
}

const beside = document.querySelector<HTMLElement>("#beside");
if (beside) start(beside);
