import { createSignal, Show, type JSX } from 'solid-js';
import { entryText, shelfTexts } from '../../present/page/shelfTexts';
import { versionTexts } from '../../present/page/versionTexts';
import { commonTexts } from '../../present/text/commonTexts';
import { localFormat } from '../app/preferences/localFormat';
import { localMoment } from '../app/preferences/localMoment';
import type { ShelfWork } from '../app/shelf/record';

interface EntryProps {
  readonly work: ShelfWork;
  /** Where it is open. */
  readonly where: 'here' | 'elsewhere' | '';
  readonly onOpen: () => void;
  readonly onDuplicate: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
  /** Its versions, drawn while they are unfolded. */
  readonly versions: (title: string) => JSX.Element;
}

function titleOf({ title, isCopy }: ShelfWork): string {
  const name = title === '' ? shelfTexts.unnamed : title;
  return isCopy ? shelfTexts.copy(name) : name;
}

/** One model with its actions; a model that is open on another page cannot be deleted. */
export function ShelfEntry(props: EntryProps): JSX.Element {
  const [asking, setAsking] = createSignal(false);
  const [unfolded, setUnfolded] = createSignal(false);
  const title = (): string => titleOf(props.work);
  return (
    <li>
      <span class="shelf-title" dir="auto">
        {title()}
      </span>
      <span class="quiet">{entryText(props.work.name, localMoment(props.work.at), props.work.size, localFormat)}</span>
      <span class="shelf-deeds" role="group" aria-label={shelfTexts.each(title())}>
        <Show when={props.where !== 'here'} fallback={<span class="quiet">{shelfTexts.openHere}</span>}>
          <button type="button" class="word" onClick={() => props.onOpen()}>
            {shelfTexts.open}
          </button>
        </Show>
        <button type="button" class="word" onClick={() => props.onDuplicate()}>
          {shelfTexts.duplicate}
        </button>
        <button type="button" class="word" onClick={() => props.onSave()}>
          {commonTexts.saveFile}
        </button>
        <button type="button" class="word" aria-expanded={unfolded()} onClick={() => setUnfolded(!unfolded())}>
          {versionTexts.heading}
        </button>
        <Show when={props.where === 'elsewhere'}>
          <span class="quiet">{shelfTexts.openElsewhere}</span>
        </Show>
        <Show when={props.where !== 'elsewhere' && !asking()}>
          <button type="button" class="word" onClick={() => setAsking(true)}>
            {shelfTexts.delete}
          </button>
        </Show>
        <Show when={asking()}>
          <Asking
            question={(props.where === 'here' ? shelfTexts.deletedHere : shelfTexts.deleteReally)(title())}
            onYes={() => props.onDelete()}
            onNo={() => setAsking(false)}
          />
        </Show>
      </span>
      <Show when={unfolded()}>{props.versions(title())}</Show>
    </li>
  );
}

function Asking(props: { question: string; onYes: () => void; onNo: () => void }): JSX.Element {
  return (
    <span class="confirm">
      {props.question}{' '}
      <button
        type="button"
        class="word"
        ref={(button) => queueMicrotask(() => button.focus())}
        onClick={() => props.onYes()}>
        {shelfTexts.deleteYes}
      </button>
      <button type="button" class="word" onClick={() => props.onNo()}>
        {shelfTexts.deleteNo}
      </button>
    </span>
  );
}
