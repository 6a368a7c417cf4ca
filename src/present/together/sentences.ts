import { wording } from '../../language/wording';
import type { Model, Plan } from '../../model/model';
import type { Links } from '../../model/links/links';
import { surroundings, type Surroundings } from '../../model/links/surroundings';
import type { Format } from '../text/numberFormat';
import { counted, whole } from '../text/quantities';
import { listed, plainly, say, sentences, type Phrase } from '../text/phrase';
import { mostDrawn, type Drawn } from './drawn';
import { entryNoun, stepNoun } from './texts';

/** What the picture shows, first the finding and then what more there is to know. */
interface PictureSaid {
  readonly main: Phrase;
  readonly more: Phrase;
}

function hangsOn(label: string, { before, inputs }: Surroundings, depth: number | undefined, format: Format): Phrase {
  const entries = counted(before.size, entryNoun, format);
  const isOneInput = inputs === before.size && inputs === 1;
  const known = whole(inputs, format);
  if (depth === undefined) {
    return isOneInput
      ? say`${label} hangs on ${entries}, an input; one of the ways to it is a circle.`
      : say`${label} hangs on ${entries}, ${known} of them inputs; one of the ways to it is a circle.`;
  }
  const far = counted(depth, stepNoun, format);
  return isOneInput
    ? say`${label} hangs on ${entries}, an input; the longest way has ${far}.`
    : say`${label} hangs on ${entries}, ${known} of them inputs; the longest way has ${far}.`;
}

function feeds(links: Links, middle: number, { after }: Surroundings, format: Format): Phrase {
  const direct = links.feeds[middle]?.length ?? 0;
  if (after.size === 0) return plainly(wording`Nothing is worked out from it.`);
  const all = counted(after.size, entryNoun, format);
  if (direct === after.size) return say`It is used by ${all}.`;
  return say`It is used by ${counted(direct, entryNoun, format)}, and in the end ${all} hang on it.`;
}

/** How many of all that hang together with the middle are drawn, where that is not all. */
function inSight(drawn: Drawn, { before, after }: Surroundings, format: Format): Phrase {
  const all = new Set([...before.keys(), ...after.keys()]).size;
  const shown = drawn.ids.length - 1;
  if (drawn.leftOut > 0) {
    const left = counted(drawn.leftOut, entryNoun, format);
    return say`Only the nearest ${whole(mostDrawn, format)} are drawn: ${left} further away are left out.`;
  }
  if (shown === all) return [];
  return say`${whole(shown, format)} of these ${counted(all, entryNoun, format)} are drawn; take more steps to see further.`;
}

/** What is said above the picture around an entry. */
export function aroundSaid(
  { cells }: Model,
  plans: readonly Plan[],
  links: Links,
  drawn: Drawn & { readonly middle: number },
  format: Format,
): PictureSaid {
  const { middle } = drawn;
  const label = cells[middle]?.label ?? '';
  const around = surroundings(plans, middle);
  const main =
    around.before.size > 0
      ? hangsOn(label, around, links.depths[middle], format)
      : links.isInput[middle] === true
        ? say`${label} is an input: it hangs on no other entry.`
        : say`${label} hangs on no other entry.`;
  return { main, more: sentences(feeds(links, middle, around, format), inSight(drawn, around, format)) };
}

/** The first entry to which the longest way of all leads, with its steps; undefined where none reads another. */
function longest({ depths }: Links): { readonly id: number; readonly steps: number } | undefined {
  const steps = depths.reduce<number>((most, depth) => Math.max(most, depth ?? 0), 0);
  return steps === 0 ? undefined : { id: depths.indexOf(steps), steps };
}

function circles({ cells }: Model, plans: readonly Plan[]): Phrase {
  const inside = cells.filter(({ id }) =>
    plans.some(({ contents }) => {
      const content = contents[id];
      return content?.kind === 'void' && content.cause === id && content.fault.code === 'cycle';
    }),
  );
  if (inside.length === 0) return [];
  const names = listed(
    inside.map(({ label }) => label),
    4,
  );
  return say`${names} hang on one another in a circle, so that none of them can be worked out.`;
}

/** How many entries no arrow joins to any other. */
function alone(loose: number, format: Format): Phrase {
  if (loose === 0) return [];
  const entries = counted(loose, entryNoun, format);
  return loose === 1 ? say`${entries} stands alone.` : say`${entries} stand alone.`;
}

/** A label at the end of a sentence; that of a check is a sentence of its own. */
function withoutStop(label: string): string {
  return label.replace(/\.$/, '');
}

/** What is said above the picture of the whole model. */
export function wholeSaid(
  model: Model,
  plans: readonly Plan[],
  links: Links,
  drawn: Drawn,
  format: Format,
): PictureSaid {
  const all = counted(model.cells.length, entryNoun, format);
  const inputs = whole(links.isInput.filter(Boolean).length, format);
  const loose = model.cells.filter(({ id }) => links.reads[id]?.length === 0 && links.feeds[id]?.length === 0).length;
  const far = longest(links);
  const tooMany =
    drawn.leftOut === 0
      ? []
      : say`So many are not drawn: a picture shows ${whole(mostDrawn, format)} at most. Look around one entry, or read the table.`;
  const main =
    far === undefined
      ? say`The model has ${all}, ${inputs} of them inputs.`
      : say`The model has ${all}, ${inputs} of them inputs; the longest way has ${counted(far.steps, stepNoun, format)} and leads to ${withoutStop(model.cells[far.id]?.label ?? '')}.`;
  return { main, more: sentences(tooMany, alone(loose, format), circles(model, plans)) };
}
