import { createSignal, For, Show, type JSX } from 'solid-js';
import type { SaveState } from '../app/storage/autosave';
import { FilePicker } from '../kit/fields/FilePicker';
import { schemes, type Scheme } from '../app/preferences/scheme';
import { shippedModels, type ShippedModel } from '../app/files/shippedModels';
import { usePage } from '../app/pageContext';
import { Dropdown } from '../kit/sections/Dropdown';
import { FaultList } from './FaultList';

interface TopBarProps {
  readonly kept: SaveState;
  readonly scheme: Scheme;
  readonly onScheme: (scheme: Scheme) => void;
  readonly onFile: (file: File) => void;
  readonly onShipped: (model: ShippedModel) => void;
  readonly onSave: () => void;
  readonly onLink: () => void;
  readonly onStartOver: () => void;
}

/** What can be done with the model as a whole, in words. */
export function TopBar(props: TopBarProps): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <header class="top-bar">
      <p class="wordmark">Raftmargin</p>
      <Steps />
      <FaultList />
      <button
        type="button"
        class="word menu-word"
        aria-expanded={open()}
        aria-controls="commands"
        onClick={() => setOpen(!open())}>
        Menu
      </button>
      <div class="commands" id="commands" classList={{ open: open() }}>
        <FileCommands {...props} />
        <SchemeChoice scheme={props.scheme} onScheme={props.onScheme} />
        <KeptNote kept={props.kept} />
      </div>
    </header>
  );
}

function FileCommands(props: TopBarProps): JSX.Element {
  return (
    <div class="file-commands">
      <FilePicker label="Open a file" onFile={props.onFile} />
      <Dropdown class="models" summary="Models">
        <p class="quiet">Each answers a question on an invented farm.</p>
        <For each={shippedModels}>
          {(model) => (
            <button type="button" class="model" onClick={() => props.onShipped(model)}>
              <span class="question">{model.question}</span>
              <span class="quiet">{model.about}</span>
            </button>
          )}
        </For>
      </Dropdown>
      <button type="button" class="word" onClick={() => props.onSave()}>
        Save a file
      </button>
      <button type="button" class="word" onClick={() => props.onLink()}>
        Copy a link
      </button>
      <StartOver onStartOver={props.onStartOver} />
    </div>
  );
}

function StartOver(props: { onStartOver: () => void }): JSX.Element {
  const [asking, setAsking] = createSignal(false);
  let confirm: HTMLButtonElement | undefined;
  let start: HTMLButtonElement | undefined;
  const ask = (): void => {
    setAsking(true);
    confirm?.focus();
  };
  const answer = (yes: boolean): void => {
    setAsking(false);
    start?.focus();
    if (yes) props.onStartOver();
  };
  const word = (
    <button
      type="button"
      class="word"
      ref={(button) => {
        start = button;
      }}
      onClick={ask}>
      Start over
    </button>
  );
  return (
    <Show when={asking()} fallback={word}>
      <span
        class="confirm"
        role="group"
        aria-label="Start over"
        onKeyDown={(event) => {
          if (event.key === 'Escape') answer(false);
        }}>
        Put the model’s own numbers back?{' '}
        <button
          type="button"
          class="word"
          ref={(button) => {
            confirm = button;
          }}
          onClick={() => answer(true)}>
          Yes, start over
        </button>
        <button type="button" class="word" onClick={() => answer(false)}>
          Keep mine
        </button>
      </span>
    </Show>
  );
}

function Steps(): JSX.Element {
  const { store } = usePage();
  return (
    <div class="steps">
      <Step word="Undo" keys="Ctrl+Z" canGo={store.canUndo()} onGo={() => store.undo()} />
      <Step word="Redo" keys="Ctrl+Shift+Z" canGo={store.canRedo()} onGo={() => store.redo()} />
    </div>
  );
}

/** Keeps the focus when there is no further step: a button that is switched off would let it fall. */
function Step(props: { word: string; keys: string; canGo: boolean; onGo: () => void }): JSX.Element {
  return (
    <button
      type="button"
      class="word"
      aria-disabled={!props.canGo}
      title={props.keys}
      onClick={() => {
        if (props.canGo) props.onGo();
      }}>
      {props.word}
    </button>
  );
}

const schemeWords: Record<Scheme, string> = { system: 'As the system', light: 'Light', dark: 'Dark' };

function SchemeChoice(props: { scheme: Scheme; onScheme: (scheme: Scheme) => void }): JSX.Element {
  return (
    <fieldset class="scheme">
      <legend class="heard">Light or dark</legend>
      <For each={schemes}>
        {(scheme) => (
          <label>
            <input
              type="radio"
              name="scheme"
              class="heard"
              checked={props.scheme === scheme}
              onChange={() => props.onScheme(scheme)}
            />
            <span class="word">{schemeWords[scheme]}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

/** When the work was kept. Its place is held before the first time, so that the page does not move then. */
function KeptNote(props: { kept: SaveState }): JSX.Element {
  const text = (): string => {
    if (props.kept.state === 'failed') {
      return `Not kept on this machine: ${props.kept.reason}. Save a file before you leave.`;
    }
    const at = props.kept.state === 'kept' ? props.kept.at : new Date();
    const time = at.toLocaleTimeString(navigator.language, { hour: '2-digit', minute: '2-digit' });
    return `Kept on this machine at ${time}`;
  };
  return (
    <p class="kept" data-state={props.kept.state}>
      {text()}
    </p>
  );
}
