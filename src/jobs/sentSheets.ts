import type { Sheet } from '../model/sheet';
import type { SheetText, ToWorker } from './protocol';

/** Sheets that the worker keeps: that of the model, that of the case made from it, and the ones before an edit. */
const most = 4;

/** The rows in which a sheet differs from one that was sent before; undefined where columns or row count differ. */
export function changedRows(before: Sheet, { columns, rows }: Sheet): Sheet['rows'] | undefined {
  if (before.columns !== columns || before.rows.length !== rows.length) return undefined;
  return rows.filter((row, i) => row !== before.rows[i]);
}

/** The sheets that the worker has, the most recently used last. */
export class SentSheets {
  private sent: readonly { readonly sheet: Sheet; readonly number: number }[] = [];
  private count = 0;

  /** @param post sends a message to the worker */
  constructor(private readonly post: (message: ToWorker) => void) {}

  /** The number of a sheet; a sheet that the worker does not have is sent first. */
  numberOf(sheet: Sheet): number {
    const known = this.sent.find((one) => one.sheet === sheet) ?? this.send(sheet);
    this.sent = [...this.sent.filter((one) => one !== known), known];
    for (const old of this.sent.slice(0, -most)) this.post({ kind: 'forget', sheet: old.number });
    this.sent = this.sent.slice(-most);
    return known.number;
  }

  private send(sheet: Sheet): { sheet: Sheet; number: number } {
    this.count += 1;
    this.post({ kind: 'sheet', sheet: this.count, text: this.textOf(sheet) });
    return { sheet, number: this.count };
  }

  /** A sheet's text as the fewest rows: the difference from a sheet that the worker has, or the whole. */
  private textOf(sheet: Sheet): SheetText {
    const changes = this.sent.flatMap((one) => {
      const rows = changedRows(one.sheet, sheet);
      return rows === undefined ? [] : { like: one.number, rows };
    });
    const [least] = changes.sort((a, b) => a.rows.length - b.rows.length);
    return least ?? { whole: { columns: sheet.columns, rows: sheet.rows } };
  }
}
