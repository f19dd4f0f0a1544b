import {
  Color, DirectionalLight, Fog, HemisphereLight, NeutralToneMapping, PCFShadowMap, PerspectiveCamera, Scene,
  Vector3, WebGLRenderer,
} from 'three';
import { buildShade } from './full/shade';
import { skyLight } from './full/sky';

/** Canvas, cameras and light. Draws only when something has changed. */
export interface Stage {
  renderer: WebGLRenderer;
  scene: Scene;
  eye: PerspectiveCamera;
  sun: DirectionalLight;
  /** The scene for machines without a graphics chip: plain colours and shadows, fewer details; else the full one. */
  plain: boolean;
  size: { width: number; height: number };
  /** Called before each frame and after it. */
  before: (() => void)[];
  after: (() => void)[];
  /** Draws a frame soon. */
  refresh: () => void;
  /** Draws a frame now. */
  draw: () => void;
  /** Draws in place of the eye's picture when a view needs more than one. */
  paint: (() => void) | null;
  /** Lights the scene for the page's light or dark colours. */
  light: (dark: boolean) => { zenith: Color; horizon: Color };
  /** Aims the sun and its shadow at a place with a radius; tells whether that is another place than before. */
  aim: (x: number, y: number, z: number, radius: number) => boolean;
  /** Between which distances things fade into the horizon. */
  haze: (near: number, far: number) => void;
  /** A plain colour behind everything, without haze or shadows, or the sky. */
  backdrop: (colour: string | null) => void;
}

/** Where the sun stands: high in the plain scene, in the evening at the side in the full one. */
const SUN = { plain: new Vector3(-0.42, 0.78, 0.52).normalize(), full: new Vector3(-0.66, 0.4, 0.64).normalize() };

/** Throws when the browser has no WebGL. */
export function buildStage(canvas: HTMLCanvasElement): Stage {
  // Asked for here, because the renderer would complain in the console; a second context would cost a tenth of a second.
  const settings = { alpha: true, depth: true, stencil: false, antialias: true, premultipliedAlpha: true, preserveDrawingBuffer: true };
  const context = canvas.getContext('webgl2', settings) as WebGL2RenderingContext | null;
  if (context === null) {
    throw new Error('This browser has no WebGL 2.');
  }

  const renderer = new WebGLRenderer({ canvas, context, ...settings });
  // Reading the compiler's log makes the page wait for each program in turn.
  renderer.debug.checkShaderErrors = false;
  const asked = new URLSearchParams(globalThis.location.search).get('scene');
  const plain = asked === 'plain' || (asked !== 'full' && drawsInSoftware(renderer));
  const from = plain ? SUN.plain : SUN.full;
  const shade = plain ? null : buildShade(renderer);
  // A picture may take more than one pass; its counts are those of all.
  renderer.info.autoReset = false;
  renderer.setPixelRatio(Math.min(plain ? 1 : 2, globalThis.devicePixelRatio || 1));
  renderer.toneMapping = NeutralToneMapping;
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;
  const scene = new Scene();
  const sky = new HemisphereLight(0xe2ecf4, 0x8a8468, 1.7);
  const sun = new DirectionalLight(0xfff0da, 2.9);
  sun.castShadow = true;
  sun.shadow.mapSize.set(plain ? 2048 : 4096, plain ? 1024 : 2048);
  sun.shadow.radius = plain ? 1 : 3;
  sun.shadow.bias = -0.0006;
  sun.shadow.normalBias = 0.012;
  scene.add(sky, sun, sun.target);
  const fog = new Fog(0xffffff, 40, 160);
  scene.fog = fog;
  let lit: boolean | null = null;
  const evening = (dark: boolean): { zenith: Color; horizon: Color } => {
    const colours = { zenith: new Color(dark ? 0x3d5a7a : 0x5c8fca), horizon: new Color(dark ? 0xcdb7a6 : 0xe9dfcd) };
    sky.intensity = 0.12;
    sun.intensity = dark ? 3 : 4;
    sun.color.set(0xffd7a6);
    fog.color.copy(colours.horizon);
    if (lit !== dark) {
      scene.environment?.dispose();
      scene.environment = skyLight(renderer, from, colours.zenith, colours.horizon);
      scene.environmentIntensity = dark ? 0.75 : 0.95;
      lit = dark;
    }

    return colours;
  };
  let settled = !plain;
  let waiting = false;
  let stale = true;
  const stage: Stage = {
    renderer, scene, sun, plain,
    eye: new PerspectiveCamera(38, 1, 0.05, 2000),
    size: { width: 1, height: 1 },
    before: [],
    after: [],
    paint: null,
    draw: () => {
      stale = false;
      stage.before.forEach((f) => { f(); });
      renderer.info.reset();
      // The first picture comes without shadows, whose programs and map take as long as all the rest; the next frame has them.
      if (!settled) {
        renderer.shadowMap.needsUpdate = false;
        sun.shadow.intensity = 0;
      }

      if (stage.paint !== null) {
        stage.paint();
      } else if (shade === null || scene.background !== null) {
        renderer.render(scene, stage.eye);
      } else {
        shade.render(scene, stage.eye);
      }

      stage.after.forEach((f) => { f(); });
      if (!settled) {
        settled = true;
        sun.shadow.intensity = scene.background === null ? 1 : 0;
        renderer.shadowMap.needsUpdate = true;
        stage.refresh();
      }
    },
    refresh: () => {
      stale = true;
      if (!waiting) {
        waiting = true;
        requestAnimationFrame(() => {
          waiting = false;
          // A frame drawn in the meantime shows what was asked for.
          if (stale) {
            stage.draw();
          }
        });
      }
    },
    light: (dark) => {
      if (!plain) {
        return evening(dark);
      }

      sky.intensity = dark ? 1.25 : 1.7;
      sun.intensity = dark ? 2.2 : 2.9;
      sun.color.set(dark ? 0xffe2c4 : 0xfff0da);
      const colours = dark
        ? { zenith: new Color(0x34506b), horizon: new Color(0xbfaea6) }
        : { zenith: new Color(0x7fa6c4), horizon: new Color(0xe3e9e6) };
      fog.color.copy(colours.horizon);
      return colours;
    },
    haze: (near, far) => { Object.assign(fog, { near, far }); },
    backdrop: (colour) => {
      scene.background = colour === null ? null : new Color(colour);
      scene.fog = colour === null ? fog : null;
      sun.shadow.intensity = colour === null ? 1 : 0;
    },
    aim: (x, y, z, radius) => {
      if (sun.target.position.equals(new Vector3(x, y, z)) && sun.shadow.camera.right === radius) {
        return false;
      }

      sun.target.position.set(x, y, z);
      sun.position.set(x, y, z).addScaledVector(from, 60 + radius);
      Object.assign(sun.shadow.camera, { left: -radius, right: radius, top: radius * 0.62, bottom: -radius * 0.62, near: 1, far: 120 + 2 * radius });
      sun.shadow.camera.updateProjectionMatrix();
      return true;
    },
  };
  return stage;
}

function drawsInSoftware(renderer: WebGLRenderer): boolean {
  const gl = renderer.getContext();
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info === null ? gl.RENDERER : info.UNMASKED_RENDERER_WEBGL));
  return /swiftshader|llvmpipe|software|basic render/i.test(name);
}
