import type { Line, Model } from '../../model/model';

/** A question of a lesson, and its answer. */
export interface LessonStep {
  /** The record that it is. */
  readonly row: number;
  /** May have figures in braces, as the answer may (see `readTold`). */
  readonly question: string;
  readonly answer: string;
}

/** A model read as a lesson. */
export interface Lesson {
  readonly title: string;
  readonly about: string;
  readonly steps: readonly LessonStep[];
  /** Text rows that are not steps; they are for the teacher. */
  readonly asides: readonly LessonStep[];
}

/** `Step 1. …`, `Schritt 2: …`, `3) …`. */
const numbered = /^(?:\p{L}+\s+)?\d+\s*[.:)]\s/u;

function textRows(lines: readonly Line[]): Extract<Line, { kind: 'text' }>[] {
  return lines.filter((line) => line.kind === 'text');
}

/**
 * The lesson that a model is: its text rows with a number and a note are the steps, in the file's order, the notes
 * their answers. Undefined for a model without such rows.
 */
export function lessonOf({ lines, title }: Pick<Model, 'lines' | 'title'>): Lesson | undefined {
  const [first, ...rows] = textRows(lines);
  const noted = rows
    .filter(({ note }) => note !== '')
    .map(({ row, label, note }): LessonStep => ({ row, question: label, answer: note }));
  const steps = noted.filter(({ question }) => numbered.test(question));
  if (first === undefined || steps.length === 0) return undefined;
  const asides = noted.filter(({ question }) => !numbered.test(question));
  return { title, about: first.note, steps, asides };
}
