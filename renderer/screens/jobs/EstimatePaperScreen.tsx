// An estimate as it was given, on the screen before it is saved or printed, letter or A4.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { saveFile, useFileAddress } from '../../rpc/printed-file.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ReportScreen.module.css';

export function EstimatePaperScreen({ jobId, number }: { jobId: number; number: number }) {
  const { settings } = useOpenShop();
  const [paper, setPaper] = useState(settings.paper);
  const printed = useRead('jobs.printEstimate', { jobId, number, paper });
  const file = printed.data && { ...printed.data, mediaType: 'application/pdf', base64: printed.data.pdfBase64 };
  const address = useFileAddress(file);
  return (
    <div className={styles.page}>
      <PageHead
        title={`Estimate ${number}`}
        facts={
          <Link to="/jobs/$jobId/estimate" params={{ jobId: String(jobId) }}>
            Back to its lines
          </Link>
        }
        acts={
          <>
            <RadioGroup
              label="Paper"
              isLabelHidden
              options={[
                { id: 'letter', words: 'Letter' },
                { id: 'A4', words: 'A4' },
              ]}
              value={paper}
              onChange={setPaper}
            />
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
