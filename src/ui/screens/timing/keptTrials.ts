import { batch, createMemo, createSignal, type Accessor } from 'solid-js';
import { decodeText } from '../../../files/decodeText';
import { mergeTrials } from '../../../files/mergeTrials';
import { readTrialsText } from '../../../files/readTrials';
import { writeTrials } from '../../../files/writeTrials';
import type { Sheet } from '../../../model/sheet';
import type { Trials } from '../../../model/trials';
import { trialsNameSetting, trialsSetting } from '../../app/preferences/settings/timing';
import type { Choice } from '../../app/screenProps';
import { trialsTexts } from '../../../present/timing/trialsTexts';

/** The trials as they are kept beside the model: the file's text, and the trials read from it. */
export interface KeptTrials {
  /** Blank where there never were trials. */
  readonly text: Accessor<string>;
  readonly trials: Accessor<Trials>;
  /** Whether there is any batch, valid or not. */
  readonly any: Accessor<boolean>;
  /** Why the last action failed; blank where it did not. */
  readonly refusal: Accessor<string>;
  /** Replaces the sheet. */
  put(sheet: Sheet): void;
  /** Replaces the sheet in a way that can be taken back until the next change. */
  putWithWayBack(sheet: Sheet, sentence: string): void;
  /** Replaces the file's text, or sets `refusal`; can be taken back until the next change. */
  replace(text: string, name: string, sentence: string): void;
  /** Reads a file that someone picked. */
  open(file: File): Promise<void>;
  /** Adds the batches of another file that are not there yet. */
  addFrom(file: File): Promise<void>;
  /** What the last change did, where it can be taken back; else blank. */
  readonly wayBack: Accessor<string>;
  takeBack(): void;
}

/** The longest text of trials that is kept on this machine, in characters. */
export const textLimit = 200_000;
export const usualName = 'trials.csv';

function tooLarge(size: number): string {
  return trialsTexts.tooLarge(Math.ceil(size / 1000), textLimit / 1000);
}

interface WayBack {
  readonly sentence: string;
  readonly before: { readonly text: string; readonly name: string };
  /** The text after the change; if the trials have another text by now, the change can no longer be taken back. */
  readonly after: string;
}

/** Trials with those of another file added, and what is said of it; or why the file is none. */
function withOthers(
  { sheet }: Trials,
  text: string,
  name: string,
): { readonly sheet: Sheet; readonly sentence: string } | { readonly fault: string } {
  const other = readTrialsText(text);
  if (other.refused) return { fault: other.faults[0]?.message ?? '' };
  const { added, there, ...merged } = mergeTrials(sheet, other.sheet);
  return { ...merged, sentence: trialsTexts.merged(name, added, there) };
}

/** The text of a file that someone picked; undefined, and said why, where it is too large or no text. */
async function textIn(file: File, refuse: (why: string) => void): Promise<string | undefined> {
  if (file.size > 2 * textLimit) {
    refuse(tooLarge(file.size));
    return undefined;
  }
  const decoded = decodeText(new Uint8Array(await file.arrayBuffer()));
  if ('text' in decoded) return decoded.text;
  refuse(trialsTexts.refused(file.name, decoded.problem.message));
  return undefined;
}

/** Reads a text, and the same one only once: an opened file is asked whether it is one, and then what it holds. */
function createReading(): (text: string) => Trials {
  let last: { readonly text: string; readonly trials: Trials } | undefined;
  return (text) => {
    if (last?.text !== text) last = { text, trials: readTrialsText(text) };
    return last.trials;
  };
}

export function createTrials(choice: Accessor<Choice>): KeptTrials {
  const text = (): string => choice().get(trialsSetting);
  const readOnce = createReading();
  const trials = createMemo(() => readOnce(text()));
  const [refusal, setRefusal] = createSignal('');
  const [last, setLast] = createSignal<WayBack>();
  const standing = (): WayBack | undefined => (last()?.after === text() ? last() : undefined);

  const fits = (after: string): boolean => {
    setRefusal(after.length > textLimit ? tooLarge(after.length) : '');
    return after.length <= textLimit;
  };
  // At once, as thousands of batches take a while to work out.
  const setAll = (after: string, name: string, way: WayBack | undefined): void =>
    batch(() => {
      choice().set(trialsSetting, after);
      choice().set(trialsNameSetting, name);
      setLast(way);
    });
  const withWayBack = (after: string, name: string, sentence: string): void => {
    const before = { text: text(), name: choice().get(trialsNameSetting) };
    if (fits(after)) setAll(after, name, { sentence, before, after });
  };
  const replace = (after: string, name: string, sentence: string): void => {
    const read = readOnce(after);
    if (read.refused && after !== '') setRefusal(trialsTexts.refused(name, read.faults[0]?.message ?? ''));
    else withWayBack(after, name, sentence);
  };
  const open = async (file: File): Promise<void> => {
    const found = await textIn(file, setRefusal);
    if (found !== undefined) replace(found, file.name, trialsTexts.isOpen(file.name));
  };
  const addFrom = async (file: File): Promise<void> => {
    const found = await textIn(file, setRefusal);
    if (found === undefined) return;
    const made = withOthers(trials(), found, file.name);
    if ('fault' in made) setRefusal(trialsTexts.refused(file.name, made.fault));
    else withWayBack(writeTrials(text(), made.sheet), choice().get(trialsNameSetting), made.sentence);
  };
  return {
    text,
    trials,
    any: () => trials().sheet.rows.length > 0,
    refusal,
    put: (sheet) => {
      const after = writeTrials(text(), sheet);
      if (fits(after)) choice().set(trialsSetting, after);
    },
    putWithWayBack: (sheet, sentence) =>
      withWayBack(writeTrials(text(), sheet), choice().get(trialsNameSetting), sentence),
    replace,
    open,
    addFrom,
    wayBack: () => standing()?.sentence ?? '',
    takeBack: () => {
      const change = standing();
      if (change !== undefined) setAll(change.before.text, change.before.name, undefined);
    },
  };
}

/** The name under which the trials are saved: that of their file. */
export function trialsName(choice: Choice): string {
  return choice.get(trialsNameSetting) || usualName;
}
