// The drawing into the form's own fields, in meters, so that the server reads one kind of form only.

import { mm, type Drawing, type Shape } from "./drawing-model";
import { make } from "./drawing-words";

const hidden = (name: string, value: string): HTMLInputElement => {
  const field = make("input", "", { type: "hidden", name });
  field.value = value;
  return field;
};

const lines = (shape: Shape): string => shape.ring.map((c) => `${mm(c.e)} ${mm(c.n)}`).join("\n");

function fieldsOf(shape: Shape, name: string): HTMLInputElement[] {
  const kind = shape.kind === "hole" ? [hidden(`${name}.kind`, shape.hole ?? "other"), hidden(`${name}.name`, shape.name)] : [];
  return [hidden(name, ""), hidden(`${name}.by`, shape.taken?.by ?? ""), hidden(`${name}.band`, shape.taken?.band != null ? String(shape.taken.band) : ""), ...kind];
}

/** Fields of a drawing. Corners go into text areas: an input would lose the line ends. */
export function formFields(drawing: Drawing): HTMLElement[] {
  let hole = 0;
  const shapes = drawing.shapes.flatMap((s) => {
    const name = s.kind === "hole" ? `hole-${++hole}` : s.key;
    const [, ...rest] = fieldsOf(s, name);
    const corners = make("textarea", "", { name, hidden: "" });
    corners.value = lines(s);
    return [corners, ...rest];
  });
  const { origin, picture } = drawing;
  return [
    hidden("unit", "m"), ...shapes,
    hidden("origin", origin ? `${origin.lat.toFixed(8)} ${origin.lon.toFixed(8)}` : ""),
    hidden("picture", picture ? JSON.stringify({ file: picture.file, width: picture.width, height: picture.height, east: picture.east, north: picture.north, metersPerPixel: picture.metersPerPixel, turnDeg: picture.turnDeg, scale: picture.scale }) : ""),
  ];
}
