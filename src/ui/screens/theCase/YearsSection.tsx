import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import { Waiting } from '../../kit/sections/Waiting';
import { commonTexts } from '../../../present/text/commonTexts';
import { caseTexts } from '../../../present/theCase/texts';
import { createSight } from '../../kit/sections/sight';
import type { YearsProps } from './yearsProps';

const YearsPart = lazy(async () => ({ default: (await import('./years/YearsPart')).YearsPart }));

/**
 * What an outlay brings over the years. It loads when it comes into sight, or at once where an outlay was given, as it
 * then belongs on the case’s paper.
 */
export function YearsSection(props: YearsProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const seen = createMemo((before: boolean) => before || inSight() || props.settings.isGiven(), false);
  return (
    <section
      class="part case-years"
      classList={{ 'off-paper': !props.settings.isGiven() }}
      aria-labelledby="case-years"
      ref={section}>
      <h3 id="case-years">{caseTexts.overYears}</h3>
      <Show when={seen()}>
        <Suspense fallback={<Waiting>{commonTexts.oneMoment}</Waiting>}>
          <YearsPart {...props} />
        </Suspense>
      </Show>
    </section>
  );
}
