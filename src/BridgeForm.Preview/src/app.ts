import { MOUSE, Raycaster, type Matrix4, Vector2, Vector3 } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { callouts, drawCallouts, middleOfPart, reachOf } from './apart';
import { apartOwners, buildBridge, type Shown } from './bridge';
import { direction, extentOf, middleOf, standBack, type Extent } from './cameras';
import { byId } from './dom';
import { worldEdge } from './ground';
import { buildMeasure, type Measure } from './measure';
import { buildOverlay, spotOf, type Overlay } from './overlay';
import { writeFinishes, writeLoad, writePanel, writePart } from './panel';
import { outline, type Outline } from './outline';
import { firstHit } from './pick';
import { buildLand, landOf } from './setting';
import { buildStage, type Stage } from './stage';
import type { BridgeFile, BridgeView } from './view';
import { buildWalk, type Walk } from './walk';

export const VIEWS = ['corner', 'side', 'above', 'along', 'walk', 'measure', 'apart'] as const;
export type ViewName = (typeof VIEWS)[number];

/** The page at work: one stage, one bridge at a time. */
export class App {
  private landing: ReturnType<typeof setTimeout> | undefined;
  readonly stage: Stage;
  readonly overlay: Overlay;
  shown: Shown | null = null;
  view: ViewName = 'corner';
  private paper = false;
  private readonly controls: OrbitControls;
  private readonly ray = new Raycaster();
  private readonly outline: Outline;
  private walker: Walk | null = null;
  private measure: Measure | null = null;
  private readonly dark = matchMedia('(prefers-color-scheme: dark)');

