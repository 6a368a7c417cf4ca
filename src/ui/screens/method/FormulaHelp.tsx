import { For, type JSX } from 'solid-js';
import { helpPage } from '../../../present/formulaHelp/helpPage';
import { localFormat } from '../../app/preferences/localFormat';

/** The help on formulas: functions, signs, units, and what is refused. */
export function FormulaHelpPage(): JSX.Element {
  return (
    <For each={helpPage(localFormat)}>
      {({ heading, intro, items }) => (
        <>
          <h4>{heading}</h4>
          <p>{intro}</p>
          <dl class="formula-help">
            <For each={items}>
              {({ term, lines }) => (
                <>
                  <dt>
                    <code>{term}</code>
                  </dt>
                  <For each={lines}>{(line) => <dd>{line}</dd>}</For>
                </>
              )}
            </For>
          </dl>
        </>
      )}
    </For>
  );
}
