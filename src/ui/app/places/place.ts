import { screens, type ScreenQuestion } from '../../../present/page/questions';

/** Where somebody is in the program: what a press on the browser's Back leads to. */
export interface Place {
  readonly question: ScreenQuestion;
  /** The question beside the numbers, where there is room for one. */
  readonly side: ScreenQuestion;
  /** The entry of the page on methods; blank for its top. */
  readonly entry: string;
  /** Whether the list of kept models is open. */
  readonly shelf: boolean;
  /** Id of the model on the shelf, and its key among the shipped models where it is one. */
  readonly model: string;
  readonly shipped: string;
  /** The row of the entry to which a link led; undefined: none did. */
  readonly row: number | undefined;
}

/** A place as the browser's history holds it, with the number of the program's own places before it. */
export interface Visit extends Place {
  readonly depth: number;
}

export function isSamePlace(a: Place, b: Place): boolean {
  const keys = ['question', 'side', 'entry', 'shelf', 'model', 'row'] as const;
  return keys.every((key) => a[key] === b[key]);
}

function questionOf(value: unknown): ScreenQuestion | undefined {
  return screens.find((one) => one === value);
}

/** The visit that the browser's history holds; undefined for what this program has not put there. */
export function visitOf(state: unknown): Visit | undefined {
  if (typeof state !== 'object' || state === null) return undefined;
  const given = state as Partial<Record<keyof Visit, unknown>>;
  const [question, side] = [questionOf(given.question), questionOf(given.side)];
  const { entry, shelf, model, shipped, row, depth } = given;
  if (question === undefined || side === undefined || typeof depth !== 'number') return undefined;
  if (![entry, model, shipped].every((text) => typeof text === 'string')) return undefined;
  return {
    question,
    side,
    entry: entry as string,
    shelf: shelf === true,
    model: model as string,
    shipped: shipped as string,
    row: typeof row === 'number' ? row : undefined,
    depth,
  };
}

const shelfWord = 'your-models';

const hyphened = (text: string): string => encodeURIComponent(text.replaceAll(' ', '-'));

/**
 * The part of the address that names a place, with its mark: `#what-matters`; blank for the numbers. It holds nothing
 * of a model but the number of a row: addresses are seen, kept and sent on.
 */
export function addressOf({ question, entry, shelf, row }: Place): string {
  if (shelf) return `#${shelfWord}`;
  if (question === 'numbers') return row === undefined ? '' : `#numbers/${row}`;
  return `#${hyphened(question)}${question === 'method' && entry !== '' ? `/${hyphened(entry)}` : ''}`;
}

/** What an address names of a place; undefined where it names none, as the address of a packed model. */
export function placeNamed(hash: string): Partial<Place> | undefined {
  const [first = '', second = ''] = hash
    .slice(1)
    .split('/')
    .map((part) => part.replaceAll('-', ' '));
  if (first === shelfWord.replaceAll('-', ' ')) return { shelf: true };
  const question = questionOf(first.replaceAll('%20', ' '));
  if (question === undefined) return undefined;
  const row = question === 'numbers' && /^\d+$/.test(second) ? Number(second) : undefined;
  return { question, shelf: false, row, entry: question === 'method' ? second : '' };
}
