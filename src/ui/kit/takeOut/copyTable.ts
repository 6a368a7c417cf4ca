/** A table in the two forms in which programs take one from the clipboard. */
export interface CopiedTable {
  readonly text: string;
  readonly html: string;
}

/** Puts a table on the clipboard; `refused` where the browser does not allow it. */
export async function copyTable({ text, html }: CopiedTable): Promise<'both' | 'refused' | 'text'> {
  const blob = (content: string, type: string): Blob => new Blob([content], { type });
  try {
    const forms = { 'text/plain': blob(text, 'text/plain'), 'text/html': blob(html, 'text/html') };
    await navigator.clipboard.write([new ClipboardItem(forms)]);
    return 'both';
  } catch {
    // Some browsers take text only; some pages may not copy at all.
  }
  try {
    await navigator.clipboard.writeText(text);
    return 'text';
  } catch {
    return 'refused';
  }
}
