// The loose plates that fit a slot, as keys to press; by keyboard one is picked by a blank and its tag.
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { Button } from '../../components/Button.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './LooseToPick.module.css';
import { type AtHand, canFilling, type Filling, pieceFilling } from './slot-filling.ts';

export function LooseToPick({ atHand, onPick }: { atHand: AtHand; onPick: (filling: Filling) => void }) {
  const { lengthUnit, decimalMark } = useAtCheck().settings;
  const write = (length_nm: number) => formatLength(length_nm, lengthUnit, undefined, decimalMark);
  if (atHand.pieces.length + atHand.cans.length === 0) return null;
  return (
    <section>
      <h2 className={styles.head}>Loose and fitting: press one, or type a blank and its tag</h2>
      <div className={styles.keys}>
        {atHand.pieces.map((piece) => (
          <Button key={piece.pieceId} size="bench" onPress={() => onPick(pieceFilling(piece))}>
            {`${write(piece.height_nm)} ${piece.tag}`.trim()}
          </Button>
        ))}
        {atHand.cans.map((can) => (
          <Button key={`can ${can.canId}`} size="bench" onPress={() => onPick(canFilling(can))}>
            {`can ${write(can.height_nm)} (${can.count})`}
          </Button>
        ))}
      </div>
    </section>
  );
}
