// @vitest-environment jsdom
import { createSignal } from 'solid-js';
import { render } from 'solid-js/web';
import { expect, test, vi } from 'vitest';
import { figure, words, type DataTable } from '../../../../src/present/table/dataTable';
import { HeadedTable } from '../../../../src/ui/kit/tables/HeadedTable';

function tableOf(head: string): DataTable {
  return {
    caption: 'By stage',
    columns: [
      { name: '' },
      { name: head, unit: 'plant' },
      { name: 'code', aside: true },
      { name: 'best', words: true },
    ],
    rows: [[words('nursery', 'today'), figure('12', 12), words('n'), words('yes')]],
    foot: [[words('all'), figure('12', 12), words(''), words('')]],
  };
}

test('a headed table is a region that takes the focus, with what the screen shows of a table, and can be taken out', () => {
  const host = document.createElement('div');
  const [head, setHead] = createSignal('plants');
  render(() => <HeadedTable label="Stages" table={tableOf(head())} />, host);
  const html = (shown: string): string =>
    '<div class="table-room" role="region" tabindex="0" aria-label="Stages"><table><caption>By stage</caption>' +
    `<thead><tr><td></td><th scope="col">${shown}</th><th scope="col" class="words">best</th></tr></thead>` +
    '<tbody><tr><th scope="row"><bdi>nursery</bdi> <bdi class="unit">today</bdi></th>' +
    '<td><bdi>12</bdi></td><td class="words"><bdi>yes</bdi></td></tr></tbody>' +
    '<tfoot><tr><th scope="row"><bdi>all</bdi></th><td><bdi>12</bdi></td><td class="words"><bdi></bdi></td></tr>' +
    '</tfoot></table></div>' +
    '<details class="take-out"><summary>Copy or save<span class="heard">: By stage</span></summary></details>';
  expect(host.innerHTML).toBe(html('plants'));
  setHead('trays');
  expect(host.innerHTML).toBe(html('trays'));
});

test('a table whose caption stands elsewhere shows none', () => {
  const host = document.createElement('div');
  render(() => <HeadedTable label="Stages" table={tableOf('plants')} captioned={false} />, host);
  expect(host.querySelector('caption')).toBeNull();
});

test('the heads of its rows are links where they lead somewhere', () => {
  const host = document.createElement('div');
  document.body.append(host);
  const goTo = vi.fn();
  render(() => <HeadedTable label="Stages" table={tableOf('plants')} goTo={goTo} />, host);
  host.querySelector<HTMLButtonElement>('tbody th button')!.click();
  expect(goTo).toHaveBeenCalledWith(0);
  expect(host.querySelector('tfoot button')).toBeNull();
});
