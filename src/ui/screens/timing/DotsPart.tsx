import { createMemo, For, type JSX } from 'solid-js';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { openRows } from '../../kit/charts/rows';
import type { ChartInk } from '../../../present/picture/ink';
import { keyText } from '../../../present/picture/keySigns';
import type { RowsPicture } from '../../../present/picture/rowsPicture';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { localFormat } from '../../app/preferences/localFormat';
import { dotRows } from '../../../present/timing/dots';
import { dotsPicture } from '../../../present/timing/dotsPicture';
import type { StepFound } from '../../../present/timing/study';
import type { TimingTerms } from '../../../present/timing/terms';
import { intervalText, stepName } from '../../../present/timing/sentences';
import { dotsTable } from '../../../present/timing/batchRows';
import { dotsTexts } from '../../../present/timing/dotsTexts';

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
  const timed = createMemo(() => props.study.filter(({ time }) => time !== undefined));
  const rows = createMemo(() => dotRows(props.study));
  const draw = (ink: ChartInk, width: number): RowsPicture =>
    dotsPicture(
      {
        rows: rows(),
        texts: timed().map(({ step, time }) => [stepName(step), intervalText(time!, localFormat)] as const),
        chosen: rows().findIndex(({ step }) => step === props.chosen),
        within: props.timing.terms.within.toNumber(),
      },
      ink,
      width,
      localFormat,
    );
  const key = (): string[] => [
    dotsTexts.dot,
    dotsTexts.diamond,
    dotsTexts.band,
    dotsTexts.dashed(localFormat.full(props.timing.terms.within)),
  ];
  return (
    <figure class="timing-dots">
      <figcaption class="key">
        <span class="key-what">{dotsTexts.what}</span>
        <For each={key()}>{(text) => <span>{text}</span>}</For>
      </figcaption>
      <ChartCanvas
        title={dotsTexts.what}
        label={props.label}
        open={openRows}
        draw={draw}
        parts={() => ({ key: () => key().map(keyText) })}
      />
      <NumbersBehind summary={dotsTexts.numbers}>
        <HeadedTable label={dotsTexts.numbers} table={dotsTable(props.study, localFormat)} captioned={false} />
      </NumbersBehind>
    </figure>
  );
}
