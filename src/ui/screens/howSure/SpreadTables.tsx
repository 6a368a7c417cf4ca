import type { JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import { binRows, binsTable, figureRows, figuresTable } from '../../../present/howSure/tables';
import type { DrawSpread } from '../../../present/howSure/summary';
import type { SpreadQuestion } from '../../../present/howSure/sentences';
import { spreadTexts } from '../../../present/howSure/texts';
import { commonTexts } from '../../../present/text/commonTexts';

interface SpreadTablesProps {
  readonly spread: DrawSpread;
  readonly question: SpreadQuestion;
  /** Names of the sets of draws. */
  readonly names: readonly string[];
}

/** The figures of the draws and the bins of the histogram as tables. */
export function SpreadTables(props: SpreadTablesProps): JSX.Element {
  const target = (): string => localFormat.value(decimal(props.question.target), props.question.result.unit);
  return (
    <NumbersBehind summary={commonTexts.numbersAsTables}>
      <HeadedTable
        label={spreadTexts.figures}
        table={figuresTable(
          withUnit(props.question.result),
          props.names,
          figureRows(props.spread, target(), localFormat),
        )}
      />
      <HeadedTable
        label={spreadTexts.bins}
        table={binsTable(spreadTexts.binsCaption, props.names, binRows(props.spread, localFormat))}
      />
    </NumbersBehind>
  );
}
