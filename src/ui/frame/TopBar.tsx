import { createEffect, createSignal, For, Show, type JSX } from 'solid-js';
import { commandTexts } from '../../present/page/commandTexts';
import { frameTexts } from '../../present/page/frameTexts';
import { saveStateText, type SaveState } from '../../present/page/saveState';
import { shippedModelTexts } from '../../present/page/shippedModelTexts';
import { FilePicker } from '../kit/fields/FilePicker';
import { schemes, type Scheme } from '../app/preferences/shownScheme';
import { shippedModels, type ShippedModel } from '../app/files/shippedModels';
import { usePage } from '../app/pageContext';
import { pageLocale } from '../app/language/pageLanguage';
import { Dropdown } from '../kit/sections/Dropdown';
import { FaultList } from './FaultList';
import { LanguageChoice } from './LanguageChoice';
import { commonTexts } from '../../present/text/commonTexts';

interface TopBarProps {
  readonly kept: SaveState;
  /** The models that are kept on this machine. */
  readonly shelf: JSX.Element;
  readonly isShelfOpen: boolean;
  readonly scheme: Scheme;
  readonly onScheme: (scheme: Scheme) => void;
  readonly onSetUp: () => void;
  readonly onFiles: (files: readonly File[]) => void;
  readonly onShipped: (model: ShippedModel) => void;
  readonly onSave: () => void;
  readonly onLink: () => void;
  readonly onStartOver: () => void;
}

/** The actions on the model as a whole. */
export function TopBar(props: TopBarProps): JSX.Element {
  const [open, setOpen] = createSignal(false);
  // The browser's Back may open the shelf.
  createEffect(() => {
    if (props.isShelfOpen) setOpen(true);
  });
  return (
    <header class="top-bar">
      <p class="wordmark">{frameTexts.program}</p>
      <Steps />
      <FaultList />
      <button
        type="button"
        class="word menu-word"
        aria-expanded={open()}
        aria-controls="commands"
        onClick={() => setOpen(!open())}>
        {commandTexts.menu}
      </button>
      <div class="commands" id="commands" classList={{ open: open() }}>
        <FileCommands {...props} />
        <SchemeChoice scheme={props.scheme} onScheme={props.onScheme} />
        <LanguageChoice />
        <KeptNote kept={props.kept} />
      </div>
    </header>
  );
}

function FileCommands(props: TopBarProps): JSX.Element {
  return (
    <div class="file-commands">
      <button type="button" class="word" onClick={() => props.onSetUp()}>
        {commandTexts.setUp}
      </button>
      <FilePicker label={commandTexts.open} several onFiles={props.onFiles} />
      <Dropdown class="models" summary={commandTexts.models}>
        <p class="quiet">{commandTexts.aboutModels}</p>
        <For each={shippedModels}>
          {(model) => (
            <button type="button" class="model" onClick={() => props.onShipped(model)}>
              <span class="question">{shippedModelTexts[model.key].question}</span>
              <span class="quiet">{shippedModelTexts[model.key].about}</span>
            </button>
          )}
        </For>
      </Dropdown>
      {props.shelf}
      <button type="button" class="word" onClick={() => props.onSave()}>
        {commonTexts.saveFile}
      </button>
      <button type="button" class="word" onClick={() => props.onLink()}>
        {commandTexts.link}
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
      {commandTexts.startOver}
    </button>
  );
  return (
    <Show when={asking()} fallback={word}>
      <span
        class="confirm"
        role="group"
        aria-label={commandTexts.startOver}
        onKeyDown={(event) => {
          if (event.key === 'Escape') answer(false);
        }}>
        {commandTexts.startOverReally}{' '}
        <button
          type="button"
          class="word"
          ref={(button) => {
            confirm = button;
          }}
          onClick={() => answer(true)}>
          {commandTexts.startOverYes}
        </button>
        <button type="button" class="word" onClick={() => answer(false)}>
          {commonTexts.keepMine}
        </button>
      </span>
    </Show>
  );
}

function Steps(): JSX.Element {
  const { store } = usePage();
  return (
    <div class="steps">
      <Step {...commandTexts.undo} canGo={store.canUndo()} onGo={() => store.undo()} />
      <Step {...commandTexts.redo} canGo={store.canRedo()} onGo={() => store.redo()} />
    </div>
  );
}

/**
 * An undo or redo button. Where there is no step it is marked as disabled but can still be focused, as a disabled
 * button would lose the focus.
 */
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

function SchemeChoice(props: { scheme: Scheme; onScheme: (scheme: Scheme) => void }): JSX.Element {
  return (
    <fieldset class="scheme">
      <legend class="heard">{commandTexts.scheme}</legend>
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
            <span class="word">{commandTexts.schemes[scheme]}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

/** The save state. */
function KeptNote(props: { kept: SaveState }): JSX.Element {
  return (
    <p class="kept" data-state={props.kept.state}>
      <span class="kept-text">{saveStateText(props.kept, pageLocale())}</span>
    </p>
  );
}
