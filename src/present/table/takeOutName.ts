import { wording } from '../../language/wording';

/** The words on the button that takes something out; they load with the page, all others when it is pressed. */
export const takeOutName = {
  open: wording`Copy or save`,
  /** For screen readers, after the word on the button. @param caption of the table or the chart */
  of: (caption: string) => `: ${caption}`,
} as const;
