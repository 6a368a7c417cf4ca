import { createEffect, createMemo, type Accessor } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Looked } from '../finding/looked';
import type { Live } from '../live';
import type { Choice } from '../screen';
import { createRiskClient, type RiskClient } from './client';
import type { Ask, Found } from './reply';
import { createSettings, type Settings } from './settings';

/** Whose draws are asked for. */
export interface DrawsOf {
  readonly live: Live;
  readonly choice: Choice;
  readonly result: Cell;
  readonly looked: Looked;
}

/** Draws of a result that keep up with the model. */
export interface Draws {
  readonly settings: Settings;
  readonly client: RiskClient;
  /** What is known; what answers another question than the one asked is not. */
  readonly found: Accessor<Found | undefined>;
}

function sameSubject(a: Ask, b: Ask): boolean {
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
export function createDraws(of: DrawsOf, wake: Accessor<boolean>): Draws {
  const settings = createSettings(
    () => of.choice,
    () => `${of.result.name}${of.looked.less === undefined ? '' : ' difference'}`,
  );
  const wanted = createMemo((): Ask => ({
    sheet: of.live.model().sheet,
    subject: { result: of.result.id, plan: of.looked.plan, against: of.looked.less },
    beside: of.looked.beside,
    draws: settings.draws(),
    seed: settings.seed(),
    target: settings.target(),
  }));
  const client = createRiskClient();
  let asked: Ask | undefined;
  createEffect(() => {
    const newest = wanted();
    if (!wake() || newest === asked) return;
    asked = newest;
    client.ask(newest);
  });
  // What was found before an edit stays until the next picture is there.
  const found = createMemo(() => {
    const { found: known, of: question } = client.shown();
    const fits = question !== undefined && sameSubject(question, wanted());
    const sameCells = question?.sheet.rows.length === wanted().sheet.rows.length;
    return fits && sameCells ? known : undefined;
  });
  return { settings, client, found };
}
