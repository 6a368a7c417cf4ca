import { createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../model/cell';
import { editIn } from '../../model/edit';
import { field, withRow, type SheetRow } from '../../model/sheet';
import { movableInputs, type MovableGroup } from '../../present/live/movable';
import type { PageState } from '../app/pageContext';

/** The numbers of a page as they were sent, beside those that it has now. */
export interface SentRows {
  readonly groups: Accessor<readonly MovableGroup[]>;
  /** The text that was sent for an input in a plan. */
  readonly sent: (cell: Cell, plan: number) => string;
  /** Whether the number is another one now. */
  readonly isChanged: (cell: Cell, plan: number) => boolean;
  /** How many inputs have other numbers now. */
  readonly changed: Accessor<number>;
  readonly putBack: (cell: Cell) => void;
  readonly putAllBack: () => void;
}

export function createSentRows({ store, drafts, compared }: PageState): SentRows {
  const sheet = store.model().sheet;
  const rows = new Map(sheet.rows.map((row) => [row.row, row]));
  const groups = createMemo(() => movableInputs(store.shape(), compared.columns()));
  const rowOf = (cell: Cell): SheetRow | undefined => rows.get(cell.row);
  const sent = (cell: Cell, plan: number): string => {
    const [row, shown] = [rowOf(cell), store.shape().plans[plan]];
    return row === undefined || shown === undefined ? '' : field(row, editIn(store.shape(), shown, cell.id, '').column);
  };
  const isChanged = (cell: Cell, plan: number): boolean => {
    const { content } = store.shown(plan, cell.id);
    return content?.kind === 'input' && content.text !== sent(cell, plan);
  };
  const changed = createMemo(
    () =>
      groups().flatMap(({ inputs }) => inputs.filter(({ cell, plans }) => plans.some((plan) => isChanged(cell, plan))))
        .length,
  );
  /** What could not be read goes with the number that it would have replaced. */
  const forget = (isMeant: (row: number) => boolean): void => {
    for (const [row, column] of drafts.all()) if (isMeant(row)) drafts.set({ row, column }, undefined);
  };
  return {
    groups,
    sent,
    isChanged,
    changed,
    putBack: (cell) => {
      const row = rowOf(cell);
      if (row === undefined) return;
      forget((one) => one === cell.row);
      store.replace(withRow(store.model().sheet, row));
    },
    putAllBack: () => {
      forget(() => true);
      store.replace(sheet);
    },
  };
}
