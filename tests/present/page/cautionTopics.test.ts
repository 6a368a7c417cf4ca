import { expect, it } from 'vitest';
import { cautionTopics } from '../../../src/present/page/cautionTopics';
import { modelOf } from '../../model/table';

it.each([
  ['an hour has a price', 'wage [EUR/h]: 15', ['wages', 'money']],
  ['something has a price', 'seconds [s]: 3\nplug [plug]: 1\nprice [GBP/plug]: 0.04', ['money']],
  ['nothing has', 'boards [board]: 90\nflow [board/h]: 3', []],
])('care is asked for where %s', (_claim, text, topics) => {
  expect(cautionTopics(modelOf(text).cells)).toEqual(topics);
});
