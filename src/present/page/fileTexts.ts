import { wording } from '../../language/wording';

/** Texts about opening, saving, linking and refusing files. */
export const fileTexts = {
  isOpen: (name: string) => wording`${name} is open.`,
  startedOver: wording`Started over with the model’s own numbers.`,
  /** @param left number of texts that were typed but could not be accepted, so that the file does not hold them */
  saved: (name: string, left: number) => saved(name, left),
  linkCopied: (left: number) => wording`A link is copied. ${linkHolds(left)}`,
  linkInAddress: (left: number) => wording`The link stands in this page’s address: copy it there. ${linkHolds(left)}`,
  noLink: (reason: string) => wording`No link was made: ${reason}`,
  /** Asks whether a file may replace `instead`, which has changes that are saved nowhere. */
  fileReplaces: (name: string, instead: string) =>
    wording`${name} takes the place of ${instead}, in which you have changed something: save that as a file first if you need it.`,
  modelReplaces: (question: string, instead: string) =>
    wording`“${question}” takes the place of ${instead}, in which you have changed something: save that as a file first if you need it.`,
  linkReplaces: (name: string, instead: string) =>
    wording`${name}, which the link holds, takes the place of ${instead}, in which you have changed something: save that as a file first if you need it.`,
  openIt: wording`Open it`,
  undoIt: wording`Undo it`,
  close: wording`Close`,
  reading: (name: string) => wording`Reading ${name}`,
  checking: (name: string) => wording`Checking ${name}`,
  /** Several files at once: the last is open, the others stand on the shelf. */
  severalOpen: (name: string, others: number) => severalOpen(name, others),
  someNotOpened: (count: number, of: number) => wording`${count} of ${of} files were not opened`,
  noneOpened: wording`None of the files was opened`,
  refusedOf: (name: string, reason: string) => `${name}: ${reason}`,
  notOpened: (name: string) => wording`${name} was not opened`,
  linkNotOpened: wording`The link was not opened`,
  othersUntouched: wording`The model that was open is untouched.`,
  unreadable: (reason: string) => wording`file cannot be read: ${reason}. Try once more.`,
  dropHere: wording`Drop files to open them`,
} as const;

function severalOpen(name: string, others: number): string {
  if (others === 0) return wording`${name} is open.`;
  return others === 1
    ? wording`${name} is open; one other is kept under Your models.`
    : wording`${name} is open; ${others} others are kept under Your models.`;
}

function saved(name: string, left: number): string {
  if (left === 0) return wording`Saved as ${name}.`;
  return left === 1
    ? wording`Saved as ${name}; one text that is not valid yet stays out of it.`
    : wording`Saved as ${name}; ${left} texts that are not valid yet stay out of it.`;
}

function linkHolds(left: number): string {
  if (left === 0) {
    return wording`It holds the whole model as it is now. Give it to those who may see your numbers.`;
  }
  return left === 1
    ? wording`It holds the whole model as it is now; one text that is not valid yet stays out of it. Give it to those who may see your numbers.`
    : wording`It holds the whole model as it is now; ${left} texts that are not valid yet stay out of it. Give it to those who may see your numbers.`;
}

/** How far the reading of a file is; once all is read, it is checked. */
export function progressText({ name, share }: { readonly name: string; readonly share: number }): string {
  return share < 1 ? fileTexts.reading(name) : fileTexts.checking(name);
}
