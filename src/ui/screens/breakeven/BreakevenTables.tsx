import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
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
  const inputCell = (): Cell => props.matter.moved.cell;
  return (
    <Show when={rows().length > 0} fallback={<p>{breakevenTableTexts.none}</p>}>
      <div class="table-room" role="region" aria-label={breakevenTableTexts.turns} tabindex="0">
        <table>
          <caption>{breakevenTableTexts.turnsCaption(props.exact)}</caption>
          <thead>
            <tr>
              <th scope="col">{withUnit(inputCell())}</th>
              <th scope="col">{breakevenTableTexts.happens}</th>
              <th scope="col">{breakevenTableTexts.fromToday}</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row">{row.value}</th>
                  <td class="words">{row.what}</td>
                  <td>{row.change}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
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
    <div class="table-room" role="region" aria-label={breakevenTableTexts.lines} tabindex="0">
      <table>
        <caption>{withUnit(props.matter.subject.result)}</caption>
        <thead>
          <tr>
            <th scope="col">{withUnit(props.matter.moved.cell)}</th>
            <For each={columns()}>{(name) => <th scope="col">{lineHead(props.matter, name)}</th>}</For>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(row) => (
              <tr>
                <th scope="row">{row.x}</th>
                <For each={row.ys}>{(y) => <td>{y ?? commonTexts.cannotCompute}</td>}</For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </div>
  );
}
