import type { Overlay } from './overlay';
import type { Stage } from './stage';

/** The picture as it stands on the screen, larger, with its lines and words, on white paper. Gives the address of a PNG inside the page. */
export async function takePicture(stage: Stage, overlay: Overlay, resize: (width: number, height: number, ratio: number) => void): Promise<string> {
  const { width, height } = stage.size;
  const ratio = Math.min(4, Math.max(1, 2400 / width));
  const before = stage.renderer.getPixelRatio();
  resize(width, height, ratio);
  const page = { ink: overlay.ink, paper: overlay.paper };
  Object.assign(overlay, { ink: '#000', paper: '#fff' });
  const bare = stage.scene.background !== null;
  if (bare) {
    stage.backdrop('#fff');
  }

  stage.draw();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * ratio);
  canvas.height = Math.round(height * ratio);
  const ink = canvas.getContext('2d');
  ink?.drawImage(stage.renderer.domElement, 0, 0, canvas.width, canvas.height);
  ink?.drawImage(await imageOf(overlay, width, height), 0, 0, canvas.width, canvas.height);
  Object.assign(overlay, page);
  if (bare) {
    stage.backdrop(page.paper);
  }

  resize(width, height, before);
  stage.draw();
  return canvas.toDataURL('image/png');
}

async function imageOf(overlay: Overlay, width: number, height: number): Promise<HTMLImageElement> {
  const copy = overlay.svg.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  const image = new Image();
  image.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(new XMLSerializer().serializeToString(copy));
  await image.decode();
  return image;
}
