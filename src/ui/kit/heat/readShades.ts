import type { Rgb, Shades } from '../../../present/heat/shades';

function rgbOf(colour: string): Rgb {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (pen === null) return [128, 128, 128];
  pen.fillStyle = colour;
  pen.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = pen.getImageData(0, 0, 1, 1).data;
  return [red, green, blue];
}

/** Reads the design tokens (CSS custom properties) that apply to an element. */
export function shadesOf(element: Element): Shades {
  const style = getComputedStyle(element);
  const token = (name: string): Rgb => rgbOf(style.getPropertyValue(`--${name}`).trim());
  return {
    paper: token('paper'),
    better: token('heat-better'),
    worse: token('heat-worse'),
    hatch: token('heat-hatch'),
  };
}
