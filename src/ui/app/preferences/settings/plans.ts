import { formOf, formText, type PlanForm } from '../../../../present/plans/form';
import { names, type Setting } from './setting';

/** The name of a plan that somebody is typing; undefined: none. */
export const planFormSetting: Setting<PlanForm | undefined> = { key: 'plans form', read: formOf, write: formText };

/** Names of the budget lines that a person counts as rising with the plants, or as staying, against the rule. */
export function countedSetting(as: 'rising' | 'staying', title: string): Setting<readonly string[]> {
  return names(`budget lines ${as} ${title}`);
}
