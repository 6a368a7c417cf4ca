import { createMemo, For, type JSX } from 'solid-js';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { createChartArea } from '../../kit/charts/chartArea';
import { openRows } from '../../kit/charts/rows';
import type { RowsPicture } from '../../../present/picture/rowsPicture';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { localFormat } from '../../app/preferences/localFormat';
import { dotRows } from '../../../present/timing/dots';
import { dotsPicture } from '../../../present/timing/dotsPicture';
import type { StepFound } from '../../../present/timing/study';
import type { TimingTerms } from '../../../present/timing/terms';
import { intervalText, stepName } from '../../../present/timing/sentences';
import { batchRows } from '../../../present/timing/batchRows';
import { dotsTexts } from '../../../present/timing/dotsTexts';
import { timingFields } from '../../../present/timing/texts';

interface DotsProps {
  readonly study: readonly StepFound[];
  readonly timing: TimingTerms;
  readonly chosen: string;
  /** The picture's finding, for screen readers. */
  readonly label: string;
}

/**
 * Each step's batches as dots around its mean, with the confidence interval as a band and the precision wanted as
 * dashed lines.
 */
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
        <span class="key-what">{dotsTexts.what}</span>
        <span>{dotsTexts.dot}</span>
        <span>{dotsTexts.diamond}</span>
        <span>{dotsTexts.band}</span>
        <span>{dotsTexts.dashed(localFormat.full(props.timing.terms.within))}</span>
      </figcaption>
      <ChartCanvas chartArea={chartArea} label={props.label} open={openRows} picture={picture()} />
      <NumbersBehind summary={dotsTexts.numbers}>
        <div class="table-room" tabindex="0" role="group" aria-label={dotsTexts.numbers}>
          <table>
            <thead>
              <tr>
                <th scope="col">{timingFields.step}</th>
                <th scope="col">{dotsTexts.batch}</th>
                <th scope="col">{timingFields.plants}</th>
                <th scope="col">{dotsTexts.secondsEach}</th>
                <th scope="col">{dotsTexts.againstMean}</th>
              </tr>
            </thead>
            <tbody>
              <For each={props.study.flatMap((found) => batchRows(found, localFormat))}>
                {(row) => (
                  <tr>
                    <th scope="row">{row.step}</th>
                    <td>{row.number}</td>
                    <td>{row.plants}</td>
                    <td>{row.seconds}</td>
                    <td>{row.off}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
      </NumbersBehind>
    </figure>
  );
}
