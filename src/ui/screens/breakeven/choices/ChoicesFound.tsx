import type { JSX } from 'solid-js';
import { breakevenTexts } from '../../../../present/breakeven/texts';
import type { DataTable } from '../../../../present/table/dataTable';
import type { Phrase } from '../../../../present/text/phrase';
import { AnswerText } from '../../../kit/sections/AnswerText';
import { LiveText } from '../../../kit/sections/LiveText';
import { HeadedTable } from '../../../kit/tables/HeadedTable';

interface ChoicesFoundProps {
  readonly words: { readonly main: Phrase; readonly more: Phrase };
  readonly table: DataTable;
}

/** What was found with the choices of an input, in words and as a table. */
export function ChoicesFound(props: ChoicesFoundProps): JSX.Element {
  return (
    <>
      <LiveText>
        <AnswerText main={props.words.main} more={props.words.more} />
      </LiveText>
      <HeadedTable label={breakevenTexts.choices} table={props.table} />
    </>
  );
}
