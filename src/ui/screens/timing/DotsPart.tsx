import { createMemo, For, type JSX } from 'solid-js';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { createChartArea } from '../../kit/charts/chartArea';
import { openRows } from '../../kit/charts/rows';
import type { RowsPicture } from '../../../present/picture/rowsPicture';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { localFormat } from '../../app/preferences/localFormat';
import { dotRows } from '../../../present/timing/dots';
import { dotsPicture } from '../../../present/timing/dotsPicture';
import { ownText } from '../../../present/timing/secondsDigits';
import { ownSeconds, type StepFound } from '../../../present/timing/study';
import type { TimingTerms } from '../../../present/timing/terms';
import { intervalText, stepName } from '../../../present/timing/sentences';

interface DotsProps {
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
  readonly chosen: string;
  /** The finding, for those who do not see the picture. */
  readonly label: string;
}

/** Each step's batches as dots beside its mean, with the interval as a band and the goal as dashed lines. */
export function DotsPart(props: DotsProps): JSX.Element {
  const chartArea = createChartArea();
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const picture = createMemo((): RowsPicture | undefined => {
    const ink = chartArea.ink();
    if (ink === undefined || chartArea.width() === 0) return undefined;
    const rows = dotRows(props.study);
    return dotsPicture(
      {
        rows,
        texts: timed().map(({ step, time }) => [stepName(step), intervalText(time!, localFormat)] as const),
        chosen: rows.findIndex(({ step }) => step === props.chosen),
        within: props.timing.terms.within.toNumber(),
      },
      ink,
      chartArea.width(),
      localFormat,
    );
  });
  return (
    <figure class="timing-dots">
      <figcaption class="key">
        <span class="key-what">batches by their seconds a plant</span>
        <span>dot: a batch, larger with more plants</span>
        <span>diamond: the mean</span>
        <span>band: where it may lie</span>
        <span>dashed: {localFormat.full(props.timing.terms.within)} % either way</span>
      </figcaption>
      <ChartCanvas chartArea={chartArea} label={props.label} open={openRows} picture={picture()} />
      <NumbersBehind summary="The batches behind the picture">
        <div class="table-room" tabindex="0" role="group" aria-label="The batches behind the picture">
          <table>
            <thead>
              <tr>
                <th scope="col">Step</th>
                <th scope="col">Batch</th>
                <th scope="col">Plants</th>
                <th scope="col">s each, rated</th>
                <th scope="col">against the mean</th>
              </tr>
            </thead>
            <tbody>
              <For each={timed()}>{(found) => <BatchRows found={found} />}</For>
            </tbody>
          </table>
        </div>
      </NumbersBehind>
    </figure>
  );
}

function BatchRows(props: { found: StepFound }): JSX.Element {
  const number = (row: number): number => props.found.rows.findIndex((each) => each.row === row) + 1;
  return (
    <For each={props.found.batches}>
      {(batch) => (
        <tr>
          <th scope="row">{stepName(props.found.step)}</th>
          <td>{number(batch.row)}</td>
          <td>{localFormat.full(batch.plants)}</td>
          <td>{ownText(ownSeconds(batch), localFormat)}</td>
          <td>{offText(ownSeconds(batch).dividedBy(props.found.time!.secondsPerPlant).minus(1).times(100))}</td>
        </tr>
      )}
    </For>
  );
}

function offText(off: ReturnType<typeof ownSeconds>): string {
  return `${localFormat.signed(off, undefined, 1)} %`;
}
