// A row of the sheet that is closed: what it says in a line, what is wrong with it, and the key that opens it.
import { memo } from 'react';
import { Button } from '../../components/Button.tsx';
import styles from './EditorRows.module.css';

type ClosedRowProps = {
  /** Of the key, so that the focus can come back to it. */
  id: string;
  name: string;
  /** In small words beside the name. */
  beside?: string;
  said: string;
  problem: string | undefined;
  /** Steady from drawing to drawing. */
  onOpen: (key: number) => void;
  rowKey: number;
};

export const ClosedRow = memo(function ClosedRow({ id, name, beside, said, problem, onOpen, rowKey }: ClosedRowProps) {
  return (
    <div className={styles.closed}>
      <span className={styles.said}>
        <span>
          <span className={styles.name}>{name}</span> <span className="small quiet">{beside}</span>
        </span>
        <span>{said}</span>
        {problem !== undefined && <span className={styles.problem}>{problem}</span>}
      </span>
      <Button id={id} aria-label={`Edit ${name}`} onPress={() => onOpen(rowKey)}>
        Edit
      </Button>
    </div>
  );
});
