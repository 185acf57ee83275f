// A paper on the screen before it is saved or printed, in letter or A4.
import { type ReactNode, useState } from 'react';
import type { Input } from '../../app/contract/contract.ts';
import { Button } from '../components/Button.tsx';
import { PaperChoice } from '../components/PaperChoice.tsx';
import { saveFile, useFileAddress } from '../rpc/printed-file.ts';
import { useRead } from '../rpc/use-read.ts';
import { FailureSentence } from './FailureSentence.tsx';
import { useOpenShop } from './open-shop.ts';
import { PageHead } from './PageHead.tsx';
import styles from './PrintedPaper.module.css';

type PrintedPaperProps = {
  title: string;
  facts: ReactNode;
  /** What else there is to choose, before the paper's size. */
  acts?: ReactNode;
} & (
  | { method: 'jobs.printBuildReport'; of: Input<'jobs.printBuildReport'> }
  | { method: 'jobs.printEstimate'; of: Input<'jobs.printEstimate'> }
  | { method: 'packs.printPullList'; of: Input<'packs.printPullList'> }
  | { method: 'jobs.printBuildSheet'; of: Input<'jobs.printBuildSheet'> }
  | { method: 'jobs.printBenchSheet'; of: Input<'jobs.printBenchSheet'> }
  | { method: 'comebacks.printToCall'; of: Input<'comebacks.printToCall'> }
  | { method: 'comebacks.printReport'; of: Input<'comebacks.printReport'> }
);

export function PrintedPaper({ title, facts, acts, method, of }: PrintedPaperProps) {
  const { settings } = useOpenShop();
  const [paper, setPaper] = useState(settings.paper);
  const printed = useRead(method, { ...of, paper });
  const file = printed.data && { ...printed.data, mediaType: 'application/pdf', base64: printed.data.pdfBase64 };
  const address = useFileAddress(file);
  return (
    <div className={styles.page}>
      <PageHead
        title={title}
        facts={facts}
        acts={
          <>
            {acts}
            <PaperChoice isLabelHidden value={paper} onChange={setPaper} />
            {file && (
              <Button kind="filled" onPress={() => saveFile(file)}>
                Save the PDF
              </Button>
            )}
          </>
        }
      />
      <div className={styles.sheet}>
        {printed.isPending && (
          <p role="status" className="quiet">
            The pages are being drawn…
          </p>
        )}
        {file && address !== null && (
          <iframe className={styles.preview} src={`${address}#navpanes=0&view=FitH`} title={file.fileName} />
        )}
        <FailureSentence error={printed.error} />
      </div>
    </div>
  );
}
