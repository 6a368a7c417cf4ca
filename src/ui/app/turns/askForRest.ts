import { shippedModels } from '../files/shippedModels';
import { pageMemory } from '../shelf/pageMemory';

/**
 * Asks for all that is not wanted for the first frame of the page, at once: what draws it, which the build lists in a
 * template of `index.html` (a development server has no such list, and loads each part where it is wanted), and the
 * model that a browser which was never here will open most likely.
 */
export function askForRest(): void {
  const rest = document.querySelector<HTMLTemplateElement>('template#rest');
  rest?.replaceWith(rest.content);
  if (!pageMemory.isMoved()) shippedModels[0].askAhead();
}
