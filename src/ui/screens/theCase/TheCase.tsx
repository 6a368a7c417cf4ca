import { createMemo, Show, type JSX } from 'solid-js';
import type { ScreenProps } from '../../app/screenProps';
import { CaseMade } from './CaseMade';
import { caseOf, type CaseBudget } from '../../../present/theCase/caseOf';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { caseTexts } from '../../../present/theCase/texts';
import { NoCase } from './NoCase';
import '../../kit/sections/answers.css';
import '../../kit/sections/section.css';
import './styles.css';
import './words.css';
import './casePrint.css';

/** The case: the net change of going from one plan to the other, for the person who decides. */
export function TheCase(props: ScreenProps): JSX.Element {
  const found = createMemo(() => caseOf(props.store.model(), props.store.values(), props.plan, props.against));
  const made = createMemo((): CaseBudget | undefined => {
    const known = found();
    return known.kind === 'made' ? known : undefined;
  });
  const none = (): Parameters<typeof NoCase>[0]['found'] | undefined => {
    const known = found();
    return known.kind === 'made' ? undefined : known;
  };
  return (
    <QuestionScreen question="the case" print={caseTexts.print}>
      <Show when={made()}>{(known) => <CaseMade {...props} made={known()} from={props.against ?? 0} />}</Show>
      <Show when={none()}>{(known) => <NoCase found={known()} goTo={props.goTo} />}</Show>
    </QuestionScreen>
  );
}
