// The plates of an outline: in cans by class, one by one by thickness, and what they can do for the packs they fit.
import { useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { OutlineLine } from '../../../app/stock/plates.contract.ts';
import { classNames } from '../../components/class-names.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { CanPanel } from './CanPanel.tsx';
import { PlatePanel } from './PlatePanel.tsx';
import { PlatesCans } from './PlatesCans.tsx';
import { PlatesColumns } from './PlatesColumns.tsx';
import { PlatesOutlines } from './PlatesOutlines.tsx';
import { PlatesPicture } from './PlatesPicture.tsx';
import styles from './PlatesScreen.module.css';
import { kindsWords, packsWords } from './plate-words.ts';
import { StockTabs } from './StockTabs.tsx';
import { useLengthWords } from './use-length-words.ts';

/** What stands open at the side. */
export type PlatesSide = { readonly plate?: number; readonly can?: number };

export function PlatesScreen({ outline, side }: { outline: string | null; side: PlatesSide }) {
  const outlines = useRead('stock.listOutlines', {});
  return (
    <Loaded read={outlines}>
      {(known) => {
        const chosen = outline === null ? known[0] : lineOf(known, outline);
        if (chosen) return <Outline key={chosen.outline} line={chosen} outlines={known} side={side} />;
        return (
          <>
            <PageHead title="Plates" />
            <StockTabs />
            <EmptyState
              level={2}
              title="No plates yet."
              act={
                <LinkKey to="/specs" kind="filled">
                  Name an outline in Specs
                </LinkKey>
              }
            >
              Plates are kept by outline: the name on a slot of a spec sheet says which plates fit it. Once a slot has
              one, its box is measured in here.
            </EmptyState>
          </>
        );
      }}
    </Loaded>
  );
}

/** An outline that nothing is known of yet can be measured all the same. */
function lineOf(known: readonly OutlineLine[], outline: string): OutlineLine {
  return known.find((each) => each.outline === outline) ?? { outline, kinds: [], packs: [], free: 0, inCans: 0 };
}

type OutlineProps = { line: OutlineLine; outlines: readonly OutlineLine[]; side: PlatesSide };

function Outline({ line, outlines, side }: OutlineProps) {
  const { outline } = line;
  const words = useLengthWords();
  const navigate = useNavigate();
  const whole = useRead(
    'stock.listPlates',
    { outline, text: '', state: null, offset: 0, limit: 1 },
    { keepsLast: true },
  );
  useLetterKey(
    'm',
    useCallback(
      () => void navigate({ to: '/stock/plates/$outline/measure', params: { outline } }),
      [navigate, outline],
    ),
  );
  const open = useCallback(
    (next: PlatesSide) => void navigate({ to: '/stock/plates/$outline', params: { outline }, search: next }),
    [navigate, outline],
  );
  const close = useCallback(() => open({}), [open]);
  return (
    <div className={styles.page}>
      <PageHead
        title={outline}
        facts={
          <span className={classNames('quiet', styles.facts)}>
            {[packsWords(line.packs), `${kindsWords(line.kinds)} by thickness, ${words.unit}`]
              .filter((each) => each !== '')
              .join(' · ')}
          </span>
        }
        acts={
          <LinkKey to="/stock/plates/$outline/measure" params={{ outline }} kind="filled" keyHint="M">
            Measure a box
          </LinkKey>
        }
      />
      <div className={styles.shelves}>
        <StockTabs />
        <PlatesOutlines outlines={outlines} chosen={outline} />
      </div>
      <Loaded read={whole}>
        {(plates) =>
          plates.total === 0 && plates.cans.length === 0 ? (
            <EmptyState level={2} title={`No plates of ${outline} yet.`}>
              Press M and measure a box: type a height, Enter, the next one. They go into cans by class, or are tagged
              one by one.
            </EmptyState>
          ) : (
            <div className={styles.plates}>
              <section className={styles.list} aria-label="Plates at hand">
                <PlatesCans
                  outline={outline}
                  kinds={line.kinds}
                  cans={plates.cans}
                  opened={side.can ?? null}
                  onOpen={open}
                />
                {plates.total > 0 ? (
                  <PlatesColumns
                    outline={outline}
                    all={plates.total}
                    free={plates.byState.free}
                    opened={side.plate ?? null}
                    onOpen={(plate) => open({ plate })}
                  />
                ) : (
                  <p className="quiet">No single plates. Specials, selective and reused ones are tagged one by one.</p>
                )}
              </section>
              <aside
                className={styles.see}
                aria-label={side.plate || side.can ? 'What is known of it' : 'What they can do'}
              >
                {side.plate ? (
                  <PlatePanel key={side.plate} pieceId={side.plate} onClose={close} />
                ) : side.can ? (
                  <CanPanel key={side.can} can={plates.cans.find(({ canId }) => canId === side.can)} onClose={close} />
                ) : (
                  <PlatesPicture line={line} histogram={plates.histogram} cans={plates.cans} />
                )}
              </aside>
            </div>
          )
        }
      </Loaded>
    </div>
  );
}
