// A build report on the screen before it is saved or printed: the shop's copy or the customer's, letter or A4.
import { Link, useNavigate } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ReportScreen.module.css';

type ReportScreenProps = { jobId: number; copy: 'shop' | 'customer' };

export function ReportScreen({ jobId, copy }: ReportScreenProps) {
  const { settings } = useOpenShop();
  const [paper, setPaper] = useState(settings.paper);
  const navigate = useNavigate();
  const job = useRead('jobs.getJob', { jobId });
  const report = useRead('jobs.printBuildReport', { jobId, copy, paper });
  const address = usePdfAddress(report.data);
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
            {report.data && address !== null && (
              <Button kind="filled" onPress={() => save(address, report.data.fileName)}>
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
        {report.data && address !== null && (
          <iframe className={styles.preview} src={`${address}#navpanes=0&view=FitH`} title={report.data.fileName} />
        )}
        <FailureSentence error={report.error} />
      </div>
    </div>
  );
}

type Printed = Output<'jobs.printBuildReport'>;

/** A local address for the PDF while it is shown; null until there is one. */
function usePdfAddress(report: Printed | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  const pdfBase64 = report?.pdfBase64;
  useEffect(() => {
    if (pdfBase64 === undefined) return;
    const bytes = Uint8Array.from(atob(pdfBase64), (letter) => letter.charCodeAt(0));
    const made = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
    setAddress(made);
    return () => {
      setAddress(null);
      URL.revokeObjectURL(made);
    };
  }, [pdfBase64]);
  return address;
}

function save(address: string, fileName: string): void {
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
}
