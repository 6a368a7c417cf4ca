// Studies of the difference of the shipped model's two plans. Aim: the quick ones, which follow every keystroke, leave
// most of a frame of 16.7 ms to the page; the tornado for drawing within 1 ms; a result over 40 × 40 nursery times and
// densities within 100 ms.
import { decimal } from '../../src/core/number';
import { question } from '../../src/model/response';
import { evaluatePlan } from '../../src/model/values';
import { lever, type Lever } from '../../src/model/view';
import { breakeven } from '../../src/study/breakeven';
import type { Curve } from '../../src/study/curve';
import { evenSteps, gridRows, pictureRange } from '../../src/study/grid';
import { heldSurface } from '../../src/study/heldSurface';
import { defaultRange } from '../../src/study/searchRange';
import { switchingValues } from '../../src/study/switching';
import { quickTornado, tornado } from '../../src/study/tornado';
import { measureTogether, printTable } from './measure';
import { against, cellOf, model, plan } from './shipped';

const view = { model, result: cellOf('margin'), plan, against };
const values = evaluatePlan(plan);
const againstValues = evaluatePlan(against);
const ask = () => question(view, values, againstValues);
const asked = ask();

const moved = lever(view, cellOf('transplant_time'));
if (moved === undefined) throw new Error('the seconds to move a plant are no input');
const response = asked.response([moved]);
const curve: Curve = { exact: (x) => response.exact([x]), float: (x) => response.float([x]) };
const range = defaultRange(moved);
const target = decimal(0);
const given = [moved.base];

const [time, density, late] = ['nursery_time', 'nursery_density', 'finish_time_after_nursery'].map((name) => {
  const found = lever(view, cellOf(name));
  if (found === undefined) throw new Error(`${name} is no input`);
  return found;
}) as [Lever, Lever, Lever];
const surface = heldSurface(asked, time, density, { lever: late, each: decimal(1) });
const [times, densities] = [time, density].map((moving) =>
  evenSteps(pictureRange(moving), 40).map((x) => x.toNumber()),
) as [number[], number[]];

printTable(
  `Change in margin: a tornado of ${quickTornado(asked).length} inputs, and the breakeven of one`,
  measureTogether(
    {
      'question and quick tornado': () => quickTornado(ask()),
      'question alone': ask,
      'exact tornado': () => tornado(asked),
      'exact breakeven': () => breakeven(curve, range, target, given),
      'best weeks, 40 × 40': () => [...gridRows((x, y) => surface.float(x, y), times, densities)],
      'switching values': () => switchingValues(asked, target),
    },
    { runs: 9 },
  ),
);
