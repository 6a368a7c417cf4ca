/** 288 boards of 24 holes, or 128 in the nursery; a batch a week; 6 weeks today, 2 and 4 with a nursery; no losses. */
export const own: readonly (readonly [label: string, text: string])[] = [
  ['Name of the farm', 'Willow Reach'],
  ['Currency', 'USD'],
  ['Places for boards', '288'],
  ['On a finishing board', '24'],
  ['On a nursery board', '128'],
  ['Today, without a nursery', '6'],
  ['With one: in the nursery, up to the move', '2'],
  ['With one: from the move to harvest', '4'],
  ['From one sowing to the next', '7'],
  ['Without a nursery: from set-out to harvest', '0'],
  ['In the nursery and at the move', '0'],
  ['From the move to harvest', '0'],
];
