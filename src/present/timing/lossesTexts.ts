import { wording } from '../../language/wording';

/** Fixed texts of plants lost and culled. */
export const lossesTexts = {
  heading: wording`Lost and culled`,
  none: wording`Count the plants lost or culled in a batch in its field “lost”, 0 where there were none: then their share stands here.`,
  entryFor: (step: string) => wording`Entry for what ${step} loses`,
  noInput: wording`No input of this plan is a share lost or kept, in per cent.`,
  caution: wording`Plants of one batch live and die together: with few batches the true interval is wider.`,
  method: wording`How sure the lost share is`,
} as const;
