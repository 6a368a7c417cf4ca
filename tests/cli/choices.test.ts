import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

// 100 plugs a week at 0.05 or 0.09 EUR.
const file = `name,label,unit,formula,low,high,shape,choices,plan: Today,plan: Tomorrow
plug,Plug in use,,1,1,2,either,1 one-use plug; 2 reusable plug,,2
washed,Washed by hand,,1,0,1,either,0 no; 1 yes,,
cost,Cost of a week,EUR/week,plugs * (plug == 2 ? dear : cheap) + washed * hands,,,,,,
plugs,Plugs,plug/week,100,,,,,,
cheap,Cheap,EUR/plug,0.05,,,,,,
dear,Dear,EUR/plug,0.09,,,,,,
hands,Hands,EUR/week,3,,,,,,
`;

function run(line: string): { status: number; output: string; messages: string } {
  return runCommand(
    line.split(' '),
    machineWith(() => new TextEncoder().encode(file)),
  );
}

/** The lines of a table for people that begin with a name. */
function lineOf(name: string, output: string): string | undefined {
  return output
    .split('\n')
    .find((line) => line.startsWith(name))
    ?.replaceAll(/ {2,}/g, '  ');
}

describe('choices on the command line', () => {
  it.each([
    ['evaluate f', 'plug', 'plug  2  reusable plug  Plug in use'],
    ['evaluate f --plan Today', 'plug', 'plug  1  one-use plug  Plug in use'],
    ['evaluate f --against Today', 'plug', 'plug  1  Plug in use'],
    ['tornado f --result cost', 'washed', 'washed  0 (no)  1 (yes)  9  12  3'],
    ['breakeven f --result cost --input washed', 'washed', 'washed: 1 (yes) today, looked at from 0 to 11'],
    ['switching f --result cost --target 10', 'washed', 'washed  1 (yes)  0 (no)'],
  ])('%s shows the words: %s', (line, name, expected) => {
    expect(lineOf(name, run(line).output)).toBe(expected);
  });

  it('leaves documents as they are', () => {
    const { cells } = JSON.parse(run('evaluate f --json').output) as { cells: Record<string, unknown> };
    expect(cells['plug']).toEqual({ value: '2', unit: '', error: null });
  });

  it('takes another choice by --set', () => {
    const { status, output } = run('evaluate f --set plug=1 --json');
    const { cells } = JSON.parse(output) as { cells: Record<string, { value: string }> };
    expect([status, cells['cost']?.value]).toEqual([0, '8']);
  });

  it('refuses a number that is none of them as wrong usage, and names them', () => {
    const { status, messages } = run('evaluate f --set plug=3');
    expect(status).toBe(2);
    expect(messages).toContain(
      '--set of plug: value that is no choice: 3. Take one of 1 one-use plug; 2 reusable plug.',
    );
  });
});
