import { createSignal, createUniqueId, type JSX } from 'solid-js';
import { liveTexts } from '../../../present/live/liveTexts';
import { usePage } from '../../app/pageContext';
import type { ScreenProps } from '../../app/screenProps';

interface SaveLiveProps extends Pick<ScreenProps, 'plan'> {
  /** The plan that is given up. */
  readonly from: number;
}

/** Saves the case, with the model inside, as one file that works by itself. What does so loads once it is pressed. */
export function SaveLive(props: SaveLiveProps): JSX.Element {
  const { store, choice } = usePage();
  const [said, setSaid] = createSignal('');
  const hint = createUniqueId();
  const save = async (plan: number, from: number): Promise<void> => {
    setSaid(liveTexts.making);
    const { saveLive } = await import('./liveCaseFile');
    setSaid(await saveLive({ store, choice, plan, from }));
  };
  return (
    <div class="save-live off-paper">
      <button type="button" class="word" aria-describedby={hint} onClick={() => void save(props.plan, props.from)}>
        {liveTexts.save}
      </button>
      <p class="quiet" role="status">
        {said()}
      </p>
      <p class="quiet" id={hint}>
        {liveTexts.saveHint}
      </p>
    </div>
  );
}
