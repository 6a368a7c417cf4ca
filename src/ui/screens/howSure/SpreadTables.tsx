import { For, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import { figureRows, binRows } from '../../../present/howSure/tables';
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
      <Numbers
        label={spreadTexts.figures}
        caption={withUnit(props.question.result)}
        first=""
        names={props.names}
        rows={figureRows(props.spread, target(), localFormat)}
      />
      <Numbers
        label={spreadTexts.bins}
        caption={spreadTexts.binsCaption}
        first={commonTexts.fromTo}
        names={props.names}
        rows={binRows(props.spread, localFormat)}
      />
    </NumbersBehind>
  );
}

interface NumbersProps {
  readonly label: string;
  readonly caption: string;
  readonly first: string;
  readonly names: readonly string[];
  readonly rows: readonly { readonly what: string; readonly numbers: readonly string[] }[];
}

function Numbers(props: NumbersProps): JSX.Element {
  return (
    <HeadedTable label={props.label} caption={props.caption} heads={[props.first, ...props.names]}>
      <For each={props.rows}>
        {(row) => (
          <tr>
            <th scope="row">{row.what}</th>
            <For each={row.numbers}>{(text) => <td>{text}</td>}</For>
          </tr>
        )}
      </For>
    </HeadedTable>
  );
}
