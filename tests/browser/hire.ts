/** A small model whose answer is near: does a hire pay? Two plans, in round numbers that are worked out by hand. */
export const hire = [
  'name,label,unit,formula,low,high,shape,group,role,plan: Today,plan: With a hire',
  ',Does a hire pay? A made-up farm,,,,,,,,,',
  'move_time,Move a plant,s/plant,12,9,19,,Hands,,,',
  'wage,Wage,EUR/h,15,12,20,normal,Hands,,,',
  'hired,Plants moved by the hire,plant/year,,,,,Hands,,0,120000',
  'heads,Heads a year,plant/year,,,,,Selling,,100000,120000',
  'price,Price of a head,EUR/plant,0.5,0.4,0.6,,Selling,,,',
  'hands,Hands,EUR/year,hired * move_time * wage,,,,Money,,,',
  'margin,Margin,EUR/year,heads * price - hands,,,,Money,headline,,',
  '',
].join('\n');

/** A model with one plan whose result has a pole where a gap is 2. */
export const pole = [
  'name,label,unit,formula,low,high,group,role',
  ',How wide a gap? A made-up case,,,,,,',
  'gap,Gap,,5,3,8,Beds,',
  'turns,Turns,,1 / (gap - 2),,,Beds,headline',
  '',
].join('\n');
