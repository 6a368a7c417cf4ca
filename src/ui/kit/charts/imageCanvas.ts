/** A canvas with an image of pixels; undefined where the browser gives none. */
export function imageCanvas(pixels: Uint32Array, width: number, height: number): HTMLCanvasElement | undefined {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const own = canvas.getContext('2d');
  if (own === null) return undefined;
  const image = own.createImageData(width, height);
  new Uint32Array(image.data.buffer).set(pixels);
  own.putImageData(image, 0, 0);
  return canvas;
}
