// A note by voice, where the browser offers it.

interface Heard { results: ArrayLike<ArrayLike<{ transcript: string }>> }

interface Listener {
  lang: string;
  onresult: ((heard: Heard) => void) | null;
  onend: (() => void) | null;
  onerror: (() => void) | null;
  start(): void;
  stop(): void;
}

export function voice(): void {
  const offered = window as unknown as { SpeechRecognition?: new () => Listener; webkitSpeechRecognition?: new () => Listener };
  const Ear = offered.SpeechRecognition ?? offered.webkitSpeechRecognition;
  if (!Ear) return;
  for (const input of document.querySelectorAll<HTMLInputElement>("input[data-voice]")) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "speak";
    button.textContent = "Speak";
    const name = document.querySelector(`label[for="${input.id}"]`)?.textContent?.trim() ?? "Note";
    button.setAttribute("aria-label", `${name}: speak it. The sound goes to the maker of this browser or phone.`);
    const where = Object.assign(document.createElement("p"), { className: "hint", textContent: "The sound goes to the maker of this browser or phone." });
    let ear: Listener | null = null;
    const quiet = (): void => { ear = null; button.textContent = "Speak"; };
    button.addEventListener("click", () => {
      if (ear) {
        ear.stop();
        return;
      }
      ear = new Ear();
      ear.lang = document.documentElement.lang || "en";
      ear.onresult = (heard) => {
        input.value = [input.value.trim(), heard.results[heard.results.length - 1]?.[0]?.transcript.trim()].filter(Boolean).join(" ");
        input.dispatchEvent(new Event("input", { bubbles: true }));
      };
      ear.onend = quiet;
      ear.onerror = quiet;
      button.textContent = "Stop";
      input.parentElement?.after(where);
      ear.start();
    });
    input.after(button);
  }
}
