/** The text of the reason for which a promise was rejected. */
export function reasonText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
