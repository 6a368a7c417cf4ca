import type { LiveTexts } from '../../files/live/liveFile';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import { escapedText } from '../table/copied';
import { namesAmong } from '../text/entryNames';
import { printedUnit } from '../text/printedUnit';
import type { Format } from '../text/numberFormat';
import { textOf, type Phrase } from '../text/phrase';
import { budgetTexts } from '../theCase/budgetTexts';
import { caseOf, type CaseBudget } from '../theCase/caseOf';
import { headings } from '../theCase/headings';
import { caseSentence } from '../theCase/sentences';
import { budgetRows } from '../theCase/table';
import { caseTexts } from '../theCase/texts';
import { liveTexts, madeLine } from './liveTexts';

/** A case and what is said around it. */
export interface PlainCase {
  readonly model: Model;
  readonly values: readonly Values[];
  /** Indices of the plan that is taken and of the one that is given up. */
  readonly plan: number;
  readonly against: number;
  /** A person’s own words, and for whom by whom they were written; blank without any. */
  readonly words: string;
  readonly prepared: string;
  /** The day on which it is made, as it is written. */
  readonly day: string;
}

function paragraph(text: string, kind = ''): string {
  const attribute = kind === '' ? '' : ` class="${kind}"`;
  return text === '' ? '' : `<p${attribute} dir="auto">${escapedText(text)}</p>`;
}

function finding(of: PlainCase, made: CaseBudget, format: Format): Phrase {
  const nameOf = (plan: number): string => of.model.plans[plan]?.name ?? '';
  return caseSentence(made, { plan: nameOf(of.plan), against: nameOf(of.against) }, format);
}

function row(kind: 'part' | 'line' | 'net', name: string, amount: string): string {
  return `<tr class="${kind}"><th scope="row" dir="auto">${escapedText(name)}</th><td>${escapedText(amount)}</td></tr>`;
}

/** The budget as it is read: each part with its sum, and its lines below. */
function budget({ model }: PlainCase, made: CaseBudget, format: Format): string {
  const nameOf = namesAmong(model.cells);
  const { parts, net } = budgetRows(made, format);
  const rows = parts.flatMap(({ section: { kind, lines }, sum, amounts }) => [
    row('part', headings[kind].heading, sum.text),
    ...lines.map(({ cell }, k) => row('line', nameOf(cell), amounts[k]?.text ?? '')),
  ]);
  const caption = escapedText(budgetTexts.caption(printedUnit(made.unit.text)));
  return `<table><caption>${caption}</caption>${rows.join('')}${row('net', budgetTexts.netChange, net.text)}</table>`;
}

/** The case as it stands when it is sent, for a reader whose browser runs no script and for a file that is cut off. */
export function plainCase(of: PlainCase, format: Format): LiveTexts {
  const title = of.model.title;
  const made = caseOf(of.model, of.values, of.plan, of.against);
  const told =
    made.kind === 'made'
      ? [
          paragraph(textOf(finding(of, made, format)), 'finding'),
          paragraph(of.words, 'said-in-words'),
          paragraph(of.prepared, 'quiet'),
          budget(of, made, format),
        ]
      : [];
  const parts = [
    `<h1 dir="auto">${escapedText(title)}</h1>`,
    ...told,
    paragraph(caseTexts.noAdvice, 'quiet'),
    paragraph(madeLine(of.day), 'quiet'),
    paragraph(liveTexts.still, 'still'),
  ];
  return { title: escapedText(title), text: `<main class="plain-case">${parts.join('')}</main>` };
}
