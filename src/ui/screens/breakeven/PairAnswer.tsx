import { createMemo, type JSX } from 'solid-js';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import { printedUnit } from '../../../present/text/printedUnit';
import { BreakevenChart } from './BreakevenChart';
import { BreakevenTables } from './BreakevenTables';
import { TargetField } from './TargetField';
import { RangeFields } from './RangeFields';
import { remarkOn } from '../../../present/breakeven/range';
import { wholeRange } from '../../../present/breakeven/curve/visibleRange';
import type { InputInterval } from '../../../present/breakeven/curve/sample';
import type { BreakevenAnswerProps } from './answerProps';
import { createStudy, type StudyOf } from './shownStudy';
import { breakevenSentences, type BreakevenContext } from '../../../present/breakeven/sentences';
import { breakevenTexts } from '../../../present/breakeven/texts';
import { ViewChoice } from './ViewChoice';

/** The answer about the two plans that are compared, or about the only one: sentences, chart and tables. */
export function PairAnswer(props: BreakevenAnswerProps): JSX.Element {
  const wanted = createMemo((): StudyOf => {
    const { range, own } = props.settings.range();
    return {
      sheet: props.store.model().sheet,
      subject: props.subject,
      lines: props.lines,
      range,
      targets: props.settings.targets(),
      selection: props.settings.selection(),
      visible: own ? wholeRange(range, props.lines.lever.base) : undefined,
    };
  });
  const study = createStudy(() => wanted());
  const planName = (plan: number | undefined): string => props.store.model().plans[plan ?? -1]?.name ?? '';
  const matter = createMemo((): BreakevenContext => ({
    subject: {
      result: props.result,
      target: props.settings.target(),
      plan: planName(props.plan),
      against: props.against === undefined ? undefined : planName(props.against),
    },
    moved: { cell: props.input, today: props.lines.lever.base, range: props.lines.lever.range },
    view: props.settings.view(),
    lines: props.lines,
    targets: props.settings.targets(),
    found: study.found(),
  }));
  const words = createMemo(() => breakevenSentences(matter(), study.quick(), localFormat));
  return (
    <>
      <LiveText>
        <AnswerText main={words().main} more={words().more} />
      </LiveText>
      <ViewChoice settings={props.settings} legend={breakevenTexts.draw} />
      <BreakevenChart
        matter={matter()}
        quick={study.quick()}
        selection={props.settings.selection()}
        label={textOf(sentences(words().main, words().more))}
      />
      <PairFields {...props} visible={study.quick().visible} />
      <BreakevenTables
        matter={matter()}
        quick={study.quick()}
        selection={props.settings.selection()}
        exact={study.exact()}
      />
      <MethodLink choice={props.choice} entry="breakeven" />
    </>
  );
}

interface PairFieldsProps extends BreakevenAnswerProps {
  /** The part of the range that is drawn. */
  readonly visible: InputInterval;
}

/** Fields for the target and for the ends of the range. */
function PairFields(props: PairFieldsProps): JSX.Element {
  return (
    <div class="settings">
      <TargetField result={props.result} settings={props.settings} />
      <RangeFields
        selected={props.settings.range()}
        unit={printedUnit(props.input.unitText)}
        visible={props.visible}
        remark={remarkOn(props.lines.lever, props.settings.range(), (value) => localFormat.full(value))}
        onEnd={(end, text) => props.settings.setEnd(end, text)}
      />
    </div>
  );
}
