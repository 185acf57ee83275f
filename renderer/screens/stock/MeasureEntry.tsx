// The plate in the hand: one huge line, and above it where the last few went.
import { type KeyboardEvent, type ReactNode, useRef } from 'react';
import { formatLengthTwice } from '../../../app/quantities/format-amount.ts';
import { parsePlateHeight } from '../../../app/stock/plate-heights.ts';
import { EntryLine } from '../../components/EntryLine.tsx';
import { KeyBar } from '../../components/KeyBar.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { type BoxSetUp, lineOf, type Measured, withLine } from './box-draft.ts';
import styles from './MeasureEntry.module.css';
import screen from './MeasureScreen.module.css';
import type { BoxAtHand } from './use-box.ts';
import { type LengthWords, useLengthWords } from './use-length-words.ts';

const lastShown = 6;

type MeasureEntryProps = { atHand: BoxAtHand; setUp: BoxSetUp; onDone: () => void };

export function MeasureEntry({ atHand, setUp, onDone }: MeasureEntryProps) {
  const { box, change, commit, takeBack, takingBackFailed } = atHand;
  const words = useLengthWords();
  const field = useRef<HTMLDivElement>(null);
  const line = lineOf(box);
  const isWaiting = box.waiting.length > 0;
  const keys = [
    {
      key: 'U',
      words: 'Take the last back',
      onPress: () => {
        takeBack();
        field.current?.querySelector('input')?.focus();
      },
      isDisabled: box.run.length === 0 || isWaiting,
    },
    {
      key: 'C',
      words: 'Set up again',
      onPress: () => change((before) => ({ ...before, isSetUp: false })),
    },
    {
      key: 'D',
      words: 'Done',
      onPress: onDone,
      isDisabled: isWaiting,
    },
  ];
  const press = (event: KeyboardEvent) => {
    // A number pad has no blank and no U: + goes to the next point, − takes the last one back.
    if (event.key === '+') {
      event.preventDefault();
      change((before) => withLine(before, `${lineOf(before).trimEnd()} `));
    }
    const takesBack = event.key === 'Backspace' || event.key === '-';
    if (!takesBack || line !== '' || event.repeat) return;
    event.preventDefault();
    takeBack();
  };
  return (
    <section className={screen.entry} aria-label="The plate in the hand">
      <div className={screen.prompt}>
        {box.run.length === 0 ? (
          <p className="quiet">
            Measure the first plate, type its height and press Enter. Several points around a plate stand side by side,
            with a blank or + between.
          </p>
        ) : (
          <ol className={styles.last} aria-label="The last few">
            {box.run.slice(-lastShown).map((measured) => (
              <li key={measuredId(measured)}>
                <span className={styles.height}>{words.full(measured.height_nm)}</span>
                <span className={styles.arrow}>→</span>
                <span>{whereWords(measured, words)}</span>
              </li>
            ))}
          </ol>
        )}
        {/* biome-ignore lint/a11y/noStaticElementInteractions: it only hears what the line inside passes on. */}
        <div ref={field} className={styles.field} onKeyDown={press}>
          <EntryLine
            label={entryLabel(setUp, words)}
            value={line}
            onChange={(typed) => change((before) => withLine(before, typed))}
            onCommit={commit}
            saidBack={<SaidBack line={line} setUp={setUp} />}
            refusal={box.asked === null ? null : askedSentence(box.asked)}
          />
        </div>
        <FailureSentence error={takingBackFailed} />
      </div>
      <KeyBar keys={keys} />
    </section>
  );
}

function entryLabel(setUp: BoxSetUp, words: LengthWords): string {
  const tag = setUp.into === 'single' && setUp.tag !== '' ? ` ${setUp.tag}` : '';
  return `Height of ${setUp.kind}${tag}, ${words.unit}`;
}

/** "can 77.5, 12 in it", "A12". */
function whereWords({ into }: Measured, words: LengthWords): ReactNode {
  if (into.kind === 'can') return `can ${words.full(into.can_nm)}, ${into.count} in it`;
  return into.tag === '' ? 'one by one, no tag' : <span className={styles.tag}>{into.tag}</span>;
}

function askedSentence({ sentence, meansIt }: NonNullable<BoxAtHand['box']['asked']>): string {
  return meansIt === 'is sure' ? `${sentence} Enter takes it as it is.` : sentence;
}

/** What the line is understood as, said back before Enter. */
function SaidBack({ line, setUp }: { line: string; setUp: BoxSetUp }) {
  const words = useLengthWords();
  const { settings } = useOpenShop();
  if (line.trim() === '') {
    return setUp.into === 'single' && setUp.tag !== '' ? <span className={styles.tag}>{setUp.tag}</span> : null;
  }
  const height = parsePlateHeight(line, setUp.kind, settings);
  if (!height.ok) return null;
  const { height_nm, points_nm } = height.value;
  if (points_nm.length < 2) return formatLengthTwice(height_nm, words.unit, settings.decimalMark);
  const spread_nm = Math.max(...points_nm) - Math.min(...points_nm);
  return `${words.full(height_nm)}, ${points_nm.length} points ${words.full(spread_nm)} apart`;
}

function measuredId({ into }: Measured): string {
  return into.kind === 'can' ? `can ${into.canMovementId}` : `plate ${into.pieceId}`;
}
