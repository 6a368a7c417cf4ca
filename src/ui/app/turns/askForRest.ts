import { shippedModels } from '../files/shippedModels';
import { pageMemory } from '../shelf/pageMemory';

/** The fonts of the first page, as its styles name them. */
const fonts = ["1em 'Source Sans 3 Variable'", "1em 'Source Serif 4 Variable'"];

/**
 * Asks for all that is not wanted for the first frame of the page, at once: what draws it, which the build lists in a
 * template of `index.html` (a development server has no such list, and loads each part where it is wanted), and the
 * model that a browser which was never here will open most likely. The fonts follow as soon as the styles are there.
 * @returns once the styles are there, or cannot be had
 */
export async function askForRest(): Promise<void> {
  if (!pageMemory.isMoved()) shippedModels[0].askAhead();
  const rest = document.querySelector<HTMLTemplateElement>('template#rest');
  const styles = [...(rest?.content.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]') ?? [])];
  rest?.replaceWith(rest.content);
  await Promise.all(styles.map((style) => new Promise((done) => (style.onload = style.onerror = done))));
  // Text that is laid out before they are there moves when they come.
  for (const font of fonts) void document.fonts.load(font).catch(() => undefined);
}
