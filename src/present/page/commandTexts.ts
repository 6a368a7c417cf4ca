/** What the bar at the top offers. */
export const commandTexts = {
  menu: 'Menu',
  open: 'Open a file',
  models: 'Models',
  aboutModels: 'Each answers a question on an invented farm.',
  link: 'Copy a link',
  startOver: 'Start over',
  startOverReally: 'Put the model’s own numbers back?',
  startOverYes: 'Yes, start over',
  undo: { word: 'Undo', keys: 'Ctrl+Z' },
  redo: { word: 'Redo', keys: 'Ctrl+Shift+Z' },
  scheme: 'Light or dark',
  schemes: { system: 'As the system', light: 'Light', dark: 'Dark' },
} as const;
