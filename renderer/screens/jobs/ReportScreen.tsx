// A build report on the screen before it is saved or printed: the shop's copy or the customer's, letter or A4.
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { saveFile, useFileAddress } from '../../rpc/printed-file.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ReportScreen.module.css';

type ReportScreenProps = { jobId: number; copy: 'shop' | 'customer' };

export function ReportScreen({ jobId, copy }: ReportScreenProps) {
  const { settings } = useOpenShop();
  const [paper, setPaper] = useState(settings.paper);
  const navigate = useNavigate();
  const job = useRead('jobs.getJob', { jobId });
  const report = useRead('jobs.printBuildReport', { jobId, copy, paper });
  const file = report.data && { ...report.data, mediaType: 'application/pdf', base64: report.data.pdfBase64 };
  const address = useFileAddress(file);
  const params = { jobId: String(jobId) };
  return (
    <div className={styles.page}>
      <PageHead
        title="Build report"
        facts={
          <Link to="/jobs/$jobId" params={params}>
            Job {job.data?.number ?? ''}
          </Link>
        }
        acts={
          <>
            <RadioGroup
              label="Copy"
              isLabelHidden
              options={[
                { id: 'shop', words: 'Shop’s copy' },
                { id: 'customer', words: 'Customer’s copy' },
              ]}
              value={copy}
              onChange={(chosen) =>
                void navigate({ to: '/jobs/$jobId/report/$copy', params: { ...params, copy: chosen }, replace: true })
              }
            />
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
        {report.isPending && (
          <p role="status" className="quiet">
            The pages are being drawn…
          </p>
        )}
        {file && address !== null && (
          <iframe className={styles.preview} src={`${address}#navpanes=0&view=FitH`} title={file.fileName} />
        )}
        <FailureSentence error={report.error} />
      </div>
    </div>
  );
}
