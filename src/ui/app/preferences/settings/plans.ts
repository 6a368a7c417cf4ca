import { formOf, formText, type PlanForm } from '../../../../present/plans/form';
import type { Setting } from './setting';

/** The name of a plan that somebody is typing; undefined: none. */
export const planFormSetting: Setting<PlanForm | undefined> = { key: 'plans form', read: formOf, write: formText };
