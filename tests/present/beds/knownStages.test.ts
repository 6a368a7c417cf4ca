import { beforeAll, describe, expect, it } from 'vitest';
import { languageOf } from '../../../src/language/catalogue';
import { speak } from '../../../src/language/language';
import { cropParts } from '../../../src/model/cropParts';
import { modelOf } from '../../model/table';

const context = 'beside the word for its boards';
/** Where the word for boards comes first, and the name agrees with it or is a complement that never changes. */
const spanish = languageOf('es', {
  endings: [
    ['a$', 'as'],
    ['$', 's'],
  ],
  models: {},
  texts: {
    'board ¦ unit': 'plancha',
    [`nursery ¦ ${context}`]: 'de vivero',
    [`finishing ¦ ${context}`]: 'de la etapa final',
    [`wide ¦ ${context}`]: 'de la etapa ancha',
    'nursery ¦ a stage by itself': 'vivero',
    'wide ¦ a stage by itself': 'ancha',
    'nursery ¦ one board of a stage, as in a label': 'de vivero',
    'nursery ¦ boards of a stage, as in a label': 'de vivero',
    'wide ¦ one board of a stage, as in a label': 'ancha',
    'wide ¦ boards of a stage, as in a label': 'anchas',
    '{0} {1} ¦ names of stages beside the word for their boards': '{1} {0}',
    '{0} and {1}': '{0} y {1}',
  },
});

describe('in another language', () => {
  // Texts that are made once, as their file is loaded, are made in the language that is spoken then.
  beforeAll(() => speak(spanish));

  const called = async (labels: readonly string[]): Promise<string[]> => {
    const { namesOf } = await import('../../../src/present/beds/names');
    const { boardsOf, stageName } = await import('../../../src/present/beds/stageNames');
    const rows = labels.map((label, i) => `time${i + 1} [day]: ${i} | crop: stage ${i + 1} time | label: ${label}`);
    const names = namesOf(cropParts(modelOf(rows.join('\n')).cells), labels.length);
    return labels.flatMap((_label, i) => {
      const { one, many } = boardsOf(names, i);
      return [stageName(names, i), one, many];
    });
  };

  it('the trade’s names are complements that never change', async () =>
    expect(await called(['Time on nursery boards', 'Weeks on wide boards'])).toEqual([
      ...['vivero', 'plancha de vivero', 'planchas de vivero'],
      ...['ancha', 'plancha de la etapa ancha', 'planchas de la etapa ancha'],
    ]));

  it('names of labels in that language stay as they are there, and agree with one board', async () =>
    expect(await called(['Tiempo en planchas de vivero', 'Semanas en las planchas anchas'])).toEqual([
      ...['vivero', 'plancha de vivero', 'planchas de vivero'],
      ...['ancha', 'plancha ancha', 'planchas anchas'],
    ]));

  it('a name that the trade does not have stands behind the word for boards, too', async () =>
    expect(await called(['Tiempo en planchas del fondo', 'Tiempo en planchas de sol'])).toEqual([
      ...['del fondo', 'plancha del fondo', 'planchas del fondo'],
      ...['de sol', 'plancha de sol', 'planchas de sol'],
    ]));

  it('boards of several stages are named together', async () => {
    const { boardsIn, namesOf } = await import('../../../src/present/beds/names');
    const { textOf } = await import('../../../src/present/text/phrase');
    expect(textOf(boardsIn(namesOf(new Map(), 2), [1, 2]))).toBe('planchas de vivero y de la etapa final');
  });
});
