import { createEffect, createRenderEffect, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { usePage } from '../../app/pageContext';
import { writeText } from './writeText';
import { glowSoon } from './glow';
import { widthOf } from './widthOf';

/** Least width of a number that stands by itself, in digits. */
const leastRoom = 4;
/** A number that has become shorter keeps this many digits of room; more are given up when typing rests. */
const keptRoom = 2;

interface NumberProps {
  readonly text: string;
}

/**
 * Writes a number whenever it changes and makes it glow. One effect does both, as a keystroke changes dozens of
 * numbers.
 */
function follow(element: HTMLElement, props: NumberProps, put: (text: string) => void): void {
  createRenderEffect<string | undefined>((before) => {
    const { text } = props;
    if (text === before) return text;
    put(text);
    if (before !== undefined) glowSoon(element);
    return text;
  }, undefined);
}

/** A number split at its decimal mark, so that numbers below one another are aligned. */
export function NumberText(props: NumberProps): JSX.Element {
  const [whole, part] = [document.createTextNode(''), document.createTextNode('')];
  const element = (
    <span class="number">
      <span class="whole">{whole}</span>
      <span class="part">{part}</span>
    </span>
  );
  follow(element as HTMLElement, props, (text) => {
    const at = text.indexOf(localFormat.marks.decimal);
    writeText(whole, at === -1 ? text : text.slice(0, at));
    writeText(part, at === -1 ? '' : text.slice(at));
  });
  return element;
}

/**
 * A number that stands by itself, as wide as its widest value since typing rested, so that what is beside it does not
 * move with each digit.
 */
export function LoneNumber(props: NumberProps): JSX.Element {
  const { busy } = usePage();
  const number = document.createTextNode('');
  const element = (<span class="number">{number}</span>) as HTMLElement;
  let [width, room] = [0, 0];
  const makeRoom = (): void => {
    room = width;
    element.style.setProperty('--wide', String(width));
  };
  follow(element, props, (text) => {
    writeText(number, text);
    width = Math.max(leastRoom, widthOf(text));
    if (width > room) makeRoom();
  });
  createEffect(() => {
    if (!busy() && room - width > keptRoom) makeRoom();
  });
  return element;
}
