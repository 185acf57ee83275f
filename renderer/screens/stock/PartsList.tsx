// The parts as one long table of which only the rows in sight are drawn; the keyboard stands on one row of it.
import { Link, useNavigate } from '@tanstack/react-router';
import { type KeyboardEvent, type RefObject, useEffect, useId, useRef, useState } from 'react';
import type { PartLine } from '../../../app/stock/parts.contract.ts';
import { classNames } from '../../components/class-names.ts';
import table from '../../components/Table.module.css';
import { Cell, ColumnHead, RowHead } from '../../components/Table.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useMoneyWords } from '../../text/use-money-words.ts';
import { LowMark } from './LowMark.tsx';
import styles from './PartsList.module.css';
import type { PartsFilter } from './parts-view.ts';
import { usePartRows } from './use-part-rows.ts';

/** As the style sheet has them. */
const rowHeight = 40;
const headHeight = 28;
/** Rows drawn beyond what is in sight, so that a turn of the wheel finds them there. */
const beyond = 8;

type PartsListProps = {
  filter: PartsFilter;
  at: number;
  onStandAt: (at: number) => void;
  /** Takes the focus when the keyboard comes down from the search. */
  grid: RefObject<HTMLTableElement | null>;
  /** How many there are, once it is known. */
  onTotal: (total: number) => void;
};

export function PartsList({ filter, at, onStandAt, grid, onTotal }: PartsListProps) {
  const scroller = useRef<HTMLDivElement>(null);
  const sight = useSight(scroller);
  const first = Math.max(0, sight.first - beyond);
  const { rows, error } = usePartRows(filter, first, sight.last + beyond);
  const total = rows?.total ?? null;
  useEffect(() => {
    if (total !== null) onTotal(total);
  }, [total, onTotal]);

  const inSight = useRef(() => {});
  inSight.current = () => {
    const box = scroller.current;
    if (!box) return;
    const top = at * rowHeight;
    if (top < box.scrollTop) box.scrollTop = top;
    const least = top + rowHeight + headHeight - box.clientHeight;
    if (least > box.scrollTop) box.scrollTop = least;
  };
  const isThere = total !== null;
  // The list is tall enough to be scrolled only once it is known how many there are.
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are what it must follow.
  useEffect(() => inSight.current(), [at, filter, isThere]);

  const rowId = useId();
  const move = useMoves({ at, total: total ?? 0, page: sight.last - sight.first - 1, part: rows?.at(at), onStandAt });
  if (!rows) return <FailureSentence error={error} />;
  const last = Math.min(rows.total, sight.last + beyond);
  const drawn = Array.from({ length: Math.max(0, last - first) }, (_, index) => first + index);
  return (
    <div ref={scroller} className={styles.scroller}>
      <FailureSentence error={error} />
      <table
        ref={grid}
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the arrow keys go along a grid, on a table of figures.
        role="grid"
        aria-label="Parts"
        aria-rowcount={rows.total + 1}
        aria-activedescendant={rows.total > 0 ? `${rowId}${at}` : undefined}
        tabIndex={0}
        className={classNames(table.table, styles.grid)}
        onKeyDown={move}
      >
        <Heads />
        <tbody>
          <Gap rows={first} />
          {drawn.map((index) => (
            <Row
              key={index}
              id={`${rowId}${index}`}
              index={index}
              part={rows.at(index)}
              isHere={index === at}
              onTouch={() => onStandAt(index)}
            />
          ))}
          <Gap rows={rows.total - last} />
        </tbody>
      </table>
    </div>
  );
}

function Heads() {
  return (
    <thead>
      <tr aria-rowindex={1}>
        <ColumnHead>number</ColumnHead>
        <ColumnHead>description</ColumnHead>
        <ColumnHead isNumber>on hand</ColumnHead>
        <ColumnHead isNumber>reorder at</ColumnHead>
        <ColumnHead>bin</ColumnHead>
        <ColumnHead isWide>supplier</ColumnHead>
        <ColumnHead isNumber>price</ColumnHead>
      </tr>
    </thead>
  );
}

type RowProps = { id: string; index: number; part: PartLine | undefined; isHere: boolean; onTouch: () => void };

function Row({ id, index, part, isHere, onTouch }: RowProps) {
  const money = useMoneyWords();
  const row = { id, 'aria-rowindex': index + 2, className: classNames(styles.row, isHere && styles.here) };
  if (!part) {
    return (
      <tr {...row}>
        <Cell isQuiet columns={6}>
          …
        </Cell>
      </tr>
    );
  }
  return (
    <tr {...row} aria-selected={isHere}>
      <RowHead>
        <Link
          to="/stock/parts/$partId"
          params={{ partId: String(part.partId) }}
          tabIndex={-1}
          className={styles.number}
          onClick={onTouch}
        >
          {part.number}
        </Link>
      </RowHead>
      <Cell>{part.description}</Cell>
      <Cell isNumber isStrong>
        {part.onHand}
      </Cell>
      <Cell isNumber isQuiet={!part.isLow}>
        {part.isLow && <LowMark />}
        {part.reorderPoint ?? ''}
      </Cell>
      <Cell>{part.bin}</Cell>
      <Cell isWide isQuiet>
        {part.supplier}
      </Cell>
      <Cell isNumber>{part.price_cents === null ? '' : money(part.price_cents)}</Cell>
    </tr>
  );
}

/** Stands for rows that are not drawn, so that the scroll bar tells the truth. */
function Gap({ rows }: { rows: number }) {
  if (rows <= 0) return null;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: there is nothing in it to come to.
    <tr aria-hidden="true">
      <td colSpan={6} className={styles.gap} style={{ height: rows * rowHeight }} />
    </tr>
  );
}

/** The first row in sight and the one after the last. */
function useSight(scroller: RefObject<HTMLDivElement | null>): { readonly first: number; readonly last: number } {
  const [sight, setSight] = useState({ first: 0, last: 20 });
  useEffect(() => {
    const look = () => {
      const box = scroller.current;
      if (!box) return;
      const first = Math.floor(box.scrollTop / rowHeight);
      const last = Math.ceil((box.scrollTop + box.clientHeight - headHeight) / rowHeight);
      setSight((before) => (before.first === first && before.last === last ? before : { first, last }));
    };
    look();
    const box = scroller.current;
    box?.addEventListener('scroll', look, { passive: true });
    window.addEventListener('resize', look);
    return () => {
      box?.removeEventListener('scroll', look);
      window.removeEventListener('resize', look);
    };
  });
  return sight;
}

type Moves = {
  at: number;
  total: number;
  /** Rows in sight. */
  page: number;
  part: PartLine | undefined;
  onStandAt: (at: number) => void;
};

/** Arrows, pages, Home and End move along the list; Enter opens. */
function useMoves({ at, total, page, part, onStandAt }: Moves) {
  const navigate = useNavigate();
  return (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Enter' && part && !event.repeat) {
      event.preventDefault();
      void navigate({ to: '/stock/parts/$partId', params: { partId: String(part.partId) } });
      return;
    }
    const to = destination(event.key, at, page, total);
    if (to === null) return;
    event.preventDefault();
    onStandAt(Math.max(0, Math.min(total - 1, to)));
  };
}

function destination(key: string, at: number, page: number, total: number): number | null {
  switch (key) {
    case 'ArrowDown':
      return at + 1;
    case 'ArrowUp':
      return at - 1;
    case 'PageDown':
      return at + page;
    case 'PageUp':
      return at - page;
    case 'Home':
      return 0;
    case 'End':
      return total - 1;
    default:
      return null;
  }
}
