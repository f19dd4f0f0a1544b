import type { App } from './app';
import { byId } from './dom';
import type { Overlay } from './overlay';
import type { Stage } from './stage';

/** The picture as it stands on the screen, larger, with its lines and words, on white paper. Gives the address of a PNG inside the page. */
export async function takePicture(app: App): Promise<string> {
  const { stage, overlay } = app;
  const { width, height } = stage.size;
  const ratio = Math.min(4, Math.max(1, 2400 / width));
  const canvas = document.createElement('canvas');
  const lines = app.onPaper(width, height, ratio, () => {
    copyOf(stage, canvas);
    return imageOf(overlay, width, height);
  });
  canvas.getContext('2d')?.drawImage(await lines, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL('image/png');
}

/** The picture of a printed sheet on its side, pixels of the page: words of 13 of them are 2.8 mm high on 270 mm of paper. */
const SHEET = { width: 1250, height: 700, ratio: 2 };

/** Puts the picture on the sheet that is printed. All at once: the browser prints when this returns, whoever asked it to. */
export function printPicture(app: App): void {
  const canvas = byId<HTMLElement>('sheet-picture') as unknown as HTMLCanvasElement;
  app.onPaper(SHEET.width, SHEET.height, SHEET.ratio, () => {
    copyOf(app.stage, canvas);
    const lines = app.overlay.svg.cloneNode(true) as SVGSVGElement;
    lines.id = 'sheet-lines';
    byId('sheet').replaceChildren(canvas, lines);
  });
}

function copyOf(stage: Stage, canvas: HTMLCanvasElement): void {
  const { domElement } = stage.renderer;
  [canvas.width, canvas.height] = [domElement.width, domElement.height];
  canvas.getContext('2d')?.drawImage(domElement, 0, 0);
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
