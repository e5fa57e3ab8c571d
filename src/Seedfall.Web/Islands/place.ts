// A button that fills in where the phone stands. Shown only where the browser can tell.

function start(form: HTMLFormElement): void {
  const latitude = form.elements.namedItem("latitude");
  const longitude = form.elements.namedItem("longitude");
  if (!(latitude instanceof HTMLInputElement) || !(longitude instanceof HTMLInputElement) || !("geolocation" in navigator) || !window.isSecureContext) return;

  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Fill in where I stand";
  const said = document.createElement("p");
  said.className = "hint";
  said.setAttribute("role", "status");
  const box = document.createElement("div");
  box.className = "field";
  box.append(button, said);
  latitude.closest(".field")?.before(box);

  const put = (field: HTMLInputElement, degrees: number, above: string, below: string): void => {
    field.value = Math.abs(degrees).toFixed(4);
    const unit = form.elements.namedItem(`${field.name}.unit`);
    if (unit instanceof HTMLSelectElement) unit.value = degrees < 0 ? below : above;
  };

  button.addEventListener("click", () => {
    said.textContent = "Asking the phone…";
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        put(latitude, coords.latitude, "N", "S");
        put(longitude, coords.longitude, "E", "W");
        said.textContent = `Filled in, to about ${Math.round(coords.accuracy)} m.`;
      },
      () => { said.textContent = "The phone did not say. Type the degrees instead."; },
      { enableHighAccuracy: false, timeout: 15000, maximumAge: 600000 },
    );
  });
}

const form = document.querySelector<HTMLFormElement>("form.leaf");
if (form) start(form);
