// The sheet one draws on: pan, pinch, tap, drag, snap. It shows the session and tells it what the pointer did.

import OlMap from "ol/Map";
import type MapBrowserEvent from "ol/MapBrowserEvent";
import View from "ol/View";
import Collection from "ol/Collection";
import Feature from "ol/Feature";
import type Geometry from "ol/geom/Geometry";
import LineString from "ol/geom/LineString";
import Point from "ol/geom/Point";
import Polygon from "ol/geom/Polygon";
import DragPan from "ol/interaction/DragPan";
import Interaction from "ol/interaction/Interaction";
import Modify from "ol/interaction/Modify";
import MouseWheelZoom from "ol/interaction/MouseWheelZoom";
import PinchZoom from "ol/interaction/PinchZoom";
import PointerInteraction from "ol/interaction/Pointer";
import Snap from "ol/interaction/Snap";
import VectorLayer from "ol/layer/Vector";
import Projection from "ol/proj/Projection";
import VectorSource from "ol/source/Vector";
import { distance, mm, withRing, type Corner, type Ring } from "./drawing-model";
import { closingStyle, cornerStyles, crossingStyle, holdStyle, pencilStyle, pickStyles, shapeStyle, sideStyles, walkStyles } from "./drawing-look";
import { Paper, ScaleBar, type PaperSight } from "./drawing-paper";
import type { Session } from "./drawing-session";
import { lengthShort } from "./drawing-text";

const coarse = matchMedia("(pointer: coarse)").matches;
const REACH = coarse ? 24 : 12;

export interface SheetSight {
  paper: () => PaperSight;
  walk: () => readonly (Corner & { readonly off: number })[];
}

const at = (c: number[]): Corner => ({ e: c[0] ?? 0, n: c[1] ?? 0 });
const coordinate = (c: Corner): number[] => [c.e, c.n];

function geometryOf(ring: Ring): Geometry | undefined {
  if (ring.length === 0) return undefined;
  if (ring.length === 1) return new Point(coordinate(ring[0]!));
  if (ring.length === 2) return new LineString(ring.map(coordinate));
  return new Polygon([[...ring, ring[0]!].map(coordinate)]);
}

export class Sheet {
  readonly map: OlMap;
  private readonly view: View;
  private readonly shapes = new VectorSource();
  private readonly meant = new VectorSource();
  private readonly marks = new VectorSource();
  private readonly held = new Collection<Feature>();
  private readonly active = new Feature();
  private readonly mark = new Feature(new Point([0, 0]));
  private readonly modify: Modify;
  private readonly bar: ScaleBar;
  private hover: Corner | null = null;

  constructor(private readonly box: HTMLElement, private readonly session: Session, private readonly sight: SheetSight) {
    this.view = new View({
      projection: new Projection({ code: "sheet", units: "m", extent: [-50_000, -50_000, 50_000, 50_000] }),
      center: [0, 0], resolution: 0.1, minResolution: 0.004, maxResolution: 6, enableRotation: false, constrainResolution: false,
    });
    const others = new VectorLayer({ source: this.shapes, declutter: true });
    const front = new VectorLayer({ source: this.meant, style: () => this.front(), updateWhileInteracting: true, updateWhileAnimating: true });
    const signs = new VectorLayer({ source: this.marks, style: () => this.signs(), updateWhileInteracting: true, updateWhileAnimating: true });
    this.modify = new Modify({
      features: this.held, pixelTolerance: REACH, style: holdStyle, deleteCondition: () => false,
      condition: (e) => (e.originalEvent as PointerEvent).isPrimary !== false && (e.originalEvent as PointerEvent).button === 0,
    });
    this.modify.on("modifyend", () => this.modified());
    this.map = new OlMap({
      target: box, view: this.view, controls: [], keyboardEventTarget: document.createElement("div"),
      layers: [new Paper(sight.paper), others, front, signs],
      interactions: [
        new DragPan(), new PinchZoom(), new MouseWheelZoom({ maxDelta: 0.8 }),
        new PictureDrag(session), this.modify, new Place((at) => this.placed(at)), new Pick((px) => this.pick(px)),
        // To the other shapes only: a shape being drawn must not catch on itself.
        new Snap({ source: this.shapes, pixelTolerance: coarse ? 18 : 12 }),
      ],
    });
    this.meant.addFeature(this.active);
    this.marks.addFeature(this.mark);
    this.active.on("change", () => this.reshaped());
    this.bar = new ScaleBar(box, session.system);
    this.map.on("pointermove", (e) => this.hovered(e));
    box.addEventListener("pointerleave", () => { this.hover = null; this.marks.changed(); });
    this.view.on(["change:center", "change:resolution"], () => this.viewed());
    session.onChange((change) => this.show(change !== "drag"));
    this.show(true);
    this.fit();
  }

