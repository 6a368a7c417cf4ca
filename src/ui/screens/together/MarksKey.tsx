import { createMemo, For, type JSX } from 'solid-js';
import type { GroupMark } from '../../../present/together/groupMarks';
import { togetherTexts } from '../../../present/together/texts';
import { letterOf } from '../../../present/text/planLetter';
import type { Picture } from './scene';

/** What the marks of the picture mean, as far as they are in it. */
export function MarksKey(props: { picture: Picture }): JSX.Element {
  const marks = createMemo(() => {
    const found = props.picture.drawn().ids.flatMap((id) => props.picture.marks().get(id) ?? []);
    return [...new Set(found)];
  });
  const single = createMemo(() => {
    const plans = props.picture.plans();
    const arrows = props.picture.drawn().arrows.filter((arrow) => arrow.plans.length < plans.length);
    return plans.flatMap(({ name }, p) =>
      arrows.some((arrow) => arrow.plans.includes(p)) ? { name, letter: letterOf(p, plans.length) } : [],
    );
  });
  return (
    <div class="together-key" role="group" aria-label={togetherTexts.key}>
      <p>
        {togetherTexts.howToRead} {togetherTexts.keyInput}
      </p>
      <ul>
        <For each={marks()}>{(mark) => <GroupItem mark={mark} />}</For>
        <For each={single()}>
          {({ name, letter }) => (
            <li>
              <svg class="together-swatch" width="34" height="14" aria-hidden="true">
                <g class="together-arrow" data-letter={letter}>
                  <path class="line" d="M0 7H8M22 7H34" />
                  <circle class="spot" cx="15" cy="7" r="7" />
                  <text x="15" y="11" text-anchor="middle">
                    {letter}
                  </text>
                </g>
              </svg>
              {togetherTexts.keyPlan(name)}
            </li>
          )}
        </For>
      </ul>
    </div>
  );
}

function GroupItem(props: { mark: GroupMark }): JSX.Element {
  return (
    <li>
      <svg class="together-swatch together-box" data-tint={props.mark.tint} width="14" height="14" aria-hidden="true">
        <rect class="frame" width="14" height="14" />
        <rect
          class="stripe"
          width="14"
          height="14"
          fill={`url(#together-pattern-${props.mark.pattern}-${props.mark.tint})`}
        />
      </svg>
      {props.mark.group || togetherTexts.noGroup}
    </li>
  );
}
