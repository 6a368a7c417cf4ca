import type { FigureKey } from '../../../trade/farm/answers';
import type { Choice } from '../screenProps';
import { farmFigureSetting, farmTimedSetting } from './settings/setUp';

/** Where a figure of the set-up comes from that was timed; blank where another text stands in its field by now. */
export function farmSourceOf(choice: Pick<Choice, 'get'>, key: FigureKey): string {
  const [typed, source = ''] = choice.get(farmTimedSetting(key)).split('\n');
  return typed === choice.get(farmFigureSetting(key)) ? source : '';
}

/** Answers a question of the set-up with a figure that was timed. */
export function setTimedFigure(choice: Pick<Choice, 'set'>, key: FigureKey, typed: string, source: string): void {
  choice.set(farmFigureSetting(key), typed);
  choice.set(farmTimedSetting(key), `${typed}\n${source}`);
}
