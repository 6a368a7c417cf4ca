import { createMemo, Show, type JSX } from 'solid-js';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { localFormat } from '../../app/preferences/localFormat';
import type { LineName } from '../../../present/results/resultLines';
import type { LineSelection, QuickStudy } from '../../../present/breakeven/curve/quickStudy';
import { sampledRows, sampledTable, turnRows, turnsTable } from '../../../present/breakeven/tables';
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
  const table = createMemo(() => turnsTable(rows(), props.matter, breakevenTableTexts.turnsCaption(props.exact)));
  return (
    <Show when={rows().length > 0} fallback={<p>{breakevenTableTexts.none}</p>}>
      <HeadedTable label={breakevenTableTexts.turns} table={table()} waits={!props.exact} />
    </Show>
  );
}

function Sampled(props: BreakevenTablesProps): JSX.Element {
  const columns = (): LineName[] =>
    props.matter.lines.against === undefined ? ['plan'] : ['against', 'plan', 'difference'];
  const table = createMemo(() =>
    sampledTable(
      sampledRows(props.quick, props.matter.lines, columns()),
      props.matter,
      columns().map((name) => lineHead(props.matter, name)),
      localFormat,
    ),
  );
  return <HeadedTable label={breakevenTableTexts.lines} table={table()} />;
}
