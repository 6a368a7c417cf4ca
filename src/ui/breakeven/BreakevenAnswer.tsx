import { createMemo, Show, type JSX } from 'solid-js';
import { numberToText } from '../../core/number';
import type { Cell } from '../../model/cell';
import { Choices } from '../finding/Choices';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { Said } from '../finding/Said';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import { printedUnit } from '../printedUnit';
import type { ScreenProps } from '../screen';
import { TwoWay } from '../twoWay/TwoWay';
import { BreakevenChart } from './BreakevenChart';
import { BreakevenTables } from './BreakevenTables';
import { drawnWhole } from './drawn';
import type { Lines, Subject } from './lines';
import { NumberField } from './NumberField';
import { RangeFields } from './RangeFields';
import { remarkOn } from './range';
import type { Stretch } from './sample';
import { createSettings, type Settings } from './settings';
import { createStudy, type StudyOf } from './shownStudy';
import { told, type Matter } from './told';

interface BreakevenAnswerProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: Lines;
  readonly subject: Subject;
}

const views = [
  { value: 'both', label: 'both plans' },
  { value: 'difference', label: 'difference B − A' },
] as const;

/** The answer about one result and one input: in words, as a chart and as tables. */
export function BreakevenAnswer(props: BreakevenAnswerProps): JSX.Element {
  const settings = createSettings(props);
  const wanted = createMemo((): StudyOf => {
    const { range, own } = settings.range();
    return {
      sheet: props.live.model().sheet,
      subject: props.subject,
      lines: props.lines,
      range,
      targets: settings.targets(),
      looked: settings.looked(),
      drawn: own ? drawnWhole(range, props.lines.lever.base) : undefined,
    };
  });
  const study = createStudy(() => wanted());
  const planName = (plan: number | undefined): string => props.live.model().plans[plan ?? -1]?.name ?? '';
  const matter = createMemo((): Matter => ({
    asked: {
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
  const words = createMemo(() => told(matter(), study.quick(), here));
  return (
    <>
      <Said>
        <FindingText main={words().main} more={words().more} />
      </Said>
      <Show when={settings.view() !== 'alone'}>
        <Choices legend="Draw" options={views} chosen={settings.view()} choose={(view) => settings.setView(view)} />
      </Show>
      <BreakevenChart
        matter={matter()}
        quick={study.quick()}
        looked={settings.looked()}
        label={textOf(sentences(words().main, words().more))}
      />
      <BreakevenSettings {...props} settings={settings} drawn={study.quick().drawn} />
      <BreakevenTables matter={matter()} quick={study.quick()} looked={settings.looked()} exact={study.exact()} />
      <HowWorked choice={props.choice} entry="breakeven" />
      <TwoWay
        {...props}
        view={settings.view()}
        targets={settings.targets()}
        range={settings.range().own ? settings.range().range : undefined}
      />
    </>
  );
}

interface SettingsProps extends BreakevenAnswerProps {
  readonly settings: Settings;
  /** The part that is drawn. */
  readonly drawn: Stretch;
}

/** The target, and the ends between which the input is drawn. */
function BreakevenSettings(props: SettingsProps): JSX.Element {
  return (
    <div class="settings">
      <NumberField
        label="target"
        unit={printedUnit(props.result.unitText)}
        text={numberToText(props.settings.target())}
        onNumber={(text) => props.settings.setTarget(text)}
      />
      <RangeFields
        lookedAt={props.settings.range()}
        unit={printedUnit(props.input.unitText)}
        drawn={props.drawn}
        remark={remarkOn(props.lines.lever, props.settings.range(), (value) => here.full(value))}
        onEnd={(end, text) => props.settings.setEnd(end, text)}
      />
    </div>
  );
}
