import { wording } from '../../language/wording';

/** Texts about the second copies of the models. */
export const copyTexts = {
  putBack: (count: number) =>
    count === 1
      ? wording`This browser had lost its storage. Your model is back from its second copy: look whether its last change is there. Undo begins anew.`
      : wording`This browser had lost its storage. Your ${count} models are back from their second copies: look whether the last changes are there. Undo begins anew.`,
} as const;
