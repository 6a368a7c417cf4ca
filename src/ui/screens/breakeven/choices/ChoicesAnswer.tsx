import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Lever } from '../../../../model/view';
import { choiceRows, type ChoiceRow } from '../../../../present/breakeven/choices/rows';
import { choiceSentences, leadingOf, type ChoicesContext } from '../../../../present/breakeven/choices/sentences';
import { choiceTable } from '../../../../present/breakeven/choices/table';
import { lineHead } from '../../../../present/breakeven/lineTexts';
import { breakevenTexts } from '../../../../present/breakeven/texts';
import { commonTexts } from '../../../../present/text/commonTexts';
import type { Curve } from '../../../../study/curve';
import { localFormat } from '../../../app/preferences/localFormat';
import { createProgressive } from '../../../kit/background/progressive';
import { MethodLink } from '../../../kit/method/MethodLink';
import { Waiting } from '../../../kit/sections/Waiting';
import type { BreakevenAnswerProps } from '../answerProps';
import { TargetField } from '../TargetField';
import { ViewChoice } from '../ViewChoice';
import { ChoicesFound } from './ChoicesFound';

/** Results with each choice of an input: exact, worked out between frames. */
export function createChoiceRows<Asked extends { lever: Lever; curves: readonly Pick<Curve, 'exact'>[] }>(
  asked: Accessor<Asked>,
): Accessor<{ readonly of: Asked; readonly rows: readonly ChoiceRow[] } | undefined> {
  const worked = createProgressive(
    () => asked(),
    () => true,
    ({ lever, curves }) => choiceRows(lever, curves),
  );
  return () => {
    const found = worked();
    return found && { of: found.of, rows: found.found };
  };
}

/** The answer about an input with named choices: which of them make one plan better, and the results with each. */
export function ChoicesAnswer(props: BreakevenAnswerProps): JSX.Element {
  const planName = (plan: number | undefined): string => props.store.model().plans[plan ?? -1]?.name ?? '';
  const asked = createMemo(() => {
    const lines = props.lines;
    const curves = lines.against === undefined ? [lines.plan] : [lines.plan, lines.against];
    return { lever: lines.lever, curves, lines, result: props.result };
  });
  const worked = createChoiceRows(() => asked());
  const matter = createMemo((): ChoicesContext | undefined => {
    const known = worked();
    if (known === undefined) return undefined;
    const { lines, lever, result } = known.of;
    return {
      subject: {
        result,
        target: props.settings.target(),
        plan: planName(props.plan),
        against: props.against === undefined ? undefined : planName(props.against),
      },
      moved: { cell: lever.cell, today: lever.base, range: lever.range },
      view: props.settings.view(),
      lines,
      targets: props.settings.targets(),
      rows: known.rows,
    };
  });
  return (
    <>
      <Show when={matter()} fallback={<Waiting class="quiet wait">{commonTexts.working}</Waiting>}>
        {(known) => <Found matter={known()} />}
      </Show>
      <ViewChoice settings={props.settings} legend={breakevenTexts.compare} />
      <div class="settings">
        <TargetField result={props.result} settings={props.settings} />
      </div>
      <MethodLink choice={props.choice} entry="breakeven" />
    </>
  );
}

function Found(props: { matter: ChoicesContext }): JSX.Element {
  const words = createMemo(() => choiceSentences(props.matter, localFormat));
  const table = createMemo(() => {
    const { rows, moved, subject } = props.matter;
    const plan = { name: lineHead(props.matter, 'plan'), of: leadingOf };
    const columns =
      subject.against === undefined
        ? [plan]
        : [
            { name: lineHead(props.matter, 'against'), of: ({ values }: ChoiceRow) => values[1]! },
            { ...plan, of: ({ values }: ChoiceRow) => values[0]! },
            { name: commonTexts.secondLessFirst, of: leadingOf, isDifference: true },
          ];
    return choiceTable(rows, moved.cell, subject.result, columns, localFormat);
  });
  return <ChoicesFound words={words()} table={table()} />;
}
