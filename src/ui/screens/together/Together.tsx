import { createEffect, createMemo, createSignal, on, Show, type JSX } from 'solid-js';
import { aroundSaid, wholeSaid } from '../../../present/together/sentences';
import { pictureChoices, togetherTexts } from '../../../present/together/texts';
import { allGroups } from '../../../present/results/entryGroups';
import { commonTexts } from '../../../present/text/commonTexts';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { togetherEntrySetting } from '../../app/preferences/settings/page';
import { directionSetting, reachSetting } from '../../app/preferences/settings/together';
import type { ScreenProps } from '../../app/screenProps';
import { EntryChooser } from '../../kit/choosers/EntryChooser';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { Link } from '../../kit/Link';
import { PrintWord } from '../../kit/paper/PrintWord';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { EntriesTable } from './EntriesTable';
import { MarksKey } from './MarksKey';
import { PictureView } from './PictureView';
import { saidId } from './saidId';
import { createScene, type Picture } from './scene';
import '../../kit/sections/answers.css';
import './styles.css';

/** How the entries of a model hang together: a picture around one of them or of all, and the same as a table. */
export function Together(props: ScreenProps): JSX.Element {
  const page = usePage();
  const picture = createScene(page);
  const [isWide, setWide] = createSignal(false);
  const put = (id: number): void => {
    props.choice.set(togetherEntrySetting, props.store.shape().cells[id]?.name ?? '');
  };
  const goToRow = (id: number): void => {
    setWide(false);
    props.goTo(id);
  };
  return (
    <section
      class="question-screen together"
      classList={{ 'whole-width': isWide() }}
      aria-labelledby="together-heading">
      <h2 id="together-heading">{togetherTexts.heading}</h2>
      <Asking />
      <div id={saidId}>
        <Said picture={picture} />
      </div>
      <Middle picture={picture} put={put} goToRow={goToRow} />
      <div class="together-parts" classList={{ 'of-whole': picture.drawn().middle === undefined }}>
        <Show when={picture.drawn().ids.length > 0}>
          <div class="together-drawn">
            <PictureView picture={picture} put={put} isWide={isWide()} onWide={setWide} />
            <MarksKey picture={picture} />
          </div>
        </Show>
        <EntriesTable picture={picture} put={put} />
      </div>
      <PrintWord part="question">{togetherTexts.print}</PrintWord>
    </section>
  );
}

/** What the picture shows, chosen above it. */
function Asking(): JSX.Element {
  const { store, choice } = usePage();
  const groups = createMemo(() => allGroups(store.shape()));
  const chosen = createMemo(() => {
    const name = choice.get(togetherEntrySetting);
    return store.shape().ids.has(name) ? name : '';
  });
  const usual = (): string => choice.result() || (store.shape().cells[0]?.name ?? '');
  return (
    <>
      <div class="asking">
        <RadioRow
          legend={pictureChoices.show}
          options={pictureChoices.shows}
          chosen={chosen() === '' ? 'whole' : 'one'}
          choose={(show) => choice.set(togetherEntrySetting, show === 'whole' ? '' : usual())}
        />
        <Show when={chosen()}>
          <EntryChooser
            label={pictureChoices.entry}
            groups={groups()}
            chosen={chosen()}
            choose={(name) => choice.set(togetherEntrySetting, name)}
          />
        </Show>
      </div>
      <div class="asking">
        <Show when={chosen()}>
          <RadioRow
            legend={pictureChoices.reach}
            options={pictureChoices.reaches}
            chosen={choice.get(reachSetting)}
            choose={(reach) => choice.set(reachSetting, reach)}
          />
        </Show>
        <RadioRow
          legend={pictureChoices.direction}
          options={pictureChoices.directions}
          chosen={choice.get(directionSetting)}
          choose={(direction) => choice.set(directionSetting, direction)}
        />
      </div>
    </>
  );
}

function Said(props: { picture: Picture }): JSX.Element {
  const { store } = usePage();
  const said = createMemo(() => {
    const { plans, links, drawn } = props.picture;
    const { middle } = drawn();
    return middle === undefined
      ? wholeSaid(store.shape(), plans(), links(), drawn(), localFormat)
      : aroundSaid(store.shape(), plans(), links(), { ...drawn(), middle }, localFormat);
  });
  return (
    <LiveText>
      <AnswerText main={said().main} more={said().more} />
    </LiveText>
  );
}

/** Where one can go from the entry in the middle: to its row, or back to the one before it. */
function Middle(props: { picture: Picture; put: (id: number) => void; goToRow: (id: number) => void }): JSX.Element {
  const { store } = usePage();
  const middle = createMemo(() => props.picture.drawn().middle);
  const [earlier, setEarlier] = createSignal<readonly number[]>([]);
  createEffect(
    on(middle, (now, before) => {
      if (before === undefined || now === undefined) setEarlier([]);
      else setEarlier((all) => (all.at(-1) === now ? all.slice(0, -1) : [...all, before]));
    }),
  );
  const back = (): number | undefined => earlier().at(-1);
  return (
    <Show when={middle() !== undefined}>
      <p class="together-middle">
        <Link onPress={() => props.goToRow(middle()!)}>{togetherTexts.toRow}</Link>
        <Show when={back() !== undefined}>
          <Link onPress={() => props.put(back()!)}>
            {commonTexts.backTo(store.shape().cells[back()!]?.label ?? '')}
          </Link>
        </Show>
      </p>
    </Show>
  );
}
