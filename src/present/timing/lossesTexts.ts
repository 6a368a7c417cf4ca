/** Fixed texts of plants lost and culled. */
export const lossesTexts = {
  heading: 'Lost and culled',
  none: 'Count the plants lost or culled in a batch in its field “lost”, 0 where there were none: then their share stands here.',
  entryFor: (step: string) => `Entry for what ${step} loses`,
  noInput: 'No input of this plan is a share lost or kept, in per cent.',
  caution: 'Plants of one batch live and die together: with few batches the true interval is wider.',
  method: 'How sure the lost share is',
} as const;
