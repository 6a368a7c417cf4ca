/**
 * Four ways to buy a plug for 100,000 plants a year, in round numbers: at 18 USD an hour a plant costs 0.0500 with
 * foam, 0.0450 with rockwool, 0.0475 with a holder and 0.0560 with peat, price and hands together.
 */
export const media = [
  'name,label,unit,formula,low,high,group,role,budget,plan: Foam,plan: Rockwool,plan: Holder,plan: Peat',
  ',What may a plug cost? Made-up media,,,,,,,,,,,',
  'plants,Plants a year,plant/year,100000,80000,120000,Year,,,,,,',
  'wage,Wage,USD/h,18,16,22,Year,,,,,,',
  'plug,Price of a plug,USD/plant,,,,Plugs,,,0.036,0.03,0.02,0.045',
  'time,Set a plug,s/plant,,,,Plugs,,,foam_time,rockwool_time,holder_time,peat_time',
  'foam_time,Set foam,s/plant,2.8,2.3,3.5,Plugs,,,,,,',
  'rockwool_time,Set rockwool,s/plant,3,2.5,4,Plugs,,,,,,',
  'holder_time,Set and wash a holder,s/plant,5.5,4,7.5,Plugs,,,,,,',
  'peat_time,Set peat,s/plant,2.2,1.8,3,Plugs,,,,,,',
  'plugs_year,Plugs,USD/year,plants * plug,,,Money,,cost,,,,',
  'hands_year,Hands,USD/year,plants * time * wage,,,Money,,cost,,,,',
  'price,Price of a head,USD/plant,0.4,0.35,0.5,Money,,,,,,',
  'sales,Sales,USD/year,plants * price,,,Money,,return,,,,',
  'cost_plant,Cost of a plant,USD/plant,(plugs_year + hands_year) / plants,,,Money,headline,,,,,',
  'margin,Margin,USD/year,sales - plugs_year - hands_year,,,Money,headline,,,,,',
  '',
].join('\n');
