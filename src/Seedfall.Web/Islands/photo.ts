// The phone's camera with the last picture laid over it as a ghost, to stand as it was taken. Without script, without a camera
// or without leave to use it, the file field takes the picture and the last one stands beside it.

function start(form: HTMLFormElement, last: HTMLImageElement): void {
  const file = form.elements.namedItem("photo");
  const media = navigator.mediaDevices as MediaDevices | undefined;
  if (!(file instanceof HTMLInputElement) || !media?.getUserMedia || !window.isSecureContext) return;

  const open = document.createElement("button");
  open.type = "button";
  open.textContent = "Line up with the last picture";
  const said = document.createElement("p");
  said.className = "hint";
  said.setAttribute("role", "status");
  const box = document.createElement("div");
  box.className = "field";
  box.append(open, said);
  form.querySelector(".field")?.before(box);

  let stream: MediaStream | null = null;
  const stop = (): void => {
    stream?.getTracks().forEach((track) => track.stop());
    stream = null;
  };

  open.addEventListener("click", async () => {
    said.textContent = "Asking for the camera…";
    try {
      stream = await media.getUserMedia({ audio: false, video: { facingMode: { ideal: "environment" }, width: { ideal: 3840 }, height: { ideal: 2160 } } });
    } catch {
      said.textContent = "The camera was not given. Take the picture with the field below; the last one stands above.";
      return;
    }
    said.textContent = "";
    open.hidden = true;
    show(stream);
  });

  function show(from: MediaStream): void {
    const video = document.createElement("video");
    video.playsInline = true;
    video.muted = true;
    video.srcObject = from;
    void video.play();
    const ghost = document.createElement("img");
    ghost.src = last.dataset["full"] ?? last.src;
    ghost.alt = "";
    ghost.className = "ghost";
    const view = document.createElement("div");
    view.className = "viewfinder";
    view.append(video, ghost);

    const slider = document.createElement("input");
    slider.type = "range";
    slider.id = "ghost-strength";
    slider.min = "0";
    slider.max = "100";
    slider.value = "50";
    const label = document.createElement("label");
    label.htmlFor = slider.id;
    label.textContent = "Ghost of the last picture";
    const fade = (): void => { ghost.style.opacity = String(Number(slider.value) / 100); };
    slider.addEventListener("input", fade);
    fade();

    const take = document.createElement("button");
    take.type = "button";
    take.className = "go";
    take.textContent = "Take it";
    const close = document.createElement("button");
    close.type = "button";
    close.textContent = "Close the camera";
    const buttons = document.createElement("div");
    buttons.className = "buttons";
    buttons.append(take, close);
    const shell = document.createElement("div");
    shell.className = "field";
    shell.append(view, label, slider, buttons);
    box.after(shell);
    take.focus();

    const shut = (): void => {
      stop();
      shell.remove();
      open.hidden = false;
      open.focus();
    };
    close.addEventListener("click", shut);
    take.addEventListener("click", () => {
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [video.videoWidth, video.videoHeight];
      const context = canvas.getContext("2d");
      if (!context || canvas.width === 0) {
        said.textContent = "The camera shows nothing yet. Try again in a moment.";
        return;
      }
      context.drawImage(video, 0, 0);
      canvas.toBlob((blob) => {
        if (!blob) {
          said.textContent = "The picture could not be kept. Take it with the field below.";
          return;
        }
        const held = new DataTransfer();
        held.items.add(new File([blob], "camera.jpg", { type: "image/jpeg" }));
        (file as HTMLInputElement).files = held.files;
        stop();
        said.textContent = "Sending it…";
        form.requestSubmit();
      }, "image/jpeg", 0.92);
    });
  }

  window.addEventListener("pagehide", stop);
}

const form = document.querySelector<HTMLFormElement>("form#take-form");
const last = document.querySelector<HTMLImageElement>("img#last-picture");
if (form && last) start(form, last);
