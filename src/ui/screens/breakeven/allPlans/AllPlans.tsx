import { createMemo, Show, type JSX } from 'solid-js';
import { bestAmongNumbers } from '../../../../study/envelope';
import { bestPlanSentences, type BestPlanContext } from '../../../../present/allPlans/bestSentences';
import { plansDrawing } from '../../../../present/allPlans/drawing';
import type { PlanLines } from '../../../../present/allPlans/lines';
import { bestWay, namedPlans } from '../../../../present/allPlans/plans';
import { remarkOn } from '../../../../present/breakeven/range';
import { breakevenTexts } from '../../../../present/breakeven/texts';
import { sentences, textOf } from '../../../../present/text/phrase';
import { commonTexts } from '../../../../present/text/commonTexts';
import { printedUnit } from '../../../../present/text/printedUnit';
import { withUnit } from '../../../../present/text/withUnit';
import { costsFigures } from '../../../../present/whatMatters/costs/texts';
import { localFormat } from '../../../app/preferences/localFormat';
import { LinesChart } from '../../../kit/charts/LinesChart';
import { PlanKey } from '../../../kit/charts/PlanKey';
import { MethodLink } from '../../../kit/method/MethodLink';
import { AnswerText } from '../../../kit/sections/AnswerText';
import { LiveText } from '../../../kit/sections/LiveText';
import type { BreakevenAnswerProps } from '../answerProps';
import { RangeFields } from '../RangeFields';
import { ViewChoice } from '../ViewChoice';
import { createAllLines } from './allLines';
import { AllPlansTables } from './AllPlansTables';
import { createPlanStudy } from './shownPlanStudy';

interface AllPlansProps extends BreakevenAnswerProps {
  /** Indices of the two plans compared, A first. */
  readonly compared: readonly number[];
}

/** The result against the input in every plan, and which plan is the best where. */
export function AllPlans(props: AllPlansProps): JSX.Element {
  const found = createAllLines(props);
  return <Show when={found()}>{(lines) => <Answer {...props} found={lines()} />}</Show>;
}

function Answer(props: AllPlansProps & { found: PlanLines }): JSX.Element {
  const plans = createMemo(() => namedPlans(props.store.shape(), props.compared));
  const way = createMemo(() => bestWay(props.result));
  const study = createPlanStudy(() => ({
    sheet: props.store.model().sheet,
    subject: { result: props.result.id, input: props.input.id, plan: props.plan },
    found: props.found,
    way: way(),
    range: props.settings.range(),
  }));
  const today = createMemo(() => props.found.lines.map(({ line }) => line.base));
  const best = createMemo(() => bestAmongNumbers(today(), way()));
  const matter = createMemo((): BestPlanContext => ({
    result: props.result,
    moved: { cell: props.input, today: props.found.lever.base, range: props.found.lever.range },
    way: way(),
    plans: plans(),
    today: today(),
    moves: props.found.lines.some(({ line }) => line.depends),
    stretches: study.stretches(),
  }));
  const words = createMemo(() => bestPlanSentences(matter(), localFormat));
  const drawing = createMemo(() =>
    plansDrawing(study.quick(), study.stretches(), plans(), matter().moved, today(), best(), localFormat),
  );
  return (
    <>
      <LiveText>
        <AnswerText main={words().main} more={words().more} />
      </LiveText>
      <ViewChoice settings={props.settings} legend={breakevenTexts.draw} />
      <LinesChart
        drawing={drawing()}
        label={textOf(sentences(words().main, words().more))}
        caption={withUnit(props.result)}>
        <PlanKey
          figures={costsFigures(printedUnit(props.result.unitText))}
          plans={plans().map((plan, p) => ({
            ...plan,
            leading: best().includes(p),
            figure: today()[p]!.isNaN() ? commonTexts.unknown : localFormat.value(today()[p]!, props.result.unit),
          }))}
        />
      </LinesChart>
      <div class="settings">
        <RangeFields
          selected={props.settings.range()}
          unit={printedUnit(props.input.unitText)}
          visible={study.quick().drawn}
          remark={remarkOn(props.found.lever, props.settings.range(), (value) => localFormat.full(value))}
          onEnd={(end, text) => props.settings.setEnd(end, text)}
        />
      </div>
      <AllPlansTables matter={matter()} found={props.found} drawn={study.quick().drawn} exact={study.exact()} />
      <MethodLink choice={props.choice} entry="best plan" />
    </>
  );
}
