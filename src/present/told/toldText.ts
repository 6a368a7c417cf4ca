import { wordsOf } from '../../model/choices';
import { textFigure, type TextFigure } from '../../model/inText/textFigure';
import { textParts } from '../../model/inText/textParts';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import type { Format } from '../text/numberFormat';
import { spokenWithUnit } from '../text/spokenNumber';
import { entryTexts } from '../numbers/entryTexts';
import { truthWord, yesOrNo } from '../text/truthWord';
import { toldTexts } from './toldTexts';

/** A text of the file, read once for all values: its words, and its figures ready to be worked out. */
export interface Told {
  readonly pieces: readonly (string | TextFigure)[];
  /** What is wrong with figures that stand as they are written. */
  readonly faults: readonly string[];
}

/** Whether a text that is no figure was meant as one: a formula could be read in it, or something stands behind it. */
function isMeant(code: string, ways: readonly string[]): boolean {
  return ways.length > 0 || !code.startsWith('formula-');
}

/** Reads a text of the model's file; figures that cannot be worked out stay as they are written. */
export function readTold(model: Model, text: string): Told {
  const faults: string[] = [];
  const pieces = textParts(text).map((part) => {
    if (part.kind === 'words') return part.text;
    const figure = textFigure(model, part);
    // A number in braces is no figure of the model.
    if (!('code' in figure)) return figure.entries.length > 0 ? figure : part.text;
    if (isMeant(figure.code, part.ways)) faults.push(toldTexts.notAFigure(part.text, figure.message));
    return part.text;
  });
  return { pieces, faults };
}

function figureText(figure: TextFigure, model: Model, values: readonly Values[], format: Format): string {
  const number = figure.value(values);
  if (number.isNaN()) return entryTexts.noValue;
  const holds = !number.isZero();
  const cell = figure.entry === undefined ? undefined : model.cells[figure.entry];
  if (figure.unit === undefined) return cell === undefined ? yesOrNo(holds) : truthWord(cell, holds);
  const words = cell === undefined ? undefined : wordsOf(cell, number);
  if (words !== undefined) return words;
  const content = cell === undefined ? undefined : model.plans[figure.plan]?.contents[cell.id];
  const isTyped = content?.kind === 'input' && cell?.unit === figure.unit;
  const text = isTyped ? format.written(content.text) : format.value(number, figure.unit);
  return figure.withUnit ? spokenWithUnit(text, figure.unit.text) : text;
}

/** A text with today's figures in it. */
export function toldText({ pieces }: Told, model: Model, values: readonly Values[], format: Format): string {
  return pieces.map((piece) => (typeof piece === 'string' ? piece : figureText(piece, model, values, format))).join('');
}

/** The same of a text that is read only once. */
export function toldAtOnce(model: Model, values: readonly Values[], text: string, format: Format): string {
  return text.includes('{') ? toldText(readTold(model, text), model, values, format) : text;
}
