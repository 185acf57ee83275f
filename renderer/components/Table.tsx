// A table of figures on hairlines: plain HTML, decimals aligned to the right, a unit said once in the head.
import type { ReactNode } from 'react';
import { classNames } from './class-names.ts';
import styles from './Table.module.css';

type TableProps = {
  /** What the table is, for who cannot see the heading above it. */
  label: string;
  /** `dense` is for what is compared at a desk, `reading` for what is read from the bench. */
  density?: 'dense' | 'normal' | 'reading';
  children: ReactNode;
};

/** Holds `thead`, `tbody` and `tfoot` with plain rows. */
export function Table({ label, density = 'normal', children }: TableProps) {
  return (
    <table aria-label={label} className={classNames(styles.table, styles[density])}>
      {children}
    </table>
  );
}

type CellProps = {
  children?: ReactNode;
  /** Figures stand to the right in one column. */
  isNumber?: boolean;
  isStrong?: boolean;
  isQuiet?: boolean;
  /** Goes where the screen is narrow. */
  isWide?: boolean;
  columns?: number;
};

function cellClass({ isNumber, isStrong, isQuiet, isWide }: CellProps): string {
  return classNames(
    isNumber && styles.number,
    isStrong && styles.strong,
    isQuiet && styles.quiet,
    isWide && styles.wide,
  );
}

export function ColumnHead(props: CellProps) {
  // A column without a heading is not a heading.
  if (props.children === undefined) return <td className={cellClass(props)} colSpan={props.columns} />;
  return (
    <th scope="col" className={cellClass(props)} colSpan={props.columns}>
      {props.children}
    </th>
  );
}

export function RowHead(props: CellProps) {
  return (
    <th scope="row" className={cellClass(props)} colSpan={props.columns}>
      {props.children}
    </th>
  );
}

export function Cell(props: CellProps) {
  return (
    <td className={cellClass(props)} colSpan={props.columns}>
      {props.children}
    </td>
  );
}
