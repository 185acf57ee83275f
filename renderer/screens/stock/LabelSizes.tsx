// The sizes of label this shop sticks on, added and measured again as the rolls change.
import { useState } from 'react';
import type { LabelSize } from '../../../app/stock/lists.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './LabelSizes.module.css';

export function LabelSizes({ sizes }: { sizes: readonly LabelSize[] }) {
  const say = useSideWords();
  return (
    <section className={styles.sizes} aria-labelledby="label-sizes">
      <h2 id="label-sizes">Label sizes</h2>
      <Table label="Label sizes">
        <thead>
          <tr>
            <ColumnHead>name</ColumnHead>
            <ColumnHead isNumber>mm</ColumnHead>
            <ColumnHead />
          </tr>
        </thead>
        <tbody>
          {sizes.map((size) => (
            <tr key={size.labelSizeId} className={styles.size}>
              <RowHead>{size.name}</RowHead>
              <Cell isNumber>
                {say(size.width_um)} × {say(size.height_um)}
              </Cell>
              <Cell isNumber>
                <PopoverDialog words="Change…" title={size.name}>
                  {(close) => <SizeForm size={size} onDone={close} />}
                </PopoverDialog>
              </Cell>
            </tr>
          ))}
        </tbody>
      </Table>
      <div>
        <PopoverDialog words="Add a size…" title="A new label size">
          {(close) => <SizeForm size={null} onDone={close} />}
        </PopoverDialog>
      </div>
    </section>
  );
}

function SizeForm({ size, onDone }: { size: LabelSize | null; onDone: () => void }) {
  const say = useSideWords();
  const [typed, setTyped] = useState({
    name: size?.name ?? '',
    width: size ? say(size.width_um) : '',
    height: size ? say(size.height_um) : '',
  });
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.saveLabelSize');
  const keep = () => {
    setTried(true);
    if (Object.values(typed).some((each) => each.trim() === '')) return;
    write.mutate({ labelSizeId: size?.labelSizeId ?? null, ...typed, by: person.personId }, { onSuccess: onDone });
  };
  const refusals = (['name', 'width', 'height'] as const).map((field) => refusalAbout(field, write.error));
  const [aboutName, aboutWidth, aboutHeight] = refusals;
  const missing = (text: string, sentence: string) => (isTried && text.trim() === '' ? sentence : null);
  return (
    <EnterThrough label="Label size" onFinish={keep} className={styles.form}>
      <TextField
        label="Name"
        value={typed.name}
        onChange={(name) => setTyped({ ...typed, name })}
        refusal={aboutName ?? missing(typed.name, 'Give it a name, such as where it is stuck.')}
      />
      <TextField
        label="Width"
        unit="mm"
        hint="Or with a unit: 2 in."
        value={typed.width}
        onChange={(width) => setTyped({ ...typed, width })}
        refusal={aboutWidth ?? missing(typed.width, 'Measure how wide it is.')}
      />
      <TextField
        label="Height"
        unit="mm"
        value={typed.height}
        onChange={(height) => setTyped({ ...typed, height })}
        refusal={aboutHeight ?? missing(typed.height, 'Measure how high it is.')}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Keep this size
      </Button>
      {refusals.every((each) => each === null) && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}

/** Writes micrometres as millimetres, without decimals that say nothing. */
function useSideWords(): (side_um: number) => string {
  const { settings } = useOpenShop();
  return (side_um) => String(side_um / 1000).replace('.', settings.decimalMark);
}
