/**
 * The name of the page of a live case without a case, among what is built.
 * @param tag of a language other than English, as BCP 47 has it
 */
export function livePageName(tag: string | undefined): string {
  return tag === undefined ? 'live-page.html' : `live-page.${tag}.html`;
}
