import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { decimalsFor } from '../../../present/text/digits';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import type { LineName } from '../../../present/results/resultLines';
import type { LineSelection, QuickStudy } from '../../../present/breakeven/curve/quickStudy';
import { sampledRows, turnRows } from '../../../present/breakeven/tables';
import type { BreakevenContext } from '../../../present/breakeven/sentences';

interface BreakevenTablesProps {
  readonly matter: BreakevenContext;
  readonly quick: QuickStudy;
  readonly selection: LineSelection;
  readonly exact: boolean;
}

/** The crossings with all their digits, and the lines as numbers. */
export function BreakevenTables(props: BreakevenTablesProps): JSX.Element {
  return (
    <NumbersBehind summary="The same numbers as tables">
      <Turns {...props} />
      <Sampled {...props} />
    </NumbersBehind>
  );
}

function Turns(props: BreakevenTablesProps): JSX.Element {
  const rows = createMemo(() => turnRows(props.matter, props.selection, localFormat));
  const inputCell = (): Cell => props.matter.moved.cell;
  return (
    <Show when={rows().length > 0} fallback={<p>No crossing and no break in the range looked at.</p>}>
      <div class="table-room" role="region" aria-label="Crossings and breaks" tabindex="0">
        <table>
          <caption>Crossings and breaks{props.exact ? '' : ' (being worked out exactly …)'}</caption>
          <thead>
            <tr>
              <th scope="col">{withUnit(inputCell())}</th>
              <th scope="col">what happens there</th>
              <th scope="col">from today</th>
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
  const headings = (): Record<LineName, string> => ({
    against: `A ${props.matter.subject.against ?? ''}`,
    plan:
      props.matter.lines.against === undefined ? props.matter.subject.result.label : `B ${props.matter.subject.plan}`,
    difference: 'B − A',
  });
  const rows = createMemo(() => sampledRows(props.quick, props.matter.lines, columns()));
  const decimals = createMemo(() => {
    const all = rows()
      .flatMap(({ ys }) => ys)
      .filter((y) => !Number.isNaN(y))
      .map(Math.abs);
    return decimalsFor(decimal(Math.max(0, ...all)), props.matter.subject.result.unit);
  });
  const shown = (y: number): string =>
    Number.isNaN(y) ? 'cannot be computed' : localFormat.fixed(decimal(y), decimals());
  return (
    <div class="table-room" role="region" aria-label="The lines as numbers" tabindex="0">
      <table>
        <caption>{withUnit(props.matter.subject.result)}</caption>
        <thead>
          <tr>
            <th scope="col">{withUnit(props.matter.moved.cell)}</th>
            <For each={columns()}>{(name) => <th scope="col">{headings()[name]}</th>}</For>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(row) => (
              <tr>
                <th scope="row">{localFormat.full(decimal(row.x))}</th>
                <For each={row.ys}>{(y) => <td>{shown(y)}</td>}</For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </div>
  );
}
