import { createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { PlanSelection } from '../../../present/results/planSelection';
import type { ModelStore } from '../../app/store/modelStore';
import type { Choice } from '../../app/screenProps';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import { createFollowingJob, type JobClient, type JobQuestion } from '../../app/jobs/createJob';
import { createRiskSettings, type RiskSettings } from './settings';

/** The result and the plans for which draws are made. */
export interface DrawsOf {
  readonly store: ModelStore;
  readonly choice: Choice;
  readonly result: Cell;
  readonly selection: PlanSelection;
}

/** Draws of a result, made anew when the model changes. */
export interface DrawsState {
  readonly settings: RiskSettings;
  readonly client: JobClient<'draws'>;
  /** The latest results for this question; those of another result, plan or target are left out. */
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
 * Draws of a result, with the settings that are kept among the choices.
 * @param wake whether the results are in sight; no draws are made while they are not
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
  // After an edit the earlier results stay until new ones arrive.
  const found = createMemo(() => {
    const { found: known, of: question } = client.state();
    const fits = question !== undefined && sameSubject(question, wanted());
    const sameCells = question?.sheet.rows.length === wanted().sheet.rows.length;
    return fits && sameCells ? known : undefined;
  });
  return { settings, client, found };
}
