// The keys that move a row of the sheet one place earlier or later.
import { Button } from '../../components/Button.tsx';

type MoveKeysProps = {
  /** Of the row. */
  name: string;
  earlier?: string;
  later?: string;
  onMove: (by: -1 | 1) => void;
};

export function MoveKeys({ name, earlier = 'up', later = 'down', onMove }: MoveKeysProps) {
  return (
    <>
      <Button aria-label={`Move ${name} ${earlier}`} onPress={() => onMove(-1)}>
        ↑
      </Button>
      <Button aria-label={`Move ${name} ${later}`} onPress={() => onMove(1)}>
        ↓
      </Button>
    </>
  );
}
