import { BackSide, Color, Mesh, MeshBasicMaterial, Float32BufferAttribute, PMREMGenerator, Scene, SphereGeometry, type Texture, type Vector3, type WebGLRenderer } from 'three';

const MEADOW = new Color(0x4d5236);
const GLOW = new Color(0xffd9a0);

/** A sky lights less blue than it looks: haze and clouds are in it. */
const HAZE = new Color(0xe6e6e2);

/** The light of the whole sky, with the glow around the sun and the meadow's below. */
export function skyLight(renderer: WebGLRenderer, sun: Vector3, zenith: Color, horizon: Color): Texture {
  const dome = new SphereGeometry(10, 32, 24);
  const at = dome.getAttribute('position');
  const colours = new Float32Array(3 * at.count);
  for (let i = 0; i < at.count; i++) {
    const [x, y, z] = [at.getX(i) / 10, at.getY(i) / 10, at.getZ(i) / 10];
    const colour = y < 0 ? horizon.clone().lerp(MEADOW, Math.min(1, -y * 6)) : horizon.clone().lerp(zenith.clone().lerp(HAZE, 0.55), Math.min(1, y * 1.6) ** 0.7);
    const glow = Math.max(0, x * sun.x + y * sun.y + z * sun.z) ** 24;
    colour.lerp(GLOW, y < 0 ? 0 : 0.8 * glow).multiplyScalar(1 + 2.5 * glow);
    colour.toArray(colours, 3 * i);
  }

  dome.setAttribute('color', new Float32BufferAttribute(colours, 3));
  const scene = new Scene();
  scene.add(new Mesh(dome, new MeshBasicMaterial({ vertexColors: true, side: BackSide, toneMapped: false })));
  const generator = new PMREMGenerator(renderer);
  const { texture } = generator.fromScene(scene, 0.02, 0.1, 100);
  generator.dispose();
  dome.dispose();
  return texture;
}
