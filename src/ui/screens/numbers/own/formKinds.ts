/** A line of the budget, an entry, a price by quantity, or the currency and units of the whole model. */
export type FormKind = 'line' | 'entry' | 'steps' | 'whole';

/** A form that stands in place once it is asked for. */
export interface FormProps {
  /** The heading that a new entry stands under; undefined where none is meant. */
  readonly group: string | undefined;
  readonly close: () => void;
  readonly askFor: (form: FormKind) => void;
}
