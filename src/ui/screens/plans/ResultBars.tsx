import { createMemo, Index, Show, type JSX } from 'solid-js';
import { floatOf, type Decimal } from '../../../core/number';
import { barsPicture, type PlanBars } from '../../../present/plans/barsPicture';
import { rowSaid, type ResultRow } from '../../../present/plans/sideBySide';
import { withUnit } from '../../../present/text/withUnit';
import { lettersOf } from '../../../present/text/planLetter';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { openRows } from '../../kit/charts/rows';

interface ResultBarsProps {
  readonly rows: readonly ResultRow[];
  /** Of the plans. */
  readonly names: readonly string[];
}

/** A small picture for each result that is a number: a bar for each plan. */
export function ResultBars(props: ResultBarsProps): JSX.Element {
  const drawn = createMemo(() => props.rows.filter(({ numbers }) => numbers !== undefined));
  return (
    <div class="plan-bars">
      <Index each={drawn()}>{(row) => <Bars row={row()} names={props.names} />}</Index>
    </div>
  );
}

function Bars(props: { row: ResultRow; names: readonly string[] }): JSX.Element {
  const { compared } = usePage();
  const bars = createMemo((): PlanBars => {
    const letters = lettersOf(props.names.length, compared.columns());
    const numbers: readonly Decimal[] = props.row.numbers ?? [];
    return {
      names: props.names,
      letters,
      values: numbers.map(floatOf),
      texts: props.row.values.map(({ text }) => text),
    };
  });
  return (
    <figure class="curve">
      <figcaption>
        <span class="key-what">{props.row.name}</span>{' '}
        <Show when={props.row.unit}>
          <span class="unit">{props.row.unit}</span>
        </Show>
      </figcaption>
      <ChartCanvas
        title={withUnit({ label: props.row.name, unitText: props.row.cell.unitText })}
        label={rowSaid(props.row, props.names)}
        open={openRows}
        draw={(ink, width) => barsPicture(bars(), ink, width, localFormat)}
        parts={() => ({ key: () => [] })}
      />
    </figure>
  );
}
