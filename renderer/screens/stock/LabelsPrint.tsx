// The labels as they will come out, page by page, on the size chosen, in as many copies as wanted.
import { useState } from 'react';
import type { Labelled, LabelSize } from '../../../app/stock/lists.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { saveFile, useFileAddress } from '../../rpc/printed-file.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './LabelsPrint.module.css';

const mostCopies = 200;

type LabelsPrintProps = { sizes: readonly LabelSize[]; labels: readonly Labelled[]; copiesAtFirst: number };

export function LabelsPrint({ sizes, labels, copiesAtFirst }: LabelsPrintProps) {
  // A bin label goes on bins the next time too.
  const chosen = useDraft<number | null>(`label size for a ${labels[0]?.kind ?? 'thing'}`, null);
  const size = sizes.find((each) => each.labelSizeId === chosen.value) ?? sizes[0];
  const [typed, setTyped] = useState(String(copiesAtFirst));
  const copies = /^[1-9]\d{0,2}$/.test(typed.trim()) ? Number(typed) : 0;
  const isCounted = copies >= 1 && copies <= mostCopies;
  const printed = useRead(
    'stock.printLabels',
    size && isCounted && labels.length > 0
      ? { labelSizeId: size.labelSizeId, labels: labels.map((of) => ({ of, copies })) }
      : null,
    { keepsLast: true },
  );
  const address = useFileAddress(printed.data);
  if (labels.length === 0) {
    return (
      <EmptyState level={2} title="Nothing is chosen to print.">
        A part, a batch, a can, a plate and a ticket each have a key Label, which brings them here.
      </EmptyState>
    );
  }
  const file = isCounted ? printed.data : undefined;
  return (
    <section className={styles.print} aria-label="What will be printed">
      <div className={styles.choice}>
        <Select
          label="Size"
          options={sizes.map((each) => ({ id: each.labelSizeId, words: each.name }))}
          value={size?.labelSizeId ?? null}
          onChange={chosen.change}
        />
        <TextField
          label="Copies of each"
          inputMode="numeric"
          value={typed}
          onChange={setTyped}
          refusal={isCounted ? null : `Type a number from 1 to ${mostCopies}.`}
        />
        {file && (
          <div className={styles.key}>
            <Button kind="filled" onPress={() => saveFile(file)}>
              Save the PDF
            </Button>
          </div>
        )}
      </div>
      <FailureSentence error={printed.error} />
      {printed.isFetching && !printed.data && (
        <p role="status" className="quiet">
          The labels are being drawn…
        </p>
      )}
      {file && address !== null && (
        <iframe className={styles.preview} src={`${address}#navpanes=0&view=Fit`} title={file.fileName} />
      )}
    </section>
  );
}
