import { Index, type JSX } from 'solid-js';
import {
  stepPriceTexts as texts,
  type StepFaults,
  type TypedSteps,
} from '../../../../present/numbers/own/stepPriceForm';
import { printedUnit } from '../../../../present/text/printedUnit';
import { WordField } from './WordField';

interface PriceStepsProps {
  readonly typed: TypedSteps;
  readonly faults: Partial<StepFaults>;
  /** Of the price, and of the quantity. */
  readonly unit: string;
  readonly quantityUnit: string;
  readonly change: (change: Partial<TypedSteps>) => void;
}

/** The price to begin with, and a line for each step: from which quantity, at which price. */
export function PriceSteps(props: PriceStepsProps): JSX.Element {
  let lines!: HTMLOListElement;
  const steps = (): TypedSteps['steps'] => props.typed.steps;
  const set = (at: number, change: Partial<TypedSteps['steps'][number]>): void =>
    props.change({ steps: steps().map((step, i) => (i === at ? { ...step, ...change } : step)) });
  const more = (): void => {
    props.change({ steps: [...steps(), { from: '', price: '' }] });
    lines.lastElementChild?.querySelector('input')?.focus();
  };
  const remove = (at: number): void => {
    props.change({ steps: steps().filter((_step, i) => i !== at) });
    lines.children[Math.max(0, at - 1)]?.querySelector('input')?.focus();
  };
  return (
    <fieldset class="price-steps">
      <legend class="heard">{texts.steps}</legend>
      <WordField
        label={texts.first(printedUnit(props.unit))}
        text={props.typed.first}
        fault={props.faults.first}
        class="short"
        decimal
        onText={(first) => props.change({ first })}
      />
      <ol ref={lines}>
        <Index each={steps()}>
          {(step, at) => (
            <StepLine
              {...props}
              step={step()}
              at={at}
              isOnly={steps().length === 1}
              set={(change) => set(at, change)}
              remove={() => remove(at)}
            />
          )}
        </Index>
      </ol>
      <p>
        <button type="button" class="word" onClick={more}>
          {texts.more}
        </button>
      </p>
      <p class="quiet">{texts.means}</p>
    </fieldset>
  );
}

interface StepLineProps extends Pick<PriceStepsProps, 'faults' | 'unit' | 'quantityUnit'> {
  readonly step: TypedSteps['steps'][number];
  /** From 0; the first is step 2, as the price to begin with is the first. */
  readonly at: number;
  readonly isOnly: boolean;
  readonly set: (change: Partial<TypedSteps['steps'][number]>) => void;
  readonly remove: () => void;
}

function StepLine(props: StepLineProps): JSX.Element {
  return (
    <li>
      <WordField
        label={texts.from(props.at + 2, printedUnit(props.quantityUnit))}
        text={props.step.from}
        fault={props.faults.steps?.[props.at]?.from}
        decimal
        onText={(from) => props.set({ from })}
      />
      <WordField
        label={texts.price(printedUnit(props.unit))}
        text={props.step.price}
        fault={props.faults.steps?.[props.at]?.price}
        decimal
        onText={(price) => props.set({ price })}
      />
      <button
        type="button"
        class="word"
        disabled={props.isOnly}
        aria-label={texts.removeStep(props.at + 2)}
        onClick={() => props.remove()}>
        {texts.remove}
      </button>
    </li>
  );
}
