import { bandAt, listedBands, strengthOf, type HeatBands } from './bands';
import type { Pixel } from './pixels';

export type Rgb = readonly [red: number, green: number, blue: number];

/** The colours that a heat picture is mixed from. */
export interface Shades {
  readonly paper: Rgb;
  readonly better: Rgb;
  readonly worse: Rgb;
  readonly hatch: Rgb;
}

/** The least and the most of a colour that is mixed into the paper. */
export const weakest = 0.16;
export const strongest = 0.8;

/** Pixels from one stripe of a hatch to the next, and how wide a stripe is, before scaling. */
const stripe = { apart: 7, width: 1.4 };

/** The share of a colour in a band's shade. */
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

/**
 * How a heat picture is painted: the better side in plain shades, the worse one in hatched shades, both stronger the
 * further from the level; what cannot be computed in crossed stripes.
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
    pixelOf(mixed(paper, isWorse(band) ? bad : better, shadeShare(bands, band))),
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
