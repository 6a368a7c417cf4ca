// @vitest-environment jsdom
import { createSignal } from 'solid-js';
import { render } from 'solid-js/web';
import { expect, test } from 'vitest';
import { HeadedTable } from '../../../../src/ui/kit/tables/HeadedTable';

test('a headed table is a region that takes the focus, with one head a column', () => {
  const host = document.createElement('div');
  const [unit, setUnit] = createSignal('plants');
  render(
    () => (
      <HeadedTable label="Stages" caption="By stage" heads={['', unit(), { words: 'best' }]}>
        <tr>
          <th scope="row">nursery</th>
          <td>12</td>
          <td class="words">yes</td>
        </tr>
      </HeadedTable>
    ),
    host,
  );
  const table = (head: string): string =>
    '<div class="table-room" role="region" tabindex="0" aria-label="Stages"><table><caption>By stage</caption>' +
    `<thead><tr><td></td><th scope="col">${head}</th><th scope="col" class="words">best</th></tr></thead>` +
    '<tbody><tr><th scope="row">nursery</th><td>12</td><td class="words">yes</td></tr></tbody></table></div>';
  expect(host.innerHTML).toBe(table('plants'));
  setUnit('trays');
  expect(host.innerHTML).toBe(table('trays'));
});

test('a table without a caption has none', () => {
  const host = document.createElement('div');
  render(() => <HeadedTable label="Stages" heads={['plants']} children={undefined} />, host);
  expect(host.querySelector('caption')).toBeNull();
});
