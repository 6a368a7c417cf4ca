import { Show, type JSX } from 'solid-js';
import { FilePicker } from '../../kit/fields/FilePicker';
import { download } from '../../app/files/saving';
import type { Choice } from '../../app/screenProps';
import { trialsName, usualName, type KeptTrials } from './keptTrials';

interface TrialsProps {
  readonly choice: Choice;
  readonly kept: KeptTrials;
}

const invented = 'transplant-trials.csv';

/** Opens, loads and saves trials. */
export function TrialsButtons(props: TrialsProps): JSX.Element {
  const loadInvented = async (): Promise<void> => {
    const { default: text } = await import('../../../../models/trials/transplant-trials.csv?raw');
    props.kept.replace(text, invented, 'The invented trials of Tern Sluice are open.');
  };
  return (
    <div class="timing-buttons">
      <FilePicker label="Open trials (CSV)" onFile={(file) => void props.kept.open(file)} />
      <button type="button" class="word" onClick={() => void loadInvented()}>
        Load invented trials
      </button>
      <Show when={props.kept.any()}>
        <button type="button" class="word" onClick={() => download(trialsName(props.choice), props.kept.text())}>
          Save the trials (CSV)
        </button>
        <button
          type="button"
          class="word"
          onClick={() => props.kept.replace('', usualName, 'All batches were taken out.')}>
          Take out all batches
        </button>
      </Show>
    </div>
  );
}

/** What to do while there are no trials. */
export function NoTrials(props: TrialsProps): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">How long does a plant take, and how sure is that?</p>
      <p>
        Time a few batches of a step, a board or two each, and count their plants: with the watch here, by hand, or from
        a file. A file has the columns step, plants and seconds, one row a batch; worker, rating, date, lost and note if
        you like.
      </p>
      <TrialsButtons {...props} />
    </div>
  );
}
