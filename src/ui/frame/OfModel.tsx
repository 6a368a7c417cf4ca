import { Show, type JSX } from 'solid-js';
import { usePage } from '../app/pageContext';
import { Title } from '../kit/sections/Title';
import type { ScreenQuestion } from '../../present/page/questions';
import { Numbers } from '../screens/numbers/Numbers';
import { Headlines } from './Headlines';
import { HiddenMoneyBar } from './HiddenMoneyBar';
import type { HasPart } from './pageParts';
import { QuestionPane } from './QuestionPane';
import { Questions } from './Questions';

interface HalvesProps {
  /** Whether both halves fit side by side. */
  readonly wide: boolean;
  readonly question: ScreenQuestion;
  readonly side: ScreenQuestion;
  readonly among: readonly ScreenQuestion[];
  readonly onChoose: (question: ScreenQuestion) => void;
}

/** What the page says of the model: title, headlines, numbers and the question beside them. */
export function OfModel(props: HalvesProps & { has: HasPart }): JSX.Element {
  const { lesson } = usePage();
  return (
    <>
      <Show when={props.has('title')}>
        <Title />
      </Show>
      <Show when={props.has('what hides') && !lesson.isHiding()}>
        <HiddenMoneyBar isShown={props.has('hidden money')} />
      </Show>
      <Show when={props.has('headlines')}>
        <Headlines />
      </Show>
      <Show when={props.has('halves')}>
        <Halves {...props} />
      </Show>
    </>
  );
}

/** The numbers and the question beside them, or one of the two. */
function Halves(props: HalvesProps): JSX.Element {
  const { stickyHeight } = usePage();
  const beside = (): readonly ScreenQuestion[] => props.among.filter((key) => key !== 'numbers');
  return (
    <div class="halves">
      <div class="numbers-half" classList={{ off: !props.wide && props.question !== 'numbers' }}>
        <Numbers />
      </div>
      <Show when={props.wide || props.question !== 'numbers'}>
        <div class="side-half" style={{ '--covered': `${stickyHeight.height()}px` }}>
          <Show when={props.wide}>
            <Questions chosen={props.side} among={beside()} onChoose={props.onChoose} />
          </Show>
          <QuestionPane question={props.wide ? props.side : props.question} />
        </div>
      </Show>
    </div>
  );
}
