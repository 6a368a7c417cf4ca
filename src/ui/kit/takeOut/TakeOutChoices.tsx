import { createSignal, Show, type JSX } from 'solid-js';
import { exportTable } from '../../../files/exportTable';
import { htmlTable, tabbedText } from '../../../present/table/copied';
import type { DataTable } from '../../../present/table/dataTable';
import { digitChoices } from '../../../present/table/digitChoices';
import { sourceLine } from '../../../present/table/sourceLine';
import { takenName } from '../../../present/table/takenName';
import { takenRows } from '../../../present/table/takenOut';
import { takeOutTexts } from '../../../present/table/takeOutTexts';
import { createDates, dayOf } from '../../../present/text/dates';
import { download, downloadBlob } from '../../app/files/saving';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { takenDigitsSetting } from '../../app/preferences/settings/takeOut';
import { RadioRow } from '../choosers/RadioRow';
import { copyTable } from './copyTable';
import { pngFile, svgFile } from './pictureFiles';
import type { TakenThing } from './takenThing';

/** So that programs that are not told so know the file for UTF-8. */
const byteOrderMark = '\ufeff';

function today(): string {
  return createDates(localFormat.locale).long(dayOf(new Date()));
}

/** What can be done with a table or a chart. */
export function TakeOutChoices(props: TakenThing): JSX.Element {
  const [said, setSaid] = createSignal('');
  return (
    <div class="take-out-choices">
      <Show when={!props.waits} fallback={<p role="status">{takeOutTexts.stillWorking}</p>}>
        <Show when={props.table}>
          {(table) => <TableChoices caption={props.caption} table={table()} say={setSaid} />}
        </Show>
        <Show when={props.picture}>
          <PictureChoices {...props} say={setSaid} />
        </Show>
        <p role="status">{said()}</p>
      </Show>
    </div>
  );
}

function TableChoices(props: { caption: string; table: () => DataTable; say: (text: string) => void }): JSX.Element {
  const { store, choice } = usePage();
  const rows = (): ReturnType<typeof takenRows> =>
    takenRows(props.table(), choice.get(takenDigitsSetting), localFormat);
  const copy = async (): Promise<void> => {
    const taken = rows();
    const how = await copyTable({ text: tabbedText(taken), html: htmlTable(props.caption, taken) });
    props.say(takeOutTexts[({ both: 'copied', text: 'copiedAsText', refused: 'notCopied' } as const)[how]]);
  };
  const save = (): void => {
    const name = takenName(store.shape().title || store.origin().name, props.caption, 'csv');
    download(name, byteOrderMark + exportTable(rows()));
    props.say(takeOutTexts.saved(name));
  };
  return (
    <>
      <div class="take-out-buttons">
        <button type="button" class="word" onClick={() => void copy()}>
          {takeOutTexts.copy}
        </button>
        <button type="button" class="word" onClick={save}>
          {takeOutTexts.saveCsv}
        </button>
      </div>
      <RadioRow
        legend={takeOutTexts.digits}
        options={digitChoices.map((value) => ({ value, label: takeOutTexts.digitsChoices[value] }))}
        chosen={choice.get(takenDigitsSetting)}
        choose={(digits) => choice.set(takenDigitsSetting, digits)}
      />
    </>
  );
}

function PictureChoices(props: TakenThing & { say: (text: string) => void }): JSX.Element {
  const { store } = usePage();
  const title = (): string => store.shape().title || store.origin().name;
  const source = (): string => sourceLine(title(), today());
  const saveSvg = async (): Promise<void> => {
    const name = takenName(title(), props.caption, 'svg');
    download(name, svgFile(await props.picture!(), source()), 'image/svg+xml');
    props.say(takeOutTexts.saved(name));
  };
  const savePng = async (): Promise<void> => {
    const name = takenName(title(), props.caption, 'png');
    const blob = await pngFile(await props.picture!(), source());
    if (blob !== undefined) downloadBlob(name, blob);
    props.say(blob === undefined ? takeOutTexts.noPicture : takeOutTexts.saved(name));
  };
  return (
    <div class="take-out-buttons">
      <button type="button" class="word" onClick={() => void saveSvg()}>
        {takeOutTexts.saveSvg}
      </button>
      <button type="button" class="word" onClick={() => void savePng()}>
        {takeOutTexts.savePng}
      </button>
    </div>
  );
}
