import { Show, type JSX } from 'solid-js';
import { FilePicker } from '../../kit/fields/FilePicker';
import { NoAnswer } from '../../kit/sections/NoAnswer';
import { inPageLanguage } from '../../app/files/shippedModels';
import { download } from '../../app/files/saving';
import type { Choice } from '../../app/screenProps';
import { trialsName, usualName, type KeptTrials } from './keptTrials';
import { trialsTexts } from '../../../present/timing/trialsTexts';

interface TrialsProps {
  readonly choice: Choice;
  readonly kept: KeptTrials;
}

const invented = 'transplant-trials.csv';

/** Buttons that open, load and save trials. */
export function TrialsButtons(props: TrialsProps): JSX.Element {
  const loadInvented = async (): Promise<void> => {
    const { default: text } = await import('../../../../models/trials/transplant-trials.csv?raw');
    props.kept.replace(await inPageLanguage(text), invented, trialsTexts.inventedAreOpen);
  };
  return (
    <div class="timing-buttons">
      <FilePicker label={trialsTexts.open} onFiles={([file]) => void (file && props.kept.open(file))} />
      <button type="button" class="word" onClick={() => void loadInvented()}>
        {trialsTexts.loadInvented}
      </button>
      <Show when={props.kept.any()}>
        <FilePicker label={trialsTexts.addOthers} onFiles={([file]) => void (file && props.kept.addFrom(file))} />
        <button type="button" class="word" onClick={() => download(trialsName(props.choice), props.kept.text())}>
          {trialsTexts.save}
        </button>
        <button type="button" class="word" onClick={() => props.kept.replace('', usualName, trialsTexts.allTakenOut)}>
          {trialsTexts.takeOutAll}
        </button>
      </Show>
    </div>
  );
}

/** What to do while there are no trials. */
export function NoTrials(props: TrialsProps): JSX.Element {
  return (
    <NoAnswer finding={trialsTexts.question} remedy={trialsTexts.howTo}>
      <TrialsButtons {...props} />
    </NoAnswer>
  );
}
