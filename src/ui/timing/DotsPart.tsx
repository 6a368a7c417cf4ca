import { createMemo, For, type JSX } from 'solid-js';
import { ChartCanvas } from '../chart/ChartCanvas';
import { createEasel } from '../chart/easel';
import { openRows, type RowsPicture } from '../chart/rows';
import { Behind } from '../finding/Behind';
import { here } from '../here';
import { dotRows } from './dots';
import { dotsPicture } from './dotsPicture';
import { ownText } from './secondsDigits';
import { ownSeconds, type StepFound } from './study';
import type { AskedTerms } from './terms';
import { intervalText, stepName } from './told';

interface DotsProps {
  readonly study: readonly StepFound[];
  readonly asked: AskedTerms;
  readonly chosen: string;
  /** The finding, for those who do not see the picture. */
  readonly label: string;
}

/** Each step's batches as dots beside its mean, with the interval as a band and the goal as dashed lines. */
export function DotsPart(props: DotsProps): JSX.Element {
  const easel = createEasel();
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const picture = createMemo((): RowsPicture | undefined => {
    const ink = easel.ink();
    if (ink === undefined || easel.width() === 0) return undefined;
    const rows = dotRows(props.study);
    return dotsPicture(
      {
        rows,
        texts: timed().map(({ step, time }) => [stepName(step), intervalText(time!, here)] as const),
        chosen: rows.findIndex(({ step }) => step === props.chosen),
        within: props.asked.terms.within.toNumber(),
      },
      ink,
      easel.width(),
      here,
    );
  });
  return (
    <figure class="timing-dots">
      <figcaption class="key">
        <span class="key-what">batches by their seconds a plant</span>
        <span>dot: a batch, larger with more plants</span>
        <span>diamond: the mean</span>
        <span>band: where it may lie</span>
        <span>dashed: {here.full(props.asked.terms.within)} % either way</span>
      </figcaption>
      <ChartCanvas easel={easel} label={props.label} open={openRows} picture={picture()} />
      <Behind summary="The batches behind the picture">
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
      </Behind>
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
          <td>{here.full(batch.plants)}</td>
          <td>{ownText(ownSeconds(batch), here)}</td>
          <td>{offText(ownSeconds(batch).dividedBy(props.found.time!.secondsPerPlant).minus(1).times(100))}</td>
        </tr>
      )}
    </For>
  );
}

function offText(off: ReturnType<typeof ownSeconds>): string {
  return `${here.signed(off, undefined, 1)} %`;
}