  get center(): Corner { return at(this.view.getCenter() ?? [0, 0]); }

  get metersPerPixel(): number { return this.view.getResolution() ?? 0.1; }

  zoom(by: number): void { this.view.animate({ resolution: this.view.getConstrainedResolution(this.metersPerPixel / by) ?? this.metersPerPixel, duration: 150 }); }

  /** Everything drawn, the picture and the walk on one screen; a blank sheet shows a lot of usual size. */
  fit(): void {
    const points = [...this.session.drawing.shapes.flatMap((s) => s.ring), ...this.sight.walk()];
    const p = this.session.drawing.picture;
    const corners = p ? [-0.5, 0.5].flatMap((x) => [-0.5, 0.5].map((y): Corner => ({ e: p.east + x * p.width * p.metersPerPixel, n: p.north + y * p.height * p.metersPerPixel }))) : [];
    const all = points.length + corners.length > 1 ? [...points, ...corners] : [{ e: -12, n: -9 }, { e: 12, n: 9 }];
    const [es, ns] = [all.map((c) => c.e), all.map((c) => c.n)];
    const box = [Math.min(...es), Math.min(...ns), Math.max(...es), Math.max(...ns)];
    const least = 1.5;
    if (box[2]! - box[0]! < least) { box[0]! -= least; box[2]! += least; }
    if (box[3]! - box[1]! < least) { box[1]! -= least; box[3]! += least; }
    this.map.updateSize();
    // Room for the area in the corner above, the zoom buttons and the scale bar.
    this.view.fit(box, { padding: [84, coarse ? 40 : 60, 60, 40], minResolution: 0.004 });
  }

  /** Brings a point into sight. */
  look(to: Corner): void { this.view.animate({ center: coordinate(to), duration: 200 }); }

  /** The same, only where the point is out of sight. */
  keepInSight(point: Corner): void {
    const pixel = this.map.getPixelFromCoordinate(coordinate(point));
    const [width = 0, height = 0] = this.map.getSize() ?? [];
    if (!pixel || pixel[0]! < 30 || pixel[1]! < 30 || pixel[0]! > width - 30 || pixel[1]! > height - 30) this.view.setCenter(coordinate(point));
  }

  /** Everything again after something the session does not hold has changed. */
  redraw(): void { this.map.getLayers().forEach((layer) => layer.changed()); }

  private show(rebuild: boolean): void {
    const { session } = this;
    if (rebuild) {
      this.shapes.clear();
      this.shapes.addFeatures(session.drawing.shapes.filter((s) => s.key !== session.active && s.ring.length > 0).map((s) => {
        const feature = new Feature(geometryOf(s.ring));
        feature.setStyle(shapeStyle(s, false));
        return feature;
      }));
      this.own = true;
      this.active.setGeometry(geometryOf(session.ring));
      this.own = false;
      const holds = session.tool === "move" && session.ring.length > 0;
      if (holds && this.held.getLength() === 0) this.held.push(this.active);
      if (!holds && this.held.getLength() > 0) this.held.clear();
      this.box.dataset["tool"] = session.tool;
    }
    this.redraw();
  }

  private own = false;

  /** The middle of a drag: the session sees the ring as it stands. */
  private reshaped(): void {
    if (this.own) return;
    const ring = this.ringOnSheet();
    if (ring) this.session.drag(withRing(this.session.drawing, this.session.active, ring));
  }

  private ringOnSheet(): Ring | null {
    const geometry = this.active.getGeometry();
    const points = geometry instanceof Polygon ? geometry.getCoordinates()[0]!.slice(0, -1) : geometry instanceof LineString ? geometry.getCoordinates() : geometry instanceof Point ? [geometry.getCoordinates()] : null;
    return points?.map((p) => ({ e: mm(p[0]!), n: mm(p[1]!) })) ?? null;
  }

  private modified(): void {
    const ring = this.ringOnSheet();
    if (!ring) return;
    const before = this.session.history.now.shapes.find((s) => s.key === this.session.active)?.ring ?? [];
    const moved = ring.findIndex((c, i) => c.e !== before[i]?.e || c.n !== before[i]?.n);
    if (moved >= 0) this.session.corner = moved;
    this.session.takeRing(ring);
  }

