/** A small model with two plans for tests of the page, so that they do not hang on the shipped models' figures. */
export const nursery = [
  'name,label,unit,formula,low,high,step,group,role,note,source,plan: Straight,plan: Nursery first',
  ',Does a nursery pay? A made-up farm,,,,,,,,It is there for tests.,,,',
  'wage,Wage,EUR/h,14.5,13,17,0.05,Hands,,,a guess,,',
  'on_cost,Wage on-cost,%,20,15,25,0.5,Hands,,,,,',
  'move_time,Move a plant,s/plant,12,9,16,0.1,Hands,,Lift and set.,timed by hand,,',
  'boards_bought,Nursery boards bought,board,,,,1,Hands,,,,0,130',
  ',Why a nursery?,,,,,,Plants,,Young plants stand closer.,,,',
  'heads,Heads a year,plant/year,heads_straight,,,,Plants,,,,,heads_nursery',
  'heads_straight,Heads without a nursery,plant/year,180000,,,1000,Plants,,,,,',
  'heads_nursery,Heads with a nursery,plant/year,230000,,,1000,Plants,,,,,',
  'price,Price,EUR/plant,0.78,0.7,0.9,0.01,Money,,,,,',
  'sales,Sales,EUR/year,heads * price,,,,Money,headline,,,,',
  'hands,Hands,EUR/year,boards_bought > 0 ? heads * move_time * wage * (1 + on_cost) : 0,,,,Money,,,,,',
  'margin,Margin,EUR/year,sales - hands,,,,Money,headline,,,,',
  'plant_cost,Cost of a plant,EUR/plant,hands / heads,,,,Money,,,,,',
  'boards_needed,Boards needed,board,100,,,1,Hands,,,,,',
  'boards_enough,The nursery needs more boards.,,boards_bought == 0 or boards_bought >= boards_needed,,,,Checks,check,,,,',
  '',
].join('\n');

/** Worked by hand: hands 230,000 × 12 s × 14.50 EUR/h × 1.2 ÷ 3,600 = 13,340 EUR a year, and 0.058 EUR a plant. */
export const margins = { straight: '140,400', nursery: '166,060', difference: '+25,660' };
