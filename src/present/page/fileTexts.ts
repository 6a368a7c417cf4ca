/** Texts about opening, saving, linking and refusing files. */
export const fileTexts = {
  isOpen: (name: string) => `${name} is open.`,
  startedOver: 'Started over with the model’s own numbers.',
  /** @param left number of texts that were typed but could not be accepted, so that the file does not hold them */
  saved: (name: string, left: number) => `Saved as ${name}${leftOut(left)}`,
  linkCopied: (left: number) => `A link is copied. ${linkHolds(left)}`,
  linkInAddress: (left: number) => `The link stands in this page’s address: copy it there. ${linkHolds(left)}`,
  noLink: (reason: string) => `No link was made: ${reason}`,
  /** Asks whether a file may replace `instead`, which has changes that are saved nowhere. */
  fileReplaces: (name: string, instead: string) => takesThePlace(name, instead),
  modelReplaces: (question: string, instead: string) => takesThePlace(`“${question}”`, instead),
  linkReplaces: (name: string, instead: string) => takesThePlace(`${name}, which the link holds,`, instead),
  openIt: 'Open it',
  undoIt: 'Undo it',
  close: 'Close',
  reading: (name: string) => `Reading ${name}`,
  checking: (name: string) => `Checking ${name}`,
  /** Several files at once: the last is open, the others stand on the shelf. */
  severalOpen: (name: string, others: number) => severalOpen(name, others),
  someNotOpened: (count: number, of: number) => `${count} of ${of} files were not opened`,
  noneOpened: 'None of the files was opened',
  refusedOf: (name: string, reason: string) => `${name}: ${reason}`,
  notOpened: (name: string) => `${name} was not opened`,
  linkNotOpened: 'The link was not opened',
  othersUntouched: 'The model that was open is untouched.',
  unreadable: (reason: string) => `file cannot be read: ${reason}. Try once more.`,
  dropHere: 'Drop files to open them',
} as const;

function severalOpen(name: string, others: number): string {
  if (others === 0) return `${name} is open.`;
  const rest = others === 1 ? 'one other is' : `${others} others are`;
  return `${name} is open; ${rest} kept under Your models.`;
}

function leftOut(texts: number): string {
  if (texts === 0) return '.';
  return texts === 1
    ? '; one text that is not valid yet stays out of it.'
    : `; ${texts} texts that are not valid yet stay out of it.`;
}

function linkHolds(left: number): string {
  return `It holds the whole model as it is now${leftOut(left)} Give it to those who may see your numbers.`;
}

function takesThePlace(what: string, instead: string): string {
  const changed = `${what} takes the place of ${instead}, in which you have changed something`;
  return `${changed}: save that as a file first if you need it.`;
}

/** How far the reading of a file is; once all is read, it is checked. */
export function progressText({ name, share }: { readonly name: string; readonly share: number }): string {
  return share < 1 ? fileTexts.reading(name) : fileTexts.checking(name);
}
