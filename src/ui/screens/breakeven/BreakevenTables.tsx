import { createMemo, For, Show, type JSX } from 'solid-js';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import type { LineName } from '../../../present/results/resultLines';
import type { LineSelection, QuickStudy } from '../../../present/breakeven/curve/quickStudy';
import { sampledRows, shownRows, turnRows } from '../../../present/breakeven/tables';
import type { BreakevenContext } from '../../../present/breakeven/sentences';
import { breakevenTableTexts } from '../../../present/breakeven/texts';
import { lineHead } from '../../../present/breakeven/lineTexts';
import { commonTexts } from '../../../present/text/commonTexts';

interface BreakevenTablesProps {
  readonly matter: BreakevenContext;
  readonly quick: QuickStudy;
  readonly selection: LineSelection;
  readonly exact: boolean;
}

/** The crossings with all their digits, and the lines as numbers. */
export function BreakevenTables(props: BreakevenTablesProps): JSX.Element {
  return (
    <NumbersBehind summary={commonTexts.numbersAsTables}>
      <Turns {...props} />
      <Sampled {...props} />
    </NumbersBehind>
  );
}

function Turns(props: BreakevenTablesProps): JSX.Element {
  const rows = createMemo(() => turnRows(props.matter, props.selection, localFormat));
  return (
    <Show when={rows().length > 0} fallback={<p>{breakevenTableTexts.none}</p>}>
      <HeadedTable
        label={breakevenTableTexts.turns}
        caption={breakevenTableTexts.turnsCaption(props.exact)}
        heads={[withUnit(props.matter.moved.cell), breakevenTableTexts.happens, breakevenTableTexts.fromToday]}>
        <For each={rows()}>
          {(row) => (
            <tr>
              <th scope="row">{row.value}</th>
              <td class="words">{row.what}</td>
              <td>{row.change}</td>
            </tr>
          )}
        </For>
      </HeadedTable>
    </Show>
  );
}

function Sampled(props: BreakevenTablesProps): JSX.Element {
  const columns = (): LineName[] =>
    props.matter.lines.against === undefined ? ['plan'] : ['against', 'plan', 'difference'];
  const rows = createMemo(() =>
    shownRows(sampledRows(props.quick, props.matter.lines, columns()), props.matter.subject.result, localFormat),
  );
  return (
    <HeadedTable
      label={breakevenTableTexts.lines}
      caption={withUnit(props.matter.subject.result)}
      heads={[withUnit(props.matter.moved.cell), ...columns().map((name) => lineHead(props.matter, name))]}>
      <For each={rows()}>
        {(row) => (
          <tr>
            <th scope="row">{row.x}</th>
            <For each={row.ys}>{(y) => <td>{y ?? commonTexts.cannotCompute}</td>}</For>
          </tr>
        )}
      </For>
    </HeadedTable>
  );
}
