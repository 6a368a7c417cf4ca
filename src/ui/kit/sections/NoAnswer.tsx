import type { JSX } from 'solid-js';

/** What stands in the place of an answer where there is nothing to ask of, and what would make something. */
export function NoAnswer(props: { finding: string; remedy: string; children?: JSX.Element }): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">{props.finding}</p>
      <p>{props.remedy}</p>
      {props.children}
    </div>
  );
}
