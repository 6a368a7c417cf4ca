import type { Cell } from '../../../model/cell';
import type { ResultLines, Subject } from '../../../present/results/resultLines';
import type { ScreenProps } from '../../app/screenProps';
import type { BreakevenSettings } from './settings';

/** What an answer about one result and one input is made from. */
export interface BreakevenAnswerProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly lines: ResultLines;
  readonly subject: Subject;
  readonly settings: BreakevenSettings;
}
