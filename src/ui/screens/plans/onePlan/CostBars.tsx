import { createMemo, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { barsPicture } from '../../../../present/plans/barsPicture';
import { costBars } from '../../../../present/plans/onePlan/bars';
import type { OnePlan } from '../../../../present/plans/onePlan/onePlan';
import { onePlanTexts } from '../../../../present/plans/onePlan/texts';
import { textOf, type Phrase } from '../../../../present/text/phrase';
import { printedUnit } from '../../../../present/text/printedUnit';
import { localFormat } from '../../../app/preferences/localFormat';
import { ChartCanvas } from '../../../kit/charts/ChartCanvas';
import { openRows } from '../../../kit/charts/rows';

interface CostBarsProps {
  readonly one: OnePlan;
  readonly nameOf: (cell: Cell) => string;
  readonly finding: Phrase;
}

/** What a plant costs by kind, or the year where plants are not counted. */
export function CostBars(props: CostBarsProps): JSX.Element {
  const bars = createMemo(() => costBars(props.one, props.nameOf, localFormat));
  const caption = (): string => {
    const { forPlants, unit } = props.one;
    return forPlants === undefined
      ? onePlanTexts.pictureOfYear(printedUnit(unit.text))
      : onePlanTexts.picture(printedUnit(forPlants.each.text));
  };
  return (
    <figure class="curve">
      <figcaption>
        <span class="key-what">{caption()}</span>{' '}
        <span class="cost-key">
          <span class="cost-swatch" aria-hidden="true" /> {onePlanTexts.variableMark}{' '}
          <span class="cost-swatch fixed" aria-hidden="true" /> {onePlanTexts.fixedMark}
        </span>
      </figcaption>
      <ChartCanvas
        title={caption()}
        label={textOf(props.finding)}
        open={openRows}
        draw={(ink, width) => barsPicture(bars(), ink, width, localFormat)}
        parts={() => ({ key: () => [] })}
      />
    </figure>
  );
}
