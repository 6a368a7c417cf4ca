import { roomForBoth } from '../../app/preferences/media';
import {
  methodEntrySetting,
  methodFromSetting,
  questionSetting,
  sideSetting,
} from '../../app/preferences/settings/page';
import type { ScreenQuestion } from '../../../present/page/questions';
import type { Choice } from '../../app/screenProps';

/** Frames during which the page stays scrolled to the link after going back. */
const patience = 180;

/** The value of `data-method` by which the link to an entry is found. */
export function linkAttribute(entry: string): string {
  return `method ${entry}`;
}

/** The question in sight, which is the one beside the numbers where both fit. */
function inSight(choice: Choice): ScreenQuestion {
  const question = choice.get(questionSetting);
  if (question !== 'numbers' || !matchMedia(roomForBoth).matches) return question;
  return choice.get(sideSetting);
}

/** Opens the page on methods at an entry; blank: at its top. */
export function openMethod(choice: Choice, entry: string): void {
  const question = inSight(choice);
  if (question !== 'method') choice.set(methodFromSetting, question);
  choice.set(methodEntrySetting, entry);
  choice.set(questionSetting, 'method');
}

/** The entry to which the page on methods scrolls; blank for its top. */
export function methodEntry(choice: Choice): string {
  return choice.get(methodEntrySetting);
}

/** The question that the page was opened from. */
export function methodFrom(choice: Choice): ScreenQuestion {
  return choice.get(methodFromSetting);
}

/** Events that end the scrolling, as the person has moved on. */
const moves = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;

function linkTo(entry: string): HTMLElement | undefined {
  const links = [...document.querySelectorAll<HTMLElement>('[data-method]')];
  return links.find(({ dataset }) => dataset['method'] === linkAttribute(entry));
}

/**
 * Scrolls to the link to an entry and focuses it, for some frames: the link may appear late, and may move while parts
 * above it are computed.
 */
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
  choice.set(questionSetting, methodFrom(choice));
  standAt(entry);
}
