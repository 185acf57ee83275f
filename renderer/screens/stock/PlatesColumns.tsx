// Single plates by thickness in columns, a page of them at a time, so that twenty thousand are as quick as twenty.
import { type KeyboardEvent, useCallback, useEffect, useRef, useState } from 'react';
import { type Plate, type PlateState, plateStates } from '../../../app/stock/plates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { PlateMark } from './PlateMark.tsx';
import styles from './PlatesColumns.module.css';
import { stateWords } from './plate-words.ts';
import { useFocusBack } from './use-focus-back.ts';
import { useLengthWords } from './use-length-words.ts';
import { rowHeight, usePageRoom } from './use-page-room.ts';

type PlatesColumnsProps = {
  outline: string;
  /** Single plates of the outline, however few are found. */
  all: number;
  free: number;
  opened: number | null;
  onOpen: (pieceId: number) => void;
};

const stateOptions = [
  { id: 'all', words: 'All' },
  ...plateStates.map((state) => ({ id: state, words: state.charAt(0).toUpperCase() + state.slice(1) })),
] as const satisfies readonly { id: PlateState | 'all'; words: string }[];

export function PlatesColumns({ outline, all, free, opened, onOpen }: PlatesColumnsProps) {
  const [text, setText] = useState('');
  const [state, setState] = useState<PlateState | 'all'>('all');
  const [at, setAt] = useState(0);
  const [room, { rows, columns }] = usePageRoom<HTMLDivElement>();
  const perPage = rows * columns;
  const offset = Math.floor(at / perPage) * perPage;
  const read = useRead(
    'stock.listPlates',
    { outline, text: text.trim(), state: state === 'all' ? null : state, offset, limit: perPage },
    { keepsLast: true },
  );
  const find = useRef<HTMLDivElement>(null);
  useLetterKey(
    'f',
    useCallback(() => find.current?.querySelector('input')?.focus(), []),
  );
  const total = read.data?.total ?? 0;
  return (
    <>
      <header className={styles.head}>
        <h2>
          {all.toLocaleString('en-US')} one by one, <b>{free.toLocaleString('en-US')} free</b>
        </h2>
        <div ref={find} className={styles.find}>
          <TextField
            label="Find a tag or a height"
            isLabelHidden
            placeholder="Tag or height"
            type="search"
            maxLength={40}
            value={text}
            onChange={(typed) => {
              setText(typed);
              setAt(0);
            }}
          />
        </div>
        <div className={styles.state}>
          <Select
            label="State"
            isLabelHidden
            options={stateOptions}
            value={state}
            onChange={(id) => {
              setState(id);
              setAt(0);
            }}
          />
        </div>
      </header>
      <div ref={room} className={styles.room}>
        <Loaded read={read}>
          {({ plates }) =>
            plates.length > 0 ? (
              <PageOfPlates
                plates={plates}
                rows={rows}
                columns={columns}
                offset={read.isPlaceholderData ? null : offset}
                at={at}
                total={total}
                opened={opened}
                onMove={setAt}
                onOpen={onOpen}
              />
            ) : (
              <p className="quiet">
                {text.trim() === ''
                  ? `No plate of ${outline} is “${state}”.`
                  : `No plate here holds “${text.trim()}”. Part of a tag or of a height is enough.`}
              </p>
            )
          }
        </Loaded>
      </div>
      {total > perPage && (
        <div className={styles.pages}>
          <p className="small quiet" role="status">
            {(offset + 1).toLocaleString('en-US')}–{Math.min(total, offset + perPage).toLocaleString('en-US')} of{' '}
            {total.toLocaleString('en-US')}, thinnest first
          </p>
          <Button isDisabled={offset === 0} onPress={() => setAt(Math.max(0, offset - perPage))}>
            Thinner
          </Button>
          <Button isDisabled={offset + perPage >= total} onPress={() => setAt(offset + perPage)}>
            Thicker
          </Button>
        </div>
      )}
    </>
  );
}

type PageProps = {
  plates: readonly Plate[];
  rows: number;
  columns: number;
  /** The place of the first one in the whole list; null while the page is still to come. */
  offset: number | null;
  at: number;
  total: number;
  opened: number | null;
  onMove: (at: number) => void;
  onOpen: (pieceId: number) => void;
};

function PageOfPlates({ plates, rows, columns, offset, at, total, opened, onMove, onOpen }: PageProps) {
  const words = useLengthWords();
  const list = useRef<HTMLOListElement>(null);
  const wantsFocus = useRef(false);
  const here = offset === null ? null : Math.min(at - offset, plates.length - 1);
  useEffect(() => {
    if (!wantsFocus.current || here === null) return;
    wantsFocus.current = false;
    list.current?.querySelectorAll('button')[here]?.focus();
  }, [here]);

  useFocusBack(list, opened);

  const perPage = rows * columns;
  const move = (event: KeyboardEvent) => {
    const to = placeAfter(event.key, at, rows, perPage, total);
    if (to === null || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    if (to === at) return;
    wantsFocus.current = true;
    onMove(to);
  };
  const used = Math.min(rows, Math.max(6, Math.ceil(plates.length / columns)));
  return (
    <ol
      ref={list}
      className={styles.columns}
      aria-label="Single plates, by thickness"
      style={{
        gridTemplateRows: `repeat(${Math.min(used, plates.length)}, ${rowHeight}px)`,
        gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))`,
      }}
      onKeyDown={move}
    >
      {plates.map((plate, index) => (
        <li key={plate.pieceId} className={classNames((index % used) % 5 === 4 && styles.fifth)}>
          <button
            type="button"
            className={classNames(
              styles.plate,
              plate.state === 'free' && styles.free,
              plate.state === 'do not use' && styles.rejected,
            )}
            aria-current={plate.pieceId === opened ? 'true' : undefined}
            data-opens={plate.pieceId}
            tabIndex={index === (here ?? 0) ? 0 : -1}
            onFocus={() => offset !== null && offset + index !== at && onMove(offset + index)}
            onClick={() => onOpen(plate.pieceId)}
          >
            <span className={styles.tag}>{plate.tag || <span className="spoken">no tag</span>}</span>{' '}
            <span className={styles.height}>{words.full(plate.height_nm)}</span> <PlateMark mark={plate.state} />
            <span className={styles.word}>{stateWords(plate)}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}

function placeAfter(key: string, at: number, rows: number, perPage: number, total: number): number | null {
  const steps: Record<string, number> = {
    ArrowDown: 1,
    ArrowUp: -1,
    ArrowRight: rows,
    ArrowLeft: -rows,
    PageDown: perPage,
    PageUp: -perPage,
    Home: -total,
    End: total,
  };
  const step = steps[key];
  return step === undefined ? null : Math.max(0, Math.min(total - 1, at + step));
}
