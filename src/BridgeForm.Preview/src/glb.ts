import { Color, type BufferGeometry, type Matrix4, type Mesh, type Object3D } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';

/** One wooden part where it stands in the empty bridge. */
export interface Part {
  id: string;
  /** F03 or B03. */
  owner: string;
  mark: string;
  role: string;
  geometry: BufferGeometry;
  place: Matrix4;
  /** Index into each finish's colours. */
  wood: number;
}

/** A plate or bolt where it stands in the empty bridge. It moves with its frame, and apart with the stick that it fastens. */
export interface SteelPiece { owner: string; role: string; geometry: BufferGeometry; place: Matrix4 }

export interface Finish { name: string; colours: Color[] }

export interface Loaded { parts: Part[]; ropes: Mesh[]; steel: SteelPiece[]; finishes: Finish[]; ropeColour: Color; steelColour: Color }

interface JsonNode { name?: string; extras?: Record<string, string>; mesh?: number }
interface Primitive { material: number; extensions?: { KHR_materials_variants?: { mappings: { material: number; variants: number[] }[] } } }
interface Json {
  nodes: JsonNode[];
  materials?: { pbrMetallicRoughness: { baseColorFactor: [number, number, number, number] } }[];
  meshes?: { primitives: Primitive[] }[];
  extensions?: { KHR_materials_variants?: { variants: { name: string }[] } };
}

/** Reads a bridge's glTF; nothing is fetched, all buffers are inside. */
export async function readGlb(bytes: ArrayBuffer): Promise<Loaded> {
  const gltf = await new GLTFLoader().parseAsync(bytes, '');
  const json = gltf.parser.json as Json;
  gltf.scene.updateMatrixWorld(true);
  const parts: Part[] = [];
  const ropes: Mesh[] = [];
  const steel: SteelPiece[] = [];
  const wooden = new Set(json.nodes.flatMap((n) => (n.mesh !== undefined && n.extras?.mark !== undefined ? [n.mesh] : [])));
  const woods = woodMaterials(json, wooden);
  gltf.scene.traverse((object) => {
    const place = gltf.parser.associations.get(object) as { nodes?: number } | undefined;
    const node = place?.nodes === undefined ? undefined : json.nodes[place.nodes];
    if (!isMesh(object) || node === undefined || node.mesh === undefined) {
      return;
    }

    const extras = node.extras;
    const owner = extras?.frame ?? extras?.bay;
    if (extras === undefined || owner === undefined) {
      // Steel is named by frame and joint, F03/plate-post-foot-right-b; a rope by its side alone.
      const [frame, joint] = (node.name ?? '').split('/');
      if (joint === undefined || frame === undefined) {
        ropes.push(object);
      } else {
        steel.push({
          owner: frame, role: joint.includes('brace') ? 'brace' : 'post', geometry: object.geometry, place: object.matrixWorld.clone(),
        });
      }

      return;
    }

    parts.push({
      id: `${owner}/${node.name}`,
      owner,
      mark: extras.mark ?? '',
      role: extras.role ?? '',
      geometry: object.geometry,
      place: object.matrixWorld.clone(),
      wood: woods.of(node.mesh),
    });
  });
  const loose = (isSteel: boolean): Color => looseColour(json, (name) => name.includes('/') === isSteel);
  return { parts, ropes, steel, finishes: woods.finishes, ropeColour: loose(false), steelColour: loose(true) };
}

function isMesh(object: Object3D): object is Mesh {
  return (object as Mesh).isMesh;
}

/** Woods are the distinct rows of materials over all finishes; a file without variants has one finish. */
function woodMaterials(json: Json, wooden: ReadonlySet<number>): { finishes: Finish[]; of: (mesh: number) => number } {
  const names = json.extensions?.KHR_materials_variants?.variants.map((v) => v.name) ?? ['As built'];
  const rows = (json.meshes ?? []).map((mesh) => {
    const primitive = mesh.primitives[0] as Primitive;
    const mappings = primitive.extensions?.KHR_materials_variants?.mappings ?? [];
    return names.map((_, v) => mappings.find((m) => m.variants.includes(v))?.material ?? primitive.material);
  });
  const keys = [...new Set(rows.filter((_, mesh) => wooden.has(mesh)).map((row) => row.join()))];
  const colour = (material: number): Color => {
    const rgba = json.materials?.[material]?.pbrMetallicRoughness.baseColorFactor ?? [0.4, 0.3, 0.2, 1];
    return new Color(rgba[0], rgba[1], rgba[2]);
  };
  return {
    finishes: names.map((name, v) => ({ name, colours: keys.map((key) => colour(Number(key.split(',')[v]))) })),
    of: (mesh) => keys.indexOf((rows[mesh] ?? []).join()),
  };
}

/** Of the first node that is no wood and is named so. */
function looseColour(json: Json, named: (name: string) => boolean): Color {
  const node = json.nodes.find((n) => n.mesh !== undefined && n.extras?.mark === undefined && named(n.name ?? ''));
  const last = node?.mesh === undefined ? undefined : json.meshes?.[node.mesh]?.primitives[0]?.material;
  const rgba = last === undefined ? undefined : json.materials?.[last]?.pbrMetallicRoughness.baseColorFactor;
  return rgba === undefined ? new Color(0.4, 0.4, 0.4) : new Color(rgba[0], rgba[1], rgba[2]);
}
