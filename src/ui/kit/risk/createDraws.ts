import { createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { PlanSelection } from '../../../present/results/planSelection';
import type { ModelStore } from '../../app/store/modelStore';
import type { Choice } from '../../app/screenProps';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import { createFollowingJob, type JobClient, type JobQuestion } from '../../app/jobs/createJob';
import { createRiskSettings, type RiskSettings } from './settings';

/** Whose draws are asked for. */
export interface DrawsOf {
  readonly store: ModelStore;
  readonly choice: Choice;
  readonly result: Cell;
  readonly selection: PlanSelection;
}

/** Draws of a result that keep up with the model. */
export interface DrawsState {
  readonly settings: RiskSettings;
  readonly client: JobClient<'draws'>;
  /** What is known; what answers another question than the one asked is not. */
  readonly found: Accessor<DrawsFound | undefined>;
}

type Question = JobQuestion<'draws'>;

function sameSubject({ request: a }: Question, { request: b }: Question): boolean {
  return (
    a.subject.result === b.subject.result &&
    a.subject.plan === b.subject.plan &&
    a.subject.against === b.subject.against &&
    a.beside === b.beside &&
    a.target === b.target
  );
}

/**
 * Draws with the settings that are kept with the choice.
 * @param wake whether anyone looks: what nobody looks at is not drawn
 */
export function createDraws(of: DrawsOf, wake: Accessor<boolean>): DrawsState {
  const settings = createRiskSettings(
    () => of.choice,
    () => `${of.result.name}${of.selection.less === undefined ? '' : ' difference'}`,
  );
  const wanted = createMemo((): Question => ({
    sheet: of.store.model().sheet,
    request: {
      subject: { result: of.result.id, plan: of.selection.plan, against: of.selection.less },
      beside: of.selection.beside,
      draws: settings.draws(),
      seed: settings.seed(),
      target: settings.target(),
      drivers: true,
    },
  }));
  const client = createFollowingJob('draws', () => wanted(), wake);
  // What was found before an edit stays until the next picture is there.
  const found = createMemo(() => {
    const { found: known, of: question } = client.state();
    const fits = question !== undefined && sameSubject(question, wanted());
    const sameCells = question?.sheet.rows.length === wanted().sheet.rows.length;
    return fits && sameCells ? known : undefined;
  });
  return { settings, client, found };
}
