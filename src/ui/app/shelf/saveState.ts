/** Whether the work is kept on this machine. */
export type SaveState =
  /** Nothing was changed yet. */
  | { readonly state: 'nothing' }
  /** Something is not on the disk yet. */
  | { readonly state: 'waiting' }
  /** All of it is, since then. */
  | { readonly state: 'kept'; readonly at: Date }
  | { readonly state: 'failed'; readonly reason: string }
  /** Another page writes this model, and what it writes is shown here. */
  | { readonly state: 'following' };

/** What is said of a rejection's reason. */
export function reasonText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
