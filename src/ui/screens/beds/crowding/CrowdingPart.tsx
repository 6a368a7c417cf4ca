import { createMemo, Show, type JSX } from 'solid-js';
import { decimal, numberToText, type Decimal } from '../../../../core/number';
import type { Pattern } from '../../../../trade/canopy';
import { inBase, isRunning, type Stage } from '../../../../trade/schedule';
import { NumberField } from '../../../kit/fields/NumberField';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { crowdingSetting, plantPatternSetting, type CrowdingNumber } from '../../../app/preferences/settings/beds';
import { MethodLink } from '../../../kit/method/MethodLink';
import type { ScreenProps } from '../../../app/screenProps';
import type { PlanSchedule } from '../../../../present/beds/planSchedule';
import { counted } from '../../../../present/text/quantities';
import { crowdingOf, yieldOf } from '../../../../present/beds/crowding/crowding';
import { crowdingSentence, yieldSentence } from '../../../../present/beds/crowding/sentences';
import { crowdingTexts } from '../../../../present/beds/crowding/texts';
import '../../../kit/fields/fields.css';

interface CrowdingProps extends ScreenProps {
  readonly planSchedule: PlanSchedule;
}

const unknown = decimal(NaN);
/** A square metre in square centimetres and in square inches, for the units of the spreads. */
const squares = { cm: decimal(10_000), in: decimal(1).dividedBy('0.00064516') };
const patterns = [
  { value: 'square', label: crowdingTexts.square },
  { value: 'staggered', label: crowdingTexts.staggered },
] as const;

/** The numbers that someone enters here, kept among the choices; blank at first, as no source gives them. */
function createEntered(props: CrowdingProps) {
  const kept = (name: CrowdingNumber): Decimal | undefined => props.choice.get(crowdingSetting(name));
  const number = (name: CrowdingNumber): Decimal => kept(name) ?? unknown;
  const text = (number: Decimal | undefined): string => (number === undefined ? '' : numberToText(number));
  const field = (name: CrowdingNumber, label: string, unit: string): JSX.Element => (
    <NumberField
      label={label}
      unit={unit}
      text={text(kept(name))}
      onNumber={(text) => props.choice.set(crowdingSetting(name), decimal(text))}
    />
  );
  const pattern = (): Pattern => props.choice.get(plantPatternSetting);
  return { number, field, pattern, setPattern: (chosen: Pattern) => props.choice.set(plantPatternSetting, chosen) };
}

/** When leaves touch, and what closeness does to plants that are never moved; optional, with a person's own numbers. */
export function CrowdingPart(props: CrowdingProps): JSX.Element {
  const entered = createEntered(props);
  const cell = (): PlanSchedule['cells'][number] | undefined => props.planSchedule.parts.get('board area');
  const unit = (): 'cm' | 'in' => (/\b(?:ft|in|yd)\b/.test(cell()?.unitText ?? '') ? 'in' : 'cm');
  const area = (): Decimal => {
    const values = props.store.values()[props.plan];
    return values === undefined ? unknown : inBase(cell(), values, unknown).times(squares[unit()]);
  };
  const found = createMemo(() =>
    crowdingOf(props.planSchedule.schedule, area(), {
      first: entered.number('first'),
      last: entered.number('last'),
      rate: entered.number('rate'),
      loss: entered.number('loss'),
      pattern: entered.pattern(),
    }),
  );
  return (
    <Show when={cell()}>
      <section aria-labelledby="beds-crowding">
        <h3 id="beds-crowding">{crowdingTexts.heading}</h3>
        <p class="quiet">{crowdingTexts.explanation}</p>
        <RadioRow
          legend={crowdingTexts.pattern}
          options={patterns}
          chosen={entered.pattern()}
          choose={entered.setPattern}
        />
        <div class="settings">
          {entered.field('first', crowdingTexts.first, unit())}
          {entered.field('last', crowdingTexts.last, unit())}
          {entered.field('rate', crowdingTexts.rate, crowdingTexts.rateUnit)}
          {entered.field('loss', crowdingTexts.loss, '%')}
        </div>
        <Show when={found()} fallback={<p class="hint">{crowdingTexts.enterSpreads}</p>}>
          {(crowding) => (
            <p>
              <Sentence phrase={crowdingSentence(crowding(), props.planSchedule.names, unit(), localFormat)} />
            </p>
          )}
        </Show>
        <MethodLink choice={props.choice} entry="touching" />
        <NeverMoved {...props} />
      </section>
    </Show>
  );
}

/** The reciprocal yield law, for a crop that stays in one stage. */
function NeverMoved(props: CrowdingProps): JSX.Element {
  const entered = createEntered(props);
  const only = createMemo((): Stage | undefined => {
    const [stage, ...others] = props.planSchedule.schedule.stages.filter((each) => isRunning(each));
    return others.length === 0 ? stage : undefined;
  });
  const places = (): string => crowdingTexts.places(props.planSchedule.names);
  const found = createMemo(() => {
    const stage = only();
    const [densities, masses] = [
      ['density 1', 'density 2'],
      ['mass 1', 'mass 2'],
    ] as const;
    return (
      stage &&
      yieldOf(
        {
          densities: [entered.number(densities[0]), entered.number(densities[1])],
          masses: [entered.number(masses[0]), entered.number(masses[1])],
        },
        stage.density,
      )
    );
  });
  return (
    <Show when={only()}>
      {(stage) => (
        <>
          <h4>{crowdingTexts.neverMoved}</h4>
          <div class="settings">
            {entered.field('density 1', crowdingTexts.firstTrial, places())}
            {entered.field('mass 1', crowdingTexts.mass, crowdingTexts.massUnit(props.planSchedule.names))}
            {entered.field('density 2', crowdingTexts.secondTrial, places())}
            {entered.field('mass 2', crowdingTexts.mass, crowdingTexts.massUnit(props.planSchedule.names))}
          </div>
          <Show when={found()} fallback={<p class="hint">{crowdingTexts.enterTrials}</p>}>
            {(known) => (
              <p>
                <Sentence
                  phrase={yieldSentence(
                    known(),
                    counted(stage().density, props.planSchedule.names.plant, localFormat),
                    props.planSchedule.names,
                    localFormat,
                  )}
                />
              </p>
            )}
          </Show>
          <MethodLink choice={props.choice} entry="closer" />
        </>
      )}
    </Show>
  );
}
