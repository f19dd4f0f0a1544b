import {
  DepthTexture, HalfFloatType, LinearFilter, Matrix4, Mesh, NearestFilter, NoBlending, OrthographicCamera, PlaneGeometry, RGBAFormat, Scene, ShaderMaterial,
  Vector2, WebGLRenderTarget, type PerspectiveCamera, type WebGLRenderer,
} from 'three';

/** Draws a scene with the shade that lies in corners: under boards, between grass, behind posts. */
export interface Shade { render: (scene: Scene, camera: PerspectiveCamera) => void }

const FLAT = 'varying vec2 at; void main() { at = uv; gl_Position = vec4(position.xy, 0.0, 1.0); }';

/** How much of the sky each place sees, from the depths around it within a hand's breadth or two. */
const OCCLUSION = `
  varying vec2 at; uniform sampler2D depths; uniform mat4 back; uniform vec2 size; uniform float reach;
  vec3 seen(vec2 uv) {
    vec4 p = back * vec4(2.0 * vec3(uv, texture2D(depths, uv).r) - 1.0, 1.0);
    return p.xyz / p.w;
  }
  void main() {
    vec3 p = seen(at);
    float depth = texture2D(depths, at).r;
    if (depth >= 1.0 || p.z < -70.0) { gl_FragColor = vec4(1.0); return; }
    vec2 e = 1.0 / size;
    vec3 r = seen(at + vec2(e.x, 0.0)) - p; vec3 l = p - seen(at - vec2(e.x, 0.0));
    vec3 u = seen(at + vec2(0.0, e.y)) - p; vec3 d = p - seen(at - vec2(0.0, e.y));
    vec3 n = normalize(cross(abs(r.z) < abs(l.z) ? r : l, abs(u.z) < abs(d.z) ? u : d));
    float turn = 6.2832 * fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
    float spread = min(0.2, reach / -p.z);
    float sum = 0.0;
    for (int i = 0; i < 12; i++) {
      float share = (float(i) + 0.5) / 12.0;
      float a = turn + 14.0 * share;
      vec3 v = seen(at + spread * share * vec2(cos(a), sin(a)) * vec2(size.y / size.x, 1.0)) - p;
      float near = dot(v, v);
      sum += max(0.0, dot(v, n) - 0.012 - 0.0012 * -p.z) / (near + 0.004) * step(near, 0.5);
    }
    gl_FragColor = vec4(vec3(clamp(1.0 - 0.028 * sum, 0.25, 1.0)), 1.0);
  }`;

const TOGETHER = `
  varying vec2 at; uniform sampler2D picture; uniform sampler2D depths; uniform sampler2D shade; uniform vec2 step1;
  void main() {
    float here = texture2D(depths, at).r; float sum = 0.0; float weight = 0.0;
    for (int i = -2; i < 2; i++) for (int j = -2; j < 2; j++) {
      vec2 uv = at + (vec2(float(i), float(j)) + 0.5) * step1;
      float w = 1.0 / (1e-5 + abs(texture2D(depths, uv).r - here));
      sum += w * texture2D(shade, uv).r; weight += w;
    }
    gl_FragColor = vec4(texture2D(picture, at).rgb * (sum / weight), 1.0);
    #include <tonemapping_fragment>
    #include <colorspace_fragment>
  }`;

export function buildShade(renderer: WebGLRenderer): Shade {
  const picture = new WebGLRenderTarget(1, 1, { type: HalfFloatType, samples: 4, depthTexture: new DepthTexture(1, 1) });
  const half = new WebGLRenderTarget(1, 1, { format: RGBAFormat, depthBuffer: false, minFilter: LinearFilter, magFilter: NearestFilter });
  const [size, back] = [new Vector2(), new Matrix4()];
  const occlusion = pass(OCCLUSION, { depths: { value: picture.depthTexture }, back: { value: back }, size: { value: new Vector2() }, reach: { value: 0.35 } });
  const together = pass(TOGETHER, {
    picture: { value: picture.texture }, depths: { value: picture.depthTexture }, shade: { value: half.texture }, step1: { value: new Vector2() },
  });
  const flat = new OrthographicCamera(-1, 1, 1, -1, 0, 1);
  return {
    render: (scene, camera) => {
      renderer.getDrawingBufferSize(size);
      if (picture.width !== size.x || picture.height !== size.y) {
        picture.setSize(size.x, size.y);
        half.setSize(Math.ceil(size.x / 2), Math.ceil(size.y / 2));
        (occlusion.material.uniforms.size as { value: Vector2 }).value.set(half.width, half.height);
        (together.material.uniforms.step1 as { value: Vector2 }).value.set(1 / half.width, 1 / half.height);
      }

      renderer.setRenderTarget(picture);
      renderer.render(scene, camera);
      back.copy(camera.projectionMatrixInverse);
      (occlusion.material.uniforms.reach as { value: number }).value = 0.22 / Math.tan(camera.fov * Math.PI / 360);
      renderer.setRenderTarget(half);
      renderer.render(occlusion.scene, flat);
      renderer.setRenderTarget(null);
      renderer.render(together.scene, flat);
    },
  };
}

function pass(fragmentShader: string, uniforms: Record<string, { value: unknown }>): { scene: Scene; material: ShaderMaterial } {
  const material = new ShaderMaterial({ vertexShader: FLAT, fragmentShader, uniforms, depthTest: false, depthWrite: false, blending: NoBlending });
  const mesh = new Mesh(new PlaneGeometry(2, 2), material);
  mesh.frustumCulled = false;
  const scene = new Scene();
  scene.add(mesh);
  return { scene, material };
}
