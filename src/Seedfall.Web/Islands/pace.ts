// Beats the steps of a walking pace: sound, a buzz, and left and right taking turns on the screen. Needs no network once loaded.

const least = 30;
const most = 180;

/** Sounds a click at an exact time of the audio clock. */
function click(audio: AudioContext, at: number, hertz: number): void {
  const tone = audio.createOscillator();
  const loud = audio.createGain();
  tone.frequency.value = hertz;
  loud.gain.setValueAtTime(0.0001, at);
  loud.gain.exponentialRampToValueAtTime(0.6, at + 0.004);
  loud.gain.exponentialRampToValueAtTime(0.0001, at + 0.07);
  tone.connect(loud).connect(audio.destination);
  tone.start(at);
  tone.stop(at + 0.08);
}

function element<K extends keyof HTMLElementTagNameMap>(tag: K, text = "", kind = ""): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  made.textContent = text;
  if (kind) made.className = kind;
  return made;
}

function start(box: HTMLElement): void {
  const steps = Number(box.dataset["steps"]);
  const course = Number(box.dataset["seconds"]);
  if (!(steps >= least && steps <= most)) return;

  const beat = 60 / steps;
  const [left, right] = [element("span", "Left"), element("span", "Right")];
  const feet = element("div", "", "feet");
  feet.setAttribute("aria-hidden", "true");
  feet.append(left, right);
  const button = element("button", "Start the beat", "go");
  button.type = "button";
  const said = element("p");
  said.setAttribute("role", "status");
  const panel = element("div", "", "beat");
  panel.append(feet, button, said);
  box.append(panel);

  let audio: AudioContext | undefined;
  let timer = 0;
  let heard = 0;
  let seen = 0;
  let sounded = 0;
  let shown = 0;
  let lock: { release(): Promise<void> } | undefined;

  const now = (): number => performance.now() / 1000;
  const rounds = (beats: number): number => Math.floor((beats * beat) / course);

  const show = (count: number): void => {
    left.classList.toggle("on", count % 2 === 0);
    right.classList.toggle("on", count % 2 === 1);
    navigator.vibrate?.(40);
    const walked = rounds(count);
    if (count > 0 && walked > rounds(count - 1)) said.textContent = walked === 1 ? "One course walked." : `${walked} courses walked.`;
  };

  // Sounds are handed to the audio clock a little ahead, so that a busy phone does not stumble.
  const tick = (): void => {
    while (audio && heard + sounded * beat < audio.currentTime + 0.25) {
      const end = sounded > 0 && rounds(sounded) > rounds(sounded - 1);
      click(audio, Math.max(audio.currentTime, heard + sounded * beat), end ? 1760 : sounded % 2 === 0 ? 880 : 660);
      sounded++;
    }
    const due = Math.floor((now() - seen) / beat);
    if (due >= shown) {
      show(due);
      shown = due + 1;
    }
  };

  const stop = (): void => {
    window.clearInterval(timer);
    timer = 0;
    void audio?.close();
    audio = undefined;
    void lock?.release();
    lock = undefined;
    left.classList.remove("on");
    right.classList.remove("on");
    button.textContent = "Start the beat";
    said.textContent = "Stopped.";
  };

  const go = (): void => {
    try { audio = new AudioContext(); void audio.resume(); } catch { audio = undefined; }
    heard = (audio?.currentTime ?? 0) + 0.1;
    seen = now() + 0.1;
    sounded = 0;
    shown = 0;
    timer = window.setInterval(tick, 25);
    button.textContent = "Stop";
    said.textContent = `${Math.round(steps)} steps a minute. A higher tone ends each course.`;
    const wake = (navigator as Navigator & { wakeLock?: { request(kind: "screen"): Promise<{ release(): Promise<void> }> } }).wakeLock;
    wake?.request("screen").then((held) => { if (timer) lock = held; else void held.release(); }, () => undefined);
  };

  button.addEventListener("click", () => { if (timer) stop(); else go(); });
}

const pace = document.querySelector<HTMLElement>("#pace");
if (pace) start(pace);
