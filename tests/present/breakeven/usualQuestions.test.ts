import { describe, expect, it } from 'vitest';
import { usualQuestions } from '../../../src/present/breakeven/usualQuestions';
import { modelOf, planOf } from '../../model/table';
import { shippedModels } from '../../model/shippedModels';

function sentences(text: string, moves: (name: string) => boolean = () => true): string[] {
  const model = modelOf(text);
  return usualQuestions(model, planOf(model), ({ name }) => Number(moves(name))).map(
    (question) => `${question.text} ${question.input.name}`,
  );
}

const plants = 'p [plant]: 1\nq [plug]: 1';

describe('the usual questions', () => {
  it('are asked of what each is about', () => {
    expect(
      sentences(`
      ${plants}
      setting [s/plant]: 4 | label: Set a plug
      moving [s/plant]: 12 | label: Move a plant
      wage [EUR/h]: 15
      price [EUR/plant]: 0.8 | group: Selling
      plug_price [EUR/plug]: 0.05
    `),
    ).toEqual([
      'How slow may transplanting be? moving',
      'How dear may an hour be? wage',
      'How low may the price fall? price',
      'What may a plug cost? plug_price',
    ]);
  });
  it('are asked in the words and units of another place', () => {
    expect(
      sentences(
        'n [head]: 1\nt [min/head]: 0.2 | label: Transplanting\npay [USD/h]: 20 | label: Hourly pay\ngate [USD/head]: 1 | label: Price at the gate',
      ),
    ).toEqual(['How slow may transplanting be? t', 'How dear may an hour be? pay', 'How low may the price fall? gate']);
  });
  it('are asked of a model in Spanish', () => {
    expect(
      sentences(`
        ${plants}
        a [s/plant]: 4 | label: Colocar un cubo
        b [s/plant]: 12 | label: Trasplantar a una plancha final
        c [EUR/h]: 15 | label: Salario
        d [EUR/h]: 2 | label: Valor de una hora ociosa
        e [EUR/plant]: 0.1 | label: Envasado: precio
        f [EUR/plant]: 0.8 | label: Precio de venta
        g [EUR/plug]: 0.05 | label: Cubo de un solo uso: precio
        h [EUR/plug]: 0.03 | label: Semilla de un cubo
      `),
    ).toEqual([
      'How slow may transplanting be? b',
      'How dear may an hour be? c',
      'How low may the price fall? f',
      'What may a plug cost? g',
    ]);
  });
  it('are not asked where there is no such input', () => expect(sentences('a: 1\nprice [EUR/kg]: 2')).toEqual([]));
  it('are not asked of what is calculated', () => {
    expect(sentences('base [EUR/h]: 10\nwage [EUR/h]: base * 2')).toEqual([]);
  });
  it('are not asked of what only has the unit', () => {
    expect(
      sentences(
        `${plants}\npacking [EUR/plant]: 0.1 | label: Packing price | group: Selling\nseed [EUR/plug]: 0.03 | label: Seed for one plug\nidle [EUR/h]: 0 | label: What an idle hour is worth`,
      ),
    ).toEqual([]);
  });
  it('prefer the entry that moves the result', () => {
    const text = `${plants}\nfirst_plug [EUR/plug]: 0.05 | label: One-use plug: price\nsecond_plug [EUR/plug]: 0.3 | label: Reusable plug: price`;
    expect(sentences(text, (name) => name === 'second_plug')).toEqual(['What may a plug cost? second_plug']);
    expect(sentences(text, () => false)).toEqual(['What may a plug cost? first_plug']);
  });
});

it('the shipped model of the hire answers all four', () => {
  const model = shippedModels.find(([file]) => file === 'transplant-hire.csv')![1];
  const asked = usualQuestions(model, planOf(model, 'Nursery first'), () => 1);
  expect(asked.map(({ input }) => input.name)).toEqual(['transplant_time', 'wage', 'price', 'one_use_price']);
});