  /** Throws when the browser has no WebGL. */
  constructor() {
    this.stage = buildStage(byId<HTMLElement>('canvas') as unknown as HTMLCanvasElement);
    this.overlay = buildOverlay(document.querySelector('#overlay') as SVGSVGElement);
    this.controls = new OrbitControls(this.stage.eye, byId('stage'));
    this.controls.maxPolarAngle = LOWEST;
    this.controls.minDistance = 0.4;
    // A finger that goes up or down scrolls the page past the picture; the controls would keep every touch.
    byId('stage').style.touchAction = 'pan-y';
    byId('stage').addEventListener('pointerdown', (e) => { this.level(e.pointerType === 'touch'); }, true);
    this.controls.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.DOLLY, RIGHT: MOUSE.PAN };
    this.controls.addEventListener('change', () => {
      this.stay();
      this.stage.refresh();
    });
    this.outline = outline();
    this.stage.scene.add(this.outline.lines);
    this.stage.before.push(() => { this.beforeFrame(); });
    this.stage.after.push(() => { this.words(); });
    new ResizeObserver(() => { this.fitStage(); }).observe(byId('stage'));
    this.dark.addEventListener('change', () => { this.paintSky(); });
  }

  /** Shows a bridge in place of the one before; `stay` leaves eye, view, wood colour and what was chosen as they are. */
  async show(file: BridgeFile, stay = false): Promise<void> {
    clearTimeout(this.landing);
    const shown = await buildBridge(file, this.stage.plain, stay ? this.shown?.setting.land : undefined);
    const before = this.shown;
    if (before !== null) {
      this.stage.scene.remove(before.group);
      dispose(before);
    }

    this.shown = shown;
    this.stage.scene.add(shown.group);
    this.walker = buildWalk(this.stage, shown);
    this.measure = buildMeasure(this.stage, shown, this.overlay);
    writePanel(file.view);
    writeFinishes(shown.finishes, (i) => {
      shown.state.finish = i;
      this.lay();
    });
    if (stay && before !== null) {
      this.staying(before, shown);
      this.landing = setTimeout(() => { this.reland(shown); }, QUIET);
      return;
    }

    this.choose(null);
    this.fitStage(true);
    this.paintSky();
    this.setView('corner');
    this.stage.draw();
  }

  /** The land follows when nobody has changed anything for a while. */
  private reland(shown: Shown): void {
    const { setting, view } = shown;
    if (this.shown === shown && setting.land.of !== landOf(view)) {
      setting.group.remove(setting.land.group);
      setting.land.group.traverse((object) => { (object as { geometry?: { dispose: () => void } }).geometry?.dispose(); });
      setting.land = buildLand(view, this.stage.plain);
      setting.group.add(setting.land.group);
      this.lay();
    }
  }

  /** A fuller description of the bridge that is shown: its loads and checks, which are worked out after its parts. */
  tell(view: BridgeView): void {
    const { shown } = this;
    if (shown !== null) {
      shown.view = view;
      writePanel(view);
      this.choose(shown.state.chosen);
      writeLoad(view, shown.state);
      this.stage.refresh();
    }
  }

  /** Where a point of the bridge is on the stage, in pixels from its top left; null behind the eye. */
  spot(x: number, y: number, z: number): { x: number; y: number } | null {
    this.stage.eye.updateMatrixWorld();
    const spot = spotOf(new Vector3(x, y, z), this.stage.eye, { x: 0, y: 0, ...this.stage.size });
    return spot.z < 1 ? { x: spot.x, y: spot.y } : null;
  }

  /** The new bridge seen as the one before was. */
  private staying(before: Shown, shown: Shown): void {
    const id = before.state.chosen === null ? null : before.parts[before.state.chosen]?.id;
    Object.assign(shown.state, { finish: before.state.finish, person: before.state.person });
    document.querySelectorAll<HTMLInputElement>('[name="finish"]').forEach((radio, i) => { radio.checked = i === shown.state.finish; });
    this.view = this.view === 'apart' || this.view === 'measure' || this.view === 'walk' ? 'corner' : this.view;
    this.paintSky();
    this.dress();
    const chosen = id === undefined || id === null ? -1 : shown.parts.findIndex((p) => p.id === id);
    this.choose(chosen < 0 ? null : chosen);
  }

  /** Lays everything anew and draws. */
  lay(): void {
    const { shown } = this;
    if (shown === null) {
      return;
    }

    shown.lay();
    this.outline.around(shown, shown.state.chosen);
    this.stage.renderer.shadowMap.needsUpdate = true;
    this.stage.refresh();
  }

  setView(view: ViewName): void {
    const { shown } = this;
    if (shown === null) {
      return;
    }

    this.view = view;
    this.dress();
    this.frame();
  }

  /** Everything that hangs on the view, but where the eye stands. */
  private dress(): void {
    const { shown, view } = this;
    if (shown === null) {
      return;
    }

    byId('stage').dataset.shows = view;
    const frame = Math.floor(shown.view.frames.length / 2);
    shown.state.apart = view === 'apart' ? { frame, amount: 1 } : null;
    shown.state.inside = view === 'walk';
    shown.state.empty = view === 'measure';
    const bare = view === 'apart' || view === 'measure';
    shown.setting.group.visible = !bare;
    shown.setting.sky.visible = !bare;
    this.controls.enabled = view !== 'walk' && view !== 'measure';
    this.stage.paint = view === 'measure' ? () => { this.measure?.paint(); } : null;
    this.paintSky();
    this.lay();
    document.querySelectorAll<HTMLElement>('[data-view]').forEach((b) => { b.setAttribute('aria-pressed', String(b.dataset.view === view)); });
    document.querySelectorAll<HTMLElement>('[data-for]').forEach((row) => { row.hidden = !(row.dataset.for ?? '').split(' ').includes(view); });
    byId('hint').textContent = hint(view);
    writeLoad(shown.view, shown.state);
    this.writeApart();
  }

  /** Puts the camera back to where the view begins. */
  frame(): void {
    const { shown, stage } = this;
    if (shown === null) {
      return;
    }

    this.level(false);
    if (this.view === 'walk') {
      this.walker?.start();
    } else if (this.view !== 'measure') {
      const extent = this.view === 'apart' ? this.apartExtent(shown) : extentOf(shown.view);
      stage.eye.fov = 30;
      stage.eye.up.set(0, 1, 0);
      stage.eye.updateProjectionMatrix();
      const from = direction(this.view === 'apart' ? 'corner' : this.view, stage.eye.aspect);
      stage.eye.position.copy(standBack(stage.eye, extent, this.view === 'apart' ? [-0.7, 0.35, 0.75] : from, MARGIN[this.view]));
      this.controls.target.copy(middleOf(extent));
      this.controls.maxDistance = Math.max(2.2 * shown.view.span + 25, 1.4 * stage.eye.position.distanceTo(this.controls.target));
      this.controls.update();
    }

    stage.refresh();
  }

  choose(index: number | null): void {
    const { shown } = this;
    if (shown !== null) {
      shown.state.chosen = index;
      writePart(shown.view, index === null ? null : shown.parts[index] ?? null);
      this.lay();
    }
  }

  /** The part under a place on the stage, in pixels from its top left; null when there is none. */
  partAt(x: number, y: number): number | null {
    const { shown, stage } = this;
    if (shown === null || this.view === 'measure') {
      return null;
    }

    const { width, height } = stage.size;
    stage.eye.updateMatrixWorld();
    this.ray.setFromCamera(new Vector2(x / width * 2 - 1, 1 - y / height * 2), stage.eye);
    const seen = (i: number): Matrix4 | null => (shown.wood.mesh.getVisibleAt(i) ? shown.matrixOf(i) : null);
    return firstHit(this.ray.ray, shown.parts, seen);
  }

  /** A place on the stage where a part is seen uncovered; null when it is hidden. For tests and for pointing at parts. */
  placeOf(id: string): { x: number; y: number } | null {
    const { shown, stage } = this;
    const index = shown?.parts.findIndex((p) => p.id === id) ?? -1;
    const part = shown?.parts[index];
    if (shown === null || part === undefined) {
      return null;
    }

    const at = this.seenAt(index);
    return at === null ? null : spotOf(at, stage.eye, { x: 0, y: 0, ...stage.size });
  }

  /** A point on the axis of a part behind which the part is seen uncovered, in the world; null when it is hidden. */
  private seenAt(index: number): Vector3 | null {
    const { shown, stage } = this;
    const part = shown?.parts[index];
    if (shown === null || part === undefined) {
      return null;
    }

    const matrix = shown.matrixOf(index);
    const box = part.geometry.boundingBox ?? (middleOfPart(part), part.geometry.boundingBox);
    for (let k = 0; box !== null && k < 40; k++) {
      const local = box.min.clone().lerp(box.max, 0.5).setX(box.min.x + (box.max.x - box.min.x) * ((k * 21 + 20) % 40) / 40);
      const at = local.applyMatrix4(matrix);
      const spot = spotOf(at, stage.eye, { x: 0, y: 0, ...stage.size });
      if (spot.z < 1 && this.partAt(spot.x, spot.y) === index) {
        return at;
      }
    }

    return null;
  }

  /** Keeps the eye over the ground and what it looks at near the bridge: nobody gets lost, or under the meadow. */
  private stay(): void {
    const { shown, stage: { eye } } = this;
    if (shown === null || this.view === 'apart') {
      return;
    }

    const { low, high } = extentOf(shown.view);
    const room = new Vector3(1, 1, 1).multiplyScalar(2 + 0.3 * shown.view.span);
    this.controls.target.clamp(low.sub(room), high.add(room));
    eye.position.y = Math.max(eye.position.y, shown.setting.ground(eye.position.x, eye.position.z) + 0.35);
  }

  /** Keeps the eye's height while a finger turns the picture: up and down are the page's. */
  private level(on: boolean): void {
    const now = this.controls.getPolarAngle();
    Object.assign(this.controls, on ? { minPolarAngle: now, maxPolarAngle: now } : { minPolarAngle: 0, maxPolarAngle: LOWEST });
  }

  /** Keys and buttons that go on for every view. */
  act(what: string): void {
    const { shown } = this;
    const apart = shown?.state.apart ?? null;
    switch (what) {
      case 'in': this.zoom(0.8); break;
      case 'out': this.zoom(1.25); break;
      case 'forward': this.walker?.step(1, 0); break;
      case 'back': this.walker?.step(-1, 0); break;
      case 'left': this.walker?.step(0, -1); break;
      case 'right': this.walker?.step(0, 1); break;
      case 'previous': case 'next':
        if (shown !== null && apart !== null) {
          apart.frame = Math.min(shown.view.frames.length - 1, Math.max(0, apart.frame + (what === 'next' ? 1 : -1)));
          this.lay();
          this.frame();
          this.writeApart();
        }

        break;
      case 'part-before': this.stepPart(-1); break;
      case 'part-next': this.stepPart(1); break;
      case 'part-none': this.choose(null); break;
      default: break;
    }
  }

  turn(x: number, y: number, move: boolean): void {
    if (this.view === 'walk') {
      this.walker?.step(y === 0 ? 0 : -Math.sign(y), Math.sign(x));
      return;
    }

    this.level(false);
    const { eye } = this.stage;
    const away = eye.position.clone().sub(this.controls.target);
    if (move) {
      const right = new Vector3().setFromMatrixColumn(eye.matrix, 0);
      const shift = right.multiplyScalar(x).add(new Vector3(0, -y, 0)).multiplyScalar(away.length() * 0.06);
      this.controls.target.add(shift);
      eye.position.add(shift);
    } else {
      const flat = Math.hypot(away.x, away.z);
      const yaw = Math.atan2(away.z, away.x) + x * 0.12;
      const rise = Math.min(1.5, Math.max(-0.1, Math.atan2(away.y, flat) - y * 0.12));
      const long = away.length();
      eye.position.copy(this.controls.target).add(new Vector3(Math.cos(yaw) * Math.cos(rise), Math.sin(rise), Math.sin(yaw) * Math.cos(rise)).multiplyScalar(long));
    }

    this.controls.update();
    this.stage.refresh();
  }

  look(dx: number, dy: number): void {
    this.walker?.look(-dx * 0.004, dy * 0.004);
  }

  setApart(amount: number): void {
    if (this.shown?.state.apart != null) {
      this.shown.state.apart.amount = amount;
      this.lay();
    }
  }

  /** The same piece at its next or last place; without a choice, the next piece. */
  stepPart(by: number): void {
    const { shown } = this;
    const chosen = shown?.state.chosen ?? null;
    if (shown === null || chosen === null) {
      return;
    }

    const same = shown.parts.flatMap((p, i) => (p.mark === shown.parts[chosen]?.mark ? [i] : []));
    this.choose(same[(same.indexOf(chosen) + by + same.length) % same.length] ?? null);
  }

  /** The part of a piece nearest to the eye. */
  choosePiece(mark: string): void {
    const { shown } = this;
    if (shown === null) {
      return;
    }

    const eye = this.stage.eye.position;
    const off = (i: number): number => eye.distanceTo(new Vector3().setFromMatrixPosition(shown.matrixOf(i)));
    const all = shown.parts.flatMap((p, i) => (p.mark === mark ? [i] : []));
    const visible = shown.state.apart === null ? all : all.filter((i) => apartOwners(shown.view, shown.state.apart?.frame ?? 0).has(shown.parts[i]?.owner ?? ''));
    this.choose([...(visible.length > 0 ? visible : all)].sort((a, b) => off(a) - off(b))[0] ?? null);
  }

  /** Draws in the colours of paper, of that size in the page's pixels, hands the picture to `use`, and puts all back as it was. */
  onPaper<T>(width: number, height: number, ratio: number, use: () => T): T {
    const { stage } = this;
    const before = { ...stage.size, ratio: stage.renderer.getPixelRatio(), fov: stage.eye.fov, aspect: stage.eye.aspect };
    // What is seen from side to side on the screen is seen on paper too.
    stage.eye.fov = 2 * Math.atan(Math.tan(before.fov * Math.PI / 360) * Math.max(1, before.aspect * height / width)) * 180 / Math.PI;
    this.paper = true;
    this.paintSky();
    this.resize(width, height, ratio);
    stage.draw();
    const made = use();
    this.paper = false;
    stage.eye.fov = before.fov;
    this.paintSky();
    this.resize(before.width, before.height, before.ratio);
    stage.draw();
    return made;
  }

  private resize(width: number, height: number, ratio: number): void {
    const { stage } = this;
    stage.renderer.setPixelRatio(ratio);
    stage.renderer.setSize(width, height, false);
    stage.size = { width, height };
    stage.eye.aspect = width / height;
    stage.eye.updateProjectionMatrix();
  }

  private fitStage(quiet = false): void {
    const box = byId('stage');
    const [width, height] = [Math.max(1, box.clientWidth), Math.max(1, box.clientHeight)];
    if (!quiet && width === this.stage.size.width && height === this.stage.size.height) {
      return; // An observer speaks once when it begins, too.
    }

    const before = this.stage.eye.aspect;
    this.resize(width, height, this.stage.renderer.getPixelRatio());
    if (!quiet && this.shown !== null) {
      if (Math.abs(before - this.stage.eye.aspect) > 0.15 * before && this.view !== 'walk') {
        this.frame();
      }

      this.stage.draw();
    }
  }

  private zoom(by: number): void {
    const { eye } = this.stage;
    eye.position.sub(this.controls.target).multiplyScalar(by).add(this.controls.target);
    this.controls.update();
    this.stage.refresh();
  }

  private writeApart(): void {
    const { shown } = this;
    const apart = shown?.state.apart;
    if (shown !== null && apart != null) {
      byId('apart-frame').textContent = `Frame ${shown.view.frames[apart.frame]?.name ?? ''}`;
      byId<HTMLInputElement>('apart-amount').value = String(Math.round(apart.amount * 100));
    }
  }

  private paintSky(): void {
    const colours = this.stage.light(this.dark.matches && !this.paper);
    const style = getComputedStyle(document.documentElement);
    this.overlay.ink = this.paper ? '#000' : style.getPropertyValue('--ink').trim();
    this.overlay.paper = this.paper ? '#fff' : style.getPropertyValue('--paper').trim();
    this.shown?.setting.paintSky(colours.zenith, colours.horizon);
    this.stage.backdrop(this.view === 'apart' || this.view === 'measure' ? this.overlay.paper : null);
    this.stage.refresh();
  }

  private apartExtent(shown: Shown): Extent {
    const f = shown.view.frames[shown.state.apart?.frame ?? 0];
    const forward = (shown.state.apart?.frame ?? 0) < shown.view.bays.length ? 1 : -1;
    const step = shown.view.span / shown.view.bays.length;
    const reach = [0.1, step + 0.62].map((d) => (f?.x ?? 0) + forward * d).sort((a, b) => a - b);
    const half = shown.view.deckHalf + 0.95;
    const y = f?.y ?? 0;
    return {
      low: new Vector3(Math.min(reach[0] ?? 0, (f?.x ?? 0) - 0.1), y - 0.4, -half),
      high: new Vector3(reach[1] ?? 1, y + (f?.deck ?? 0) + shown.view.guard + 0.6, half),
    };
  }

  private beforeFrame(): void {
    const { shown, stage } = this;
    if (shown === null) {
      return;
    }

    shown.setting.sky.position.copy(stage.eye.position);
    const { span, rise } = shown.view;
    const target = this.view === 'walk' ? stage.eye.position : this.controls.target;
    const whole = span < 50;
    const moved = stage.aim(
      whole ? span / 2 : Math.round(Math.min(span, Math.max(0, target.x)) / 8) * 8,
      whole ? rise / 2 : rise * target.x / span, 0, whole ? span * 0.62 + 1.8 : 34);
    if (moved) {
      stage.renderer.shadowMap.needsUpdate = true;
    }

    const far = stage.eye.position.distanceTo(middleOf(extentOf(shown.view)));
    stage.haze(far + span + 25, Math.min(worldEdge(shown.view) - far, 3 * (far + span) + 120));
  }

  /** Where the near rope hangs in the empty bridge, to compare with. */
  private emptyLine(shown: Shown): void {
    const pane = { x: 0, y: 0, ...this.stage.size };
    const spots = shown.view.frames.map((f) => spotOf(new Vector3(f.x, f.y, shown.view.ropeSpacing / 2), this.stage.eye, pane));
    if (spots.some((s) => s.z > 1)) {
      return;
    }

    spots.slice(1).forEach((s, i) => { this.overlay.line(spots[i] ?? s, s, { dashed: true }); });
    const middle = spots[Math.floor(spots.length / 2)];
    if (middle !== undefined) {
      const at = { x: middle.x, y: Math.min(pane.height - 20, middle.y + 76) };
      this.overlay.line(middle, at, { width: 0.8 });
      this.overlay.tag(at, ['rope when empty'], 'middle');
    }
  }

  private words(): void {
    const { shown, stage, overlay } = this;
    overlay.clear(stage.size.width, stage.size.height);
    if (shown === null) {
      return;
    }

    const pane = { x: 0, y: 0, ...stage.size };
    if (this.view === 'measure') {
      this.measure?.words();
    } else if (this.view === 'apart' && shown.state.apart !== null) {
      const owners = apartOwners(shown.view, shown.state.apart.frame);
      const seen = shown.parts.flatMap((part, i) => (owners.has(part.owner) ? [{ part, matrix: shown.matrixOf(i) }] : []));
      drawCallouts(overlay, callouts(seen, stage.eye, (part) => this.seenAt(shown.parts.indexOf(part))), reachOf(seen, stage.eye, pane), stage.eye, pane);
    }

    if (shown.state.load !== null && (this.view === 'side' || this.view === 'corner')) {
      this.emptyLine(shown);
    }

    const part = shown.state.chosen === null ? undefined : shown.parts[shown.state.chosen];
    if (part !== undefined && this.view !== 'measure' && this.view !== 'apart') {
      const spot = spotOf(middleOfPart(part).applyMatrix4(shown.matrixOf(shown.state.chosen ?? 0)), stage.eye, pane);
      if (spot.z < 1) {
        const up = spot.y > 90 ? -1 : 1;
        const at = { x: Math.min(pane.width - 50, Math.max(50, spot.x + 34)), y: Math.min(pane.height - 20, Math.max(20, spot.y + 52 * up)) };
        overlay.line(spot, at, { width: 1.6 });
        overlay.dot(spot, 4);
        overlay.tag(at, [part.mark, shown.view.pieces.find((p) => p.mark === part.mark)?.role ?? part.role], 'middle');
      }
    }
  }
}

