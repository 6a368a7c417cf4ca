import type { JSX } from 'solid-js';
import { numberToText } from '../../../core/number';
import { breakevenTexts } from '../../../present/breakeven/texts';
import { printedUnit } from '../../../present/text/printedUnit';
import { NumberField } from '../../kit/fields/NumberField';
import type { BreakevenAnswerProps } from './answerProps';

/** The field for the number that the result is to come to. */
export function TargetField(props: Pick<BreakevenAnswerProps, 'result' | 'settings'>): JSX.Element {
  return (
    <NumberField
      label={breakevenTexts.target}
      unit={printedUnit(props.result.unitText)}
      text={numberToText(props.settings.target())}
      onNumber={(text) => props.settings.setTarget(text)}
    />
  );
}
