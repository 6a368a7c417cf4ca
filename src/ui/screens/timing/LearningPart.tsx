import { keyText } from '../../../present/picture/keySigns';
import type { ChartInk } from '../../../present/picture/ink';
import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal, numberToText, type Decimal } from '../../../core/number';
import type { LearningCurve } from '../../../trade/learningCurve';
import { localFormat } from '../../app/preferences/localFormat';
import { learnedPlantsSetting, learnerSetting } from '../../app/preferences/settings/timing';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { openLines } from '../../kit/charts/lines';
import { ListChooser } from '../../kit/choosers/ListChooser';
import { AskedNumber } from '../../kit/fields/AskedNumber';
import { MethodLink } from '../../kit/method/MethodLink';
import { NumbersBehind } from '../../kit/sections/NumbersBehind';
import { Sentence } from '../../kit/sections/Sentence';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { textOf } from '../../../present/text/phrase';
import { offerOf, type TimeOffer } from '../../../present/timing/intoModel';
import {
  afterSentence,
  allWorkers,
  learnerName,
  learnedTime,
  learningFound,
  learningSentence,
  orderText,
  plantsDone,
  type LearningFound,
} from '../../../present/timing/learning';
import { learningTexts } from '../../../present/timing/learningTexts';
import { runPicture, runTable } from '../../../present/timing/runPicture';
import { typedPlants } from '../../../present/timing/typedPlants';
import { OneOffer } from './OfferLine';
import { targetOf, usedIn, type StepPartProps } from './stepPart';

/** The chosen step's batches in order, and whether the work gets quicker. */
export function LearningPart(props: StepPartProps): JSX.Element {
  const setting = createMemo(() => learnerSetting(props.found.step));
  const learned = createMemo(() => learningFound(props.found, props.timing, props.choice.get(setting())));
  const sentence = createMemo(() => learningSentence(learned(), props.timing, localFormat));
  const shown = createMemo(() => (learned().curve?.isLearning === true ? learned().curve : undefined));
  return (
    <section class="timing-learning" aria-labelledby="timing-learning">
      <h3 id="timing-learning">{learningTexts.heading}</h3>
      <Show when={learned().workers.length > 0}>
        <div class="timing-buttons">
          <ListChooser
            class="way-chooser"
            label={<span class="chooser-label">{learningTexts.whose}</span>}
            options={[
              ...learned().workers.map((name) => ({ value: name, label: name })),
              { value: allWorkers, label: learningTexts.together },
            ]}
            chosen={learned().worker || allWorkers}
            choose={(name) => props.choice.set(setting(), name)}
          />
        </div>
      </Show>
      <p class="said-part" role="status">
        <Sentence phrase={sentence()} />
      </p>
      <Show when={learned().run.length > 1}>
        <RunChart learned={learned()} label={textOf(sentence())} />
        <p class="quiet">
          <Sentence phrase={orderText(learned())} />
        </p>
      </Show>
      <Show when={shown()}>{(curve) => <After {...props} learned={learned()} curve={curve()} />}</Show>
      <MethodLink choice={props.choice} entry="learning curve">
        {learningTexts.method}
      </MethodLink>
    </section>
  );
}

function RunChart(props: { learned: LearningFound; label: string }): JSX.Element {
  const draw = (ink: ChartInk, width: number): LinesPicture => runPicture(props.learned, ink, width, localFormat);
  const key = (): string[] => [
    learningTexts.ring,
    ...(props.learned.run.some(({ batch }) => batch.leftOut !== '') ? [learningTexts.cross] : []),
    learningTexts.dashed,
    ...(props.learned.curve?.isLearning === true ? [learningTexts.curve] : []),
  ];
  return (
    <figure class="timing-dots">
      <figcaption class="key">
        <span class="key-what">{learningTexts.caption}</span>
        <For each={key()}>{(text) => <span>{text}</span>}</For>
      </figcaption>
      <ChartCanvas
        title={learningTexts.caption}
        label={props.label}
        open={openLines}
        draw={draw}
        parts={() => ({ key: () => key().map(keyText) })}
      />
      <NumbersBehind summary={learningTexts.numbers}>
        <HeadedTable label={learningTexts.numbers} table={runTable(props.learned, localFormat)} captioned={false} />
      </NumbersBehind>
    </figure>
  );
}

/** The seconds after a number of plants that a person asks for, and into the model with them. */
function After(props: StepPartProps & { learned: LearningFound; curve: LearningCurve }): JSX.Element {
  const setting = createMemo(() => learnedPlantsSetting(props.found.step));
  const plants = (): Decimal => props.choice.get(setting()) ?? decimal(plantsDone(props.learned));
  const offer = createMemo((): TimeOffer | undefined => {
    const target = targetOf(props);
    const time = learnedTime(props.curve, plants());
    return target && offerOf(props.store.model(), props.plan, target.cell, time, usedIn(props), props.timing);
  });
  return (
    <>
      <AskedNumber
        label={learningTexts.askedPlants}
        keyboard="numeric"
        text={numberToText(plants())}
        read={(typed) => typedPlants(typed, localFormat)}
        onNumber={(text) => props.choice.set(setting(), decimal(text))}
      />
      <p role="status">
        <Sentence phrase={afterSentence(props.learned, props.curve, plants(), localFormat)} />
      </p>
      <Show when={offer()}>
        {(found) => <OneOffer {...props} name={learningTexts.offered(learnerName(props.learned))} offer={found()} />}
      </Show>
    </>
  );
}
