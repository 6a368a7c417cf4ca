import { onCleanup, onMount, type JSX } from 'solid-js';

interface DropdownProps {
  readonly class: string;
  readonly summary: JSX.Element;
  /** Whether the panel stays open after a press on a button in it. */
  readonly staysOpen?: boolean;
  /** Opens or closes the panel from outside, where it is given. */
  readonly isOpen?: boolean;
  readonly onToggle?: (isOpen: boolean) => void;
  readonly children: JSX.Element;
}

/** A button that opens a panel below it; Escape, a press elsewhere or a choice in the panel closes it. */
export function Dropdown(props: DropdownProps): JSX.Element {
  let details: HTMLDetailsElement | undefined;
  const close = (): void => {
    if (details !== undefined) details.open = false;
  };
  const onPress = (event: PointerEvent): void => {
    if (event.target instanceof Node && details?.contains(event.target) !== true) close();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || details?.open !== true) return;
    event.stopPropagation();
    close();
    details.querySelector('summary')?.focus();
  };
  onMount(() => {
    document.addEventListener('pointerdown', onPress);
    onCleanup(() => document.removeEventListener('pointerdown', onPress));
  });
  const onClick = (event: MouseEvent): void => {
    if (props.staysOpen === true) return;
    if (event.target instanceof Element && event.target.closest('button') !== null) close();
  };
  return (
    <details
      class={`dropdown ${props.class}`}
      ref={(element) => {
        details = element;
      }}
      open={props.isOpen}
      onToggle={(event) => props.onToggle?.(event.currentTarget.open)}
      onKeyDown={onKeyDown}>
      <summary>{props.summary}</summary>
      <div class="dropdown-panel" onClick={onClick}>
        {props.children}
      </div>
    </details>
  );
}
