/** What is said of a rejection's reason. */
export function reasonText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
