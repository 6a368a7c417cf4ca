import { createMemo, Show, type JSX } from 'solid-js';
import { doubled, doubledSentence, isUnsure } from '../../../../present/theCase/years/doubled';
import { yearsOdds, yearsOddsSentence, type OutlayTaken } from '../../../../present/theCase/years/odds';
import { outlayRange } from '../../../../present/theCase/years/outlayRange';
import { chosenEntries, outlayEntries, yearsAsked, type AskedOf } from '../../../../present/theCase/years/terms';
import { yearsTexts } from '../../../../present/theCase/years/texts';
import { yearsFinding, yearsRemarks, type ToldYears } from '../../../../present/theCase/years/sentences';
import { sentences, type Phrase } from '../../../../present/text/phrase';
import type { Problem } from '../../../../core/problem';
import { overYears, type OverYears } from '../../../../trade/years/overYears';
import { localFormat } from '../../../app/preferences/localFormat';
import { MethodLink } from '../../../kit/method/MethodLink';
import { createRiskSettings } from '../../../kit/risk/settings';
import { LiveText } from '../../../kit/sections/LiveText';
import { Sentence } from '../../../kit/sections/Sentence';
import type { YearsProps } from '../yearsProps';
import { YearsChart } from './YearsChart';
import { YearsFields } from './YearsFields';
import { YearsTable } from './YearsTable';
import './years.css';

/** Payback and worth of an outlay: what is asked, the finding, its odds, a picture and the years one by one. */
export function YearsPart(props: YearsProps): JSX.Element {
  const askedOf = createMemo((): AskedOf => ({ ...props.beside, made: props.made }));
  const entries = createMemo(() => outlayEntries(askedOf()));
  const chosen = createMemo(() => chosenEntries(entries(), props.settings.terms()));
  const asked = createMemo(() => yearsAsked(props.made, props.settings.terms(), chosen()));
  const answer = createMemo(() => {
    const known = asked();
    return known && overYears(known);
  });
  const found = createMemo((): OverYears | undefined => {
    const known = answer();
    return known === undefined || 'code' in known ? undefined : known;
  });
  const refusal = (): string => {
    const known = asked();
    if (known === undefined || found() !== undefined) return '';
    if (known.gain.isNaN()) return yearsTexts.unknownGain;
    return known.outlay.isNaN() ? yearsTexts.unknownOutlay : (answer() as Problem).message;
  };
  const twice = createMemo(() => {
    const double = found() && doubled(askedOf(), chosen());
    return double && doubledSentence(double, props.made, props.beside.nameOf, localFormat);
  });
  const range = createMemo(() => {
    const known = found();
    return known && outlayRange(props.settings.terms(), known.asked.outlay, localFormat);
  });
  const rangeFault = (): string => {
    const given = range();
    return given !== undefined && 'fault' in given ? given.fault : '';
  };
  const taken = createMemo((): OutlayTaken => {
    const given = range();
    if (given !== undefined && 'low' in given) return { kind: 'drawn', range: given };
    return { kind: isUnsure(props.beside.model, props.beside.plans, chosen()) ? 'hangs on ranges' : 'certain' };
  });
  return (
    <>
      <YearsFields {...props} entries={entries()} />
      <Show when={asked() === undefined}>
        <p class="quiet">{yearsTexts.invite}</p>
      </Show>
      <Show when={refusal()}>
        <p class="message fault">{refusal()}</p>
      </Show>
      <Show when={rangeFault()}>
        <p class="message fault">{rangeFault()}</p>
      </Show>
      <Show when={found()}>
        {(known) => <YearsAnswer {...props} found={known()} twice={twice()} taken={taken()} />}
      </Show>
      <MethodLink choice={props.choice} entry="over years" />
    </>
  );
}

interface AnswerProps extends YearsProps {
  readonly found: OverYears;
  /** What may be counted twice. */
  readonly twice: Phrase | undefined;
  readonly taken: OutlayTaken;
}

function YearsAnswer(props: AnswerProps): JSX.Element {
  const told = createMemo((): ToldYears => ({ found: props.found, made: props.made, format: localFormat }));
  const finding = createMemo(() => yearsFinding(told()));
  const settings = createRiskSettings(
    () => props.choice,
    () => 'the case',
  );
  const odds = createMemo((): Phrase | undefined => {
    const draws = props.studies?.odds();
    const unsure = props.taken.kind === 'drawn' ? { range: props.taken.range, seed: settings.seed() } : undefined;
    const known = draws && yearsOdds(draws, props.found, props.made, unsure);
    return known && yearsOddsSentence(known, told(), props.taken);
  });
  return (
    <>
      <LiveText>
        <p class="years-finding">
          <Sentence phrase={sentences(odds() ?? [], finding())} />
        </p>
      </LiveText>
      <Show when={props.twice}>
        {(said) => (
          <p class="message">
            <Sentence phrase={said()} />
          </p>
        )}
      </Show>
      <YearsChart found={props.found} made={props.made} finding={finding()} />
      <p>
        <Sentence phrase={yearsRemarks(told())} />
      </p>
      <YearsTable found={props.found} made={props.made} />
    </>
  );
}
