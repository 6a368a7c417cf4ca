import { wording } from '../../language/wording';

/** What the bar at the top offers. */
export const commandTexts = {
  menu: wording`Menu`,
  setUp: wording`Set up my farm`,
  open: wording`Open a file`,
  models: wording`Models`,
  aboutModels: wording`Each answers a question on an invented farm.`,
  link: wording`Copy a link`,
  startOver: wording`Start over`,
  startOverReally: wording`Put the model’s own numbers back?`,
  startOverYes: wording`Yes, start over`,
  undo: { word: wording`Undo`, keys: wording`Ctrl+Z` },
  redo: { word: wording`Redo`, keys: wording`Ctrl+Shift+Z` },
  language: wording`Language`,
  languageNotKept: wording`The browser lets the page keep nothing, so the choice would be lost at once.`,
  scheme: wording`Light or dark`,
  schemes: { system: wording`As the system`, light: wording`Light`, dark: wording`Dark` },
} as const;
