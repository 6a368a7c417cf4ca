import { createResource, createSignal, Show, type JSX } from 'solid-js';
import { packShared } from '../../files/share';
import type { SharedFile } from '../../files/sharedFile';
import { liveTexts } from '../../present/live/liveTexts';
import { linkStart } from '../app/files/modelLink';
import { downloadBlob } from '../app/files/saving';

interface SaveModelProps {
  /** The model's file as it is now. */
  readonly file: () => SharedFile;
  readonly isChanged: () => boolean;
  /** Where Raftmargin was when it made the page; blank where that is not known. */
  readonly address: string;
}

/** Takes the model out of the page: as a file, and to Raftmargin where it is known where that is. */
export function SaveModel(props: SaveModelProps): JSX.Element {
  const [said, setSaid] = createSignal('');
  const save = (): void => {
    const { name, bytes } = props.file();
    downloadBlob(name, new Blob([bytes], { type: 'text/csv' }));
    setSaid(liveTexts.modelSaved(name, props.isChanged()));
  };
  return (
    <div class="take-model">
      <button type="button" class="word" onClick={save}>
        {liveTexts.saveModel}
      </button>
      <Show when={props.address}>
        <OpenApp {...props} />
      </Show>
      <span class="quiet" role="status">
        {said()}
      </span>
    </div>
  );
}

/** A link to Raftmargin that holds the model as it is now; none for a model that is too long for a link. */
function OpenApp(props: SaveModelProps): JSX.Element {
  const [packed] = createResource(
    () => props.file(),
    async (file) => {
      const found = await packShared(file);
      return typeof found === 'string' ? found : '';
    },
  );
  return (
    <Show when={packed()}>
      {(model) => (
        <a class="link" href={`${props.address}${linkStart}${model()}`} rel="noreferrer">
          {liveTexts.openApp}
        </a>
      )}
    </Show>
  );
}
