import { packShared, unpackShared } from '../../src/files/share';
import type { Chance } from '../kill/chance';
import { damaged, oneOf, slipIn, type FuzzKind } from './kind';

const texts = ['name,formula\na,1\n', 'name,formula\r\nb,a * 2\r\n', '', '\ufeffname;formula\nc;1,5\n', 'é 🌱'];
const names = ['model.csv', '../../etc/x.csv', 'a\nb.csv', '', '.hidden', 'ש.csv', 'x'.repeat(300), 'a:b?.csv'];

async function linkCase(chance: Chance): Promise<string> {
  const bytes = new TextEncoder().encode(oneOf(chance, texts).repeat(chance.whole(1, 4)));
  const packed = await packShared({ name: oneOf(chance, names), bytes });
  if (typeof packed !== 'string') return 'a small file that does not fit a link';
  const whole = chance.whole(0, 4) === 0;
  const found = await unpackShared(whole ? packed : damaged(chance, packed));
  if ('problem' in found) return whole ? 'a whole link is refused' : slipIn(found.problem.message, '');
  if (found.name === '' || /[/\\\p{C}]/u.test(found.name)) return `a name that is not safe: ${found.name}`;
  const isSame = found.bytes.length === bytes.length && bytes.every((byte, i) => found.bytes[i] === byte);
  return !whole || isSame ? '' : 'other bytes than were packed';
}

export const links: FuzzKind = { name: 'share links', share: 6, run: linkCase };
