import { liveFile } from '../../../files/live/liveFile';
import { livePageName } from '../../../files/live/livePageName';
import { spokenLanguage } from '../../../language/language';
import { liveTexts } from '../../../present/live/liveTexts';
import { plainCase } from '../../../present/live/plainCase';
import { preparedLine } from '../../../present/theCase/ownWordsTexts';
import { createDates, dayOf } from '../../../present/text/dates';
import { isoDate } from '../../../trade/civilDate';
import { ownAddress } from '../../app/files/modelLink';
import { download, fileText } from '../../app/files/saving';
import { localFormat } from '../../app/preferences/localFormat';
import { reasonText } from '../../app/reasonText';
import type { KeptChoice } from '../../app/preferences/choice';
import type { ScreenProps } from '../../app/screenProps';
import { ownWords } from './ownWords';
import { caseSettings } from './caseSettings';

interface Sent extends Pick<ScreenProps, 'store' | 'plan'> {
  readonly choice: KeptChoice;
  /** The plan that is given up. */
  readonly from: number;
}

/** The page without a case, which stands beside the site's own. */
async function emptyPage(): Promise<string> {
  const answer = await fetch(new URL(livePageName(spokenLanguage()?.tag), document.baseURI));
  if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`.trim());
  return answer.text();
}

function fileNameOf(name: string): string {
  return `${name.replace(/\.[^.]*$/, '')}.html`;
}

/** Saves the case as one live file. Returns the message about it, also where there is none. */
export async function saveLive({ store, choice, plan, from }: Sent): Promise<string> {
  const [model, { name }] = [store.model(), store.origin()];
  const words = ownWords(choice, () => model.title);
  const today = dayOf(new Date());
  const texts = plainCase(
    {
      model,
      values: store.values(),
      plan,
      against: from,
      words: words.text('words').trim(),
      prepared: preparedLine(words),
      day: createDates(localFormat.locale).long(today),
    },
    localFormat,
  );
  const live = {
    file: { name, bytes: new TextEncoder().encode(fileText(store)) },
    day: isoDate(today),
    plan: model.plans[plan]?.name ?? '',
    against: model.plans[from]?.name ?? '',
    choices: caseSettings(choice.kept(), model.title),
    address: ownAddress(),
  };
  try {
    const made = liveFile(await emptyPage(), texts, live);
    if (typeof made !== 'string') return liveTexts.notMade(made.problem.message);
    download(fileNameOf(name), made, 'text/html');
    return liveTexts.saved(fileNameOf(name), localFormat.written(String(Math.ceil(new Blob([made]).size / 1000))));
  } catch (reason) {
    return liveTexts.notMade(liveTexts.noPage(reasonText(reason)));
  }
}
