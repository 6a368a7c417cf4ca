import { describe, expect, it } from 'vitest';
import { liveCaseText, readLiveCase, type LiveCase } from '../../../src/files/live/liveCase';

const live: LiveCase = {
  file: { name: 'čaj 生菜.csv', bytes: new TextEncoder().encode('\ufeffname,formula\r\nx,</script><!-- 1\r\n') },
  day: '2031-03-09',
  plan: 'With <b>hands</b>',
  against: 'Without',
  choices: { 'setting case words Farm': 'Two lines\n& "more"' },
  address: 'https://farm.example/raft/',
};

function changed(change: (data: Record<string, unknown>) => void): string {
  const data = JSON.parse(liveCaseText(live)) as Record<string, unknown>;
  change(data);
  return JSON.stringify(data);
}

function message(text: string): string {
  const found = readLiveCase(text);
  return 'problem' in found ? found.problem.message : '';
}

describe('a case as text', () => {
  it('comes back as it was, byte for byte', () => {
    expect(readLiveCase(liveCaseText(live))).toEqual(live);
  });

  it('holds nothing that ends the element in which it stands', () => {
    expect(liveCaseText(live)).not.toContain('<');
  });

  it.each([
    ['cut in half', liveCaseText(live).slice(0, 200)],
    ['no JSON', 'x'],
    ['a number', '5'],
    ['without a model', changed((data) => delete data['model'])],
    ['without its format', changed((data) => delete data['format'])],
  ])('%s is told as damage', (_what, text) => {
    expect(message(text)).toMatch(/^damaged file: .* Ask for the file once more\.$/);
  });

  it('whose model was changed by hand is told so', () => {
    const text = changed((data) => {
      data['model'] = `A${String(data['model']).slice(1)}`;
    });
    expect(message(text)).toMatch(/^changed file: the model in it is not the one that was sent/);
  });

  it('of a newer program says what still helps', () => {
    expect(message(changed((data) => (data['format'] = 2)))).toMatch(/newer program.*save its model there/);
  });

  it.each(['javascript:alert(1)', 'data:text/html,x', 'https://a.example/"onload="x', 'file:///c:/x'])(
    'makes no link of %s',
    (address) => {
      expect(readLiveCase(changed((data) => (data['address'] = address)))).toMatchObject({ address: '' });
    },
  );

  it('takes what is of the wrong kind for left out, and cleans the name', () => {
    const text = changed((data) => {
      data['choices'] = { good: 'yes', bad: 5 };
      data['plan'] = 7;
      data['name'] = '../../etc/pass:wd';
    });
    expect(readLiveCase(text)).toMatchObject({ choices: { good: 'yes' }, plan: '', file: { name: 'passwd' } });
  });
});
