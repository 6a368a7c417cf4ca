import type { Decimal } from '../../../core/number';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { commonTexts } from '../../text/commonTexts';
import type { Format } from '../../text/numberFormat';
import { printedUnit } from '../../text/printedUnit';
import { spiderCaption } from '../spider/texts';
import type { ShownBar } from './bars';
import { rowsOf, tornadoUnit } from './rows';
import type { TornadoSubject } from './sentences';
import { tornadoHeads, tornadoTexts } from './texts';

/** The bars as a table, their results with a number of decimals. */
export function tornadoTable(
  bars: readonly ShownBar[],
  subject: TornadoSubject,
  decimals: number,
  format: Format,
): DataTable {
  const result = (text: string | undefined, value: Decimal): DataCell =>
    figure(text ?? commonTexts.cannotCompute, value);
  const rows = rowsOf(bars, subject, decimals, format).map((row, i) => {
    const bar = bars[i]!;
    const unit = printedUnit(row.cell.unitText);
    return [
      words(row.name, row.percentiles ? tornadoTexts.percentiles : undefined),
      figure(row.low.input, bar.low, unit),
      figure(row.high.input, bar.high, unit),
      result(row.low.result, bar.atLow),
      result(row.high.result, bar.atHigh),
      figure(row.swing ?? commonTexts.unknown, bar.swing),
      words(row.flips ? tornadoTexts.flips : ''),
    ];
  });
  const columns = tornadoHeads(tornadoUnit(subject)).map((name) => ({ name }));
  return { caption: spiderCaption(subject), columns, rows };
}
