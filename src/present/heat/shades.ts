import { bandAt, listedBands, strengthOf, type HeatBands } from './bands';
import type { Pixel } from './pixels';

export type Rgb = readonly [red: number, green: number, blue: number];

/** The colours from which the shades of a heat picture are mixed. */
export interface Shades {
  readonly paper: Rgb;
  readonly better: Rgb;
  readonly worse: Rgb;
  readonly hatch: Rgb;
}

/** The least and the greatest share of a colour that is mixed into the paper's. */
export const weakest = 0.16;
export const strongest = 0.8;

/** Distance between the stripes of a hatch and their width, in pixels of the page. */
const stripe = { apart: 7, width: 1.4 };

/** The share of the colour in the shade of a band. */
export function shadeShare(bands: HeatBands, band: number): number {
  return weakest + (strongest - weakest) * strengthOf(bands, band) ** 1.2;
}

function pixelOf([red, green, blue]: Rgb): Pixel {
  return (red | (green << 8) | (blue << 16) | (255 << 24)) >>> 0;
}

function mixed(ground: Rgb, colour: Rgb, share: number): Rgb {
  const mix = (k: 0 | 1 | 2): number => Math.round(ground[k] + (colour[k] - ground[k]) * share);
  return [mix(0), mix(1), mix(2)];
}

/** The plain colour of a band. */
export function bandColour(
  bands: HeatBands,
  band: number,
  worse: 'above' | 'below',
  { paper, better, worse: bad }: Pick<Shades, 'better' | 'paper' | 'worse'>,
): Rgb {
  const isWorse = band < 0 === (worse === 'below');
  return mixed(paper, isWorse ? bad : better, shadeShare(bands, band));
}

/** A colour as CSS and SVG write it. */
export function colourText([red, green, blue]: Rgb): string {
  return `rgb(${red},${green},${blue})`;
}

/**
 * The colour of each pixel of a heat picture: plain shades on the better side, hatched ones on the worse side, both
 * stronger with the distance from the level; crossed stripes where the result cannot be computed.
 * @param scale device pixels to a pixel of the page
 */
export function painter(
  bands: HeatBands,
  worse: 'below' | 'above',
  { paper, better, worse: bad, hatch }: Shades,
  scale: number,
): (value: number, x: number, y: number) => Pixel {
  const isWorse = (band: number): boolean => band < 0 === (worse === 'below');
  const plain = listedBands(bands).map((band) =>
    pixelOf(bandColour(bands, band, worse, { paper, better, worse: bad })),
  );
  const [ground, ink] = [pixelOf(paper), pixelOf(hatch)];
  const [apart, width] = [stripe.apart * scale, stripe.width * scale];
  const onStripe = (at: number): boolean => ((at % apart) + apart) % apart < width;
  return (value, x, y) => {
    if (!Number.isFinite(value)) return onStripe(x + y) || onStripe(x - y) ? ink : ground;
    const band = bandAt(bands, value);
    return isWorse(band) && onStripe(x + y) ? ink : (plain[band - bands.first] ?? ground);
  };
}