/** Room left around the bridge: 1 fills the picture. */
/** So long nothing has changed before the land follows, milliseconds. */
const QUIET = 1000;

/** How far down from the zenith the eye may go: hardly below the bridge. */
const LOWEST = Math.PI * 0.56;

const MARGIN: Record<ViewName, number> = { corner: 1.01, side: 1.12, above: 1.16, along: 1, walk: 1, measure: 1, apart: 0.98 };

const HINTS: Record<ViewName, string> = {
  corner: 'Drag to turn, with the right button to move, wheel to zoom. Tap a part to learn about it.',
  side: 'Drag to turn, pinch or wheel to zoom. Tap a part to learn about it.',
  above: 'Drag to turn, pinch or wheel to zoom. Tap a part to learn about it.',
  along: 'Drag to turn, pinch or wheel to zoom. Tap a part to learn about it.',
  walk: 'You stand on the bridge with your eyes 1.6 m (5 ft 3 in) above the deck. Drag to look around; walk with the buttons or the arrow keys.',
  measure: 'The empty bridge, measured. All sizes are in the project’s units.',
  apart: 'One frame and the bay beside it, taken apart. Tap a part for its sizes and cuts.',
};

/** A hand on the glass has no wheel and no button. */
function hint(view: ViewName): string {
  const touch = matchMedia('(pointer: coarse)').matches;
  const turn = view === 'corner' ? 'Drag sideways to turn, two fingers to move, pinch to zoom.' : 'Drag to turn, pinch to zoom.';
  return touch && view in TURNED ? `${turn} Tap a part to learn about it.` : HINTS[view];
}

/** Views that are turned about with a finger. */
const TURNED: Partial<Record<ViewName, true>> = { corner: true, side: true, above: true, along: true };

function dispose(shown: Shown): void {
  shown.group.traverse((object) => {
    const mesh = object as { geometry?: { dispose: () => void } };
    mesh.geometry?.dispose();
  });
  shown.wood.mesh.dispose();
}
