/** A small crop in round numbers that are worked out by hand: one spacing, or a crowded week before it. */
export const crop = [
  'name,label,unit,formula,low,high,group,role,crop,plan: One spacing,plan: Two spacings',
  ',What is crowding worth? A made-up bed,,,,,,,,,',
  'boards,Boards on the bed,board,90,,,Bed,,boards,,',
  'every,Between sowings,day,7,,,Bed,,interval,,',
  'crowded_days,Days crowded,day,,,,Bed,,stage 1 time,0,7',
  'crowded_holes,Holes crowded,plant/board,72,,,Bed,,stage 1 density,,',
  'wide_days,Days wide,day,,,,Bed,,stage 2 time,21,14',
  'wide_holes,Holes wide,plant/board,18,,,Bed,,stage 2 density,,',
  'move_time,Move a plant,s/plant,10,6,16,Hands,,,,',
  'wash_time,Wash a board,s/board,72,,,Hands,,,,',
  'price,Price of a head,EUR/plant,0.5,,,Money,,,,',
  'worth,Worth of a full bed,EUR,boards * wide_holes * price,,,Money,headline,,,',
  '',
].join('\n');
