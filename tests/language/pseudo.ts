import type { Catalogue } from '../../src/language/catalogue';
import { textsOfMethods, textsOfModels, textsOfStages, textsOfUnits } from './dataTexts';
import { textsOfProgram } from './sources';

/** Marks of a text that went through the catalogue, at its begin and end. */
export const [begin, end] = ['⟦', '⟧'] as const;

/** How much longer texts are than English ones, as those of some languages are. */
const longer = 1.4;

const vowels: Readonly<Record<string, string>> = { a: 'á', e: 'é', i: 'í', o: 'ó', u: 'ú' };

/** Words with doubled vowels, and at least so much longer. */
function stretched(text: string): string {
  const doubled = text.replace(/[aeiou]/gi, (vowel) => vowel + (vowels[vowel.toLowerCase()] ?? vowel));
  return doubled.padEnd(Math.ceil(text.length * longer), 'é');
}

/** A text of the pseudo-language: its English in marks and with longer words. */
export function pseudo(english: string): string {
  return `${begin}${stretched(english)}${end}`;
}

function withSpaceOutside(text: string, inside: (text: string) => string): string {
  const [, before = '', words = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(text) ?? [];
  return before + inside(words) + after;
}

/** A text of the program in ICU MessageFormat: places stay, other braces are quoted. */
function message(key: string, places: number): string {
  const english = key.replace(/ ¦ .*$/s, '');
  const pieces = english.split(/(\{\d+\})/);
  const isPlace = (piece: string): boolean => /^\{\d+\}$/.test(piece) && Number(piece.slice(1, -1)) < places;
  const quoted = (text: string): string => text.replaceAll("'", "''").replace(/[{}]/g, "'$&'");
  const body = pieces.map((piece) => (isPlace(piece) ? piece : quoted(stretched(piece)))).join('');
  return withSpaceOutside(body, (words) => begin + words + end);
}

/** All texts of the program and of the shipped models in a language that nobody speaks, to see where one is missing. */
export function pseudoCatalogue(): Catalogue {
  const program = textsOfProgram().map(({ key, parts }) => [key, message(key, parts.length)] as const);
  const data = [...textsOfUnits, ...textsOfMethods, ...textsOfStages].map((key) => [key, message(key, 0)] as const);
  const models = textsOfModels.map((text) => [text, withSpaceOutside(text, pseudo)] as const);
  return {
    endings: [['$', 's']],
    texts: Object.fromEntries([...program, ...data]),
    models: Object.fromEntries(models),
  };
}
