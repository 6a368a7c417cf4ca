import { createMemo, Show, type JSX } from 'solid-js';
import { numberToText } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import { printedUnit } from '../../../present/text/printedUnit';
import type { ScreenProps } from '../../app/screenProps';
import { TwoWay } from './twoWay/TwoWay';
import { BreakevenChart } from './BreakevenChart';
import { BreakevenTables } from './BreakevenTables';
import type { ResultLines, Subject } from '../../../present/results/resultLines';
import { NumberField } from '../../kit/fields/NumberField';
import { RangeFields } from './RangeFields';
import { remarkOn } from '../../../present/breakeven/range';
import { wholeRange } from '../../../present/breakeven/curve/visibleRange';
import type { InputInterval } from '../../../present/breakeven/curve/sample';
import { createBreakevenSettings, type BreakevenSettings } from './settings';
import { createStudy, type StudyOf } from './shownStudy';
import { breakevenSentences, type BreakevenContext } from '../../../present/breakeven/sentences';
import { breakevenTexts } from '../../../present/breakeven/texts';

interface BreakevenAnswerProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: ResultLines;
  readonly subject: Subject;
}

const views = [
  { value: 'both', label: breakevenTexts.views.both },
  { value: 'difference', label: breakevenTexts.views.difference },
] as const;

/** The answer about one result and one input: sentences, chart and tables. */
export function BreakevenAnswer(props: BreakevenAnswerProps): JSX.Element {
  const settings = createBreakevenSettings(props);
  const wanted = createMemo((): StudyOf => {
    const { range, own } = settings.range();
    return {
      sheet: props.store.model().sheet,
      subject: props.subject,
      lines: props.lines,
      range,
      targets: settings.targets(),
      selection: settings.selection(),
      visible: own ? wholeRange(range, props.lines.lever.base) : undefined,
    };
  });
  const study = createStudy(() => wanted());
  const planName = (plan: number | undefined): string => props.store.model().plans[plan ?? -1]?.name ?? '';
  const matter = createMemo((): BreakevenContext => ({
    subject: {
      result: props.result,
      target: settings.target(),
      plan: planName(props.plan),
      against: props.against === undefined ? undefined : planName(props.against),
    },
    moved: { cell: props.input, today: props.lines.lever.base, range: props.lines.lever.range },
    view: settings.view(),
    lines: props.lines,
    targets: settings.targets(),
    found: study.found(),
  }));
  const words = createMemo(() => breakevenSentences(matter(), study.quick(), localFormat));
  return (
    <>
      <LiveText>
        <AnswerText main={words().main} more={words().more} />
      </LiveText>
      <ViewChoice settings={settings} />
      <BreakevenChart
        matter={matter()}
        quick={study.quick()}
        selection={settings.selection()}
        label={textOf(sentences(words().main, words().more))}
      />
      <BreakevenSettings {...props} settings={settings} visible={study.quick().visible} />
      <BreakevenTables matter={matter()} quick={study.quick()} selection={settings.selection()} exact={study.exact()} />
      <MethodLink choice={props.choice} entry="breakeven" />
      <TwoWay
        {...props}
        view={settings.view()}
        targets={settings.targets()}
        range={settings.range().own ? settings.range().range : undefined}
      />
    </>
  );
}

/** The choice between both plans and their difference; nothing where there is one plan. */
function ViewChoice(props: { settings: BreakevenSettings }): JSX.Element {
  return (
    <Show when={props.settings.view() !== 'alone'}>
      <RadioRow
        legend={breakevenTexts.draw}
        options={views}
        chosen={props.settings.view()}
        choose={(view) => props.settings.setView(view)}
      />
    </Show>
  );
}

interface SettingsProps extends BreakevenAnswerProps {
  readonly settings: BreakevenSettings;
  /** The part of the range that is drawn. */
  readonly visible: InputInterval;
}

/** Fields for the target and for the ends of the range. */
function BreakevenSettings(props: SettingsProps): JSX.Element {
  return (
    <div class="settings">
      <NumberField
        label={breakevenTexts.target}
        unit={printedUnit(props.result.unitText)}
        text={numberToText(props.settings.target())}
        onNumber={(text) => props.settings.setTarget(text)}
      />
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
