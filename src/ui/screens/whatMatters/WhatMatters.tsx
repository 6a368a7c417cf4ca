import { createMemo, lazy, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { Question } from '../../../model/response';
import { ResultChooser } from '../../kit/choosers/ResultChooser';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { ResultAnswer } from '../../kit/sections/ResultAnswer';
import { createChosenResult } from '../../app/store/chosenResult';
import { resultScope, type PlanSelection } from '../../../present/results/planSelection';
import { namesAmong } from '../../../present/text/entryNames';
import { LazySection } from '../../kit/sections/LazySection';
import { MethodLink } from '../../kit/method/MethodLink';
import type { ScreenProps } from '../../app/screenProps';
import { CostsInPlans } from './costs/CostsInPlans';
import { CostsSideBySide } from './costs/CostsSideBySide';
import type { TornadoSubject } from '../../../present/whatMatters/tornado/sentences';
import { createTornado, type ShownTornado } from './tornado/shownTornado';
import { TornadoView } from './tornado/TornadoView';
import { whatMattersTexts } from '../../../present/whatMatters/texts';
import { commonTexts } from '../../../present/text/commonTexts';
import '../../kit/sections/answers.css';
import './styles.css';

const DriversBeside = lazy(async () => ({ default: (await import('./DriversBeside')).DriversBeside }));
const Spider = lazy(async () => ({ default: (await import('./Spider')).Spider }));
const Switching = lazy(async () => ({ default: (await import('./Switching')).Switching }));

/** What matters: how far each uncertain entry by itself moves a result. */
export function WhatMatters(props: ScreenProps): JSX.Element {
  return (
    <QuestionScreen question="what matters">
      <ResultChooser {...props} label={whatMattersTexts.chooser}>
        {(result) => <Answer {...props} result={result()} />}
      </ResultChooser>
      <CostsSideBySide {...props} />
      <CostsInPlans {...props} />
    </QuestionScreen>
  );
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const { selection, error, question } = createChosenResult(props);
  const tornado = createTornado(() => question());
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const subject = createMemo((): TornadoSubject | undefined => {
    const base = question()?.base;
    return base && { result: props.result, of: resultScope(props.store.model(), selection()), base, nameOf: nameOf() };
  });
  return (
    <ResultAnswer {...props} error={error()} known={subject()}>
      {(known) => (
        <>
          <TornadoView
            tornado={tornado()}
            subject={known()}
            letter={selection().letter || undefined}
            goTo={props.goTo}
          />
          <MethodLink choice={props.choice} entry="tornado" />
          <BesideBars {...props} subject={known()} tornado={tornado()} selection={selection()} question={question()!} />
          <LazySection id="switching" class="switching" heading={whatMattersTexts.switching}>
            {(inSight) => (
              <Switching
                store={props.store}
                choice={props.choice}
                result={props.result}
                goTo={props.goTo}
                plans={[selection().plan, selection().less]}
                inSight={inSight}
              />
            )}
          </LazySection>
        </>
      )}
    </ResultAnswer>
  );
}

interface BesideBarsProps extends ScreenProps {
  readonly result: Cell;
  readonly subject: TornadoSubject;
  readonly tornado: ShownTornado;
  readonly selection: PlanSelection;
  readonly question: Question;
}

/** What the bars do not show: the effect of all entries at once, and the course between the ends of a range. */
function BesideBars(props: BesideBarsProps): JSX.Element {
  return (
    <Show when={props.tornado.share < 1 || props.tornado.bars.length > 0}>
      <LazySection id="drivers" heading={commonTexts.spreadDrivers}>
        {(inSight) => (
          <DriversBeside
            {...props}
            result={props.result}
            selection={props.selection}
            bars={props.tornado.bars}
            inSight={inSight}
          />
        )}
      </LazySection>
      <LazySection id="spider" heading={whatMattersTexts.spider}>
        {(inSight) => (
          <Spider
            question={props.question}
            subject={props.subject}
            goTo={props.goTo}
            inSight={inSight}
            bars={props.tornado.share === 1 ? props.tornado.bars : undefined}
            choice={props.choice}
          />
        )}
      </LazySection>
    </Show>
  );
}
