import { roomForBoth } from '../../app/preferences/media';
import { screenQuestionOf, usualSide } from '../../../present/page/questions';
import type { Choice } from '../../app/screenProps';

/** Where the page on methods was opened from: the question, and the entry whose link it was. */
const fromKey = 'method from';
const entryKey = 'method entry';

/** Frames for which the way back stands at the link that led here. */
const patience = 180;

/** The attribute that links to an entry are known by. */
export function linkAttribute(entry: string): string {
  return `method ${entry}`;
}

/** The question in sight: beside the numbers there is always one. */
function inSight(choice: Choice): string {
  const question = screenQuestionOf(choice.setting('question'));
  if (question !== 'numbers' || !matchMedia(roomForBoth).matches) return question;
  return choice.setting('side') || usualSide;
}

/** Opens the page on methods at an entry; blank: at its top. */
export function openMethod(choice: Choice, entry: string): void {
  const question = inSight(choice);
  if (question !== 'method') choice.setSetting(fromKey, question);
  choice.setSetting(entryKey, entry);
  choice.setSetting('question', 'method');
}

/** The entry that the page is to stand at; blank for its top. */
export function methodEntry(choice: Choice): string {
  return choice.setting(entryKey);
}

/** The question that the page was opened from; blank for the numbers. */
export function methodFrom(choice: Choice): string {
  return choice.setting(fromKey);
}

/** What ends the wait for the link: someone who has moved on. */
const moves = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;

function linkTo(entry: string): HTMLElement | undefined {
  const links = [...document.querySelectorAll<HTMLElement>('[data-method]')];
  return links.find(({ dataset }) => dataset['method'] === linkAttribute(entry));
}

/** Stands at the link to an entry, which may come late and move as what is above it is worked out. */
function standAt(entry: string): void {
  let left = patience;
  const leave = (): void => {
    left = 0;
  };
  for (const move of moves) addEventListener(move, leave, { passive: true });
  const step = (): void => {
    const link = left > 0 ? linkTo(entry) : undefined;
    if (link !== undefined && document.activeElement !== link) link.focus({ preventScroll: true });
    link?.scrollIntoView({ block: 'center' });
    left -= 1;
    if (left > 0) requestAnimationFrame(step);
    else for (const move of moves) removeEventListener(move, leave);
  };
  requestAnimationFrame(step);
}

/** Goes back to where the page was opened from, and to the link there. */
export function leaveMethod(choice: Choice): void {
  const entry = methodEntry(choice);
  choice.setSetting('question', methodFrom(choice));
  standAt(entry);
}