  private placed(to: Corner): boolean {
    const { session } = this;
    if (session.tool === "scale") {
      session.picks = session.picks.length === 2 ? [to] : [...session.picks, to];
      session.say("choice");
      return true;
    }
    if (session.tool !== "add") return false;
    const first = session.ring[0];
    if (first && session.ring.length > 2 && distance(first, to) / this.metersPerPixel < REACH) {
      // A tap on the first corner says that the outline is done.
      session.corner = 0;
      session.use("move");
      return true;
    }
    if (session.ring.some((c) => distance(c, to) < 0.001)) return true;
    session.add(to);
    return true;
  }

  /** A corner of the shape meant under the pointer, or another shape. */
  private pick(to: Corner): boolean {
    const { session } = this;
    if (session.tool !== "move") return false;
    const reach = REACH * this.metersPerPixel;
    const near = session.ring.map((c, i) => ({ i, d: distance(c, to) })).filter((c) => c.d < reach).sort((a, b) => a.d - b.d)[0];
    if (near) session.select(near.i);
    return false;
  }

  private hovered(e: MapBrowserEvent): void {
    this.hover = this.session.tool !== "move" && (e.originalEvent as PointerEvent).pointerType === "mouse" && !e.dragging ? at(e.coordinate) : null;
    this.marks.changed();
  }

  private viewed(): void {
    this.bar.show(this.metersPerPixel);
    const { e, n } = this.center;
    // What a reader of this page, or a test, needs to turn a place on the sheet into one on the screen.
    this.box.dataset["view"] = `${e} ${n} ${this.metersPerPixel}`;
  }

  private front(): ReturnType<typeof shapeStyle> {
    const { session } = this;
    const shape = session.shape;
    if (!shape) return [];
    const closed = session.ring.length > 2;
    const crowd = session.ring.length > 40 ? [] : sideStyles(session.ring, closed, this.metersPerPixel, session.system);
    return [...shapeStyle(shape, true), ...crowd, ...cornerStyles(session.ring, session.corner, coarse)];
  }

  private signs(): ReturnType<typeof shapeStyle> {
    const { session } = this;
    const last = session.corner === null ? session.ring[session.ring.length - 1] : session.ring[session.corner];
    const next = session.tool === "add" ? (this.hover ?? (document.activeElement === this.box ? session.pencil : null)) : null;
    const [a, b] = session.picks;
    return [
      ...walkStyles(this.sight.walk(), this.metersPerPixel),
      ...(last && next ? closingStyle([last, next]) : []),
      ...session.problems.flatMap((p, i) => (p.at ? crossingStyle(p.at, i + 1) : [])),
      ...pickStyles(session.picks, a && b ? lengthShort(distance(a, b), session.system) : ""),
      ...(session.pencil && document.activeElement === this.box && session.tool !== "move" ? pencilStyle(session.pencil) : []),
    ];
  }
}

/** A tap on the sheet, after snapping. */
class Place extends Interaction {
  constructor(private readonly placed: (to: Corner) => boolean) { super(); }

  override handleEvent(e: MapBrowserEvent): boolean { return !(e.type === "click" && this.placed(at(e.coordinate))); }
}

/** The start of a press: what lies under the pointer becomes the corner meant. */
class Pick extends Interaction {
  constructor(private readonly picked: (to: Corner) => boolean) { super(); }

  override handleEvent(e: MapBrowserEvent): boolean { return !(e.type === "pointerdown" && this.picked(at(e.coordinate))); }
}

/** Moves the picture, with the tool for it in hand. */
class PictureDrag extends PointerInteraction {
  private from: Corner | null = null;

  constructor(private readonly session: Session) { super(); }

  override handleDownEvent(e: MapBrowserEvent): boolean {
    if (this.session.tool !== "picture" || !this.session.drawing.picture || this.targetPointers.length !== 1) return false;
    this.from = at(e.coordinate);
    return true;
  }

  override handleDragEvent(e: MapBrowserEvent): void {
    const p = this.session.drawing.picture;
    if (!p || !this.from) return;
    const to = at(e.coordinate);
    this.session.drag({ ...this.session.drawing, picture: { ...p, east: p.east + to.e - this.from.e, north: p.north + to.n - this.from.n } });
    this.from = to;
  }

  override handleUpEvent(): boolean {
    this.from = null;
    const p = this.session.drawing.picture;
    if (p) this.session.setPicture({ ...p, east: mm(p.east), north: mm(p.north) });
    return false;
  }
}
