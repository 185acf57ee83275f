// The packs of a job: what sits in each to scale, every mock-up with its prediction beside its reading, and what the
// readings decided between.
import { Link } from '@tanstack/react-router';
import { stackUp } from '../../../app/charts/stack-up.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { MockUp, PackOfJob } from '../../../app/packs/packs.contract.ts';
import { slotName } from '../../../app/packs/slot-name.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { classNames } from '../../components/class-names.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { MockUps } from '../../packs/MockUps.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { amountWords } from '../../text/amount-words.ts';
import page from './JobScreen.module.css';
import styles from './PacksOfJob.module.css';

export function PacksOfJob({ job }: { job: Job }) {
  const firstBuilt = job.packs.findIndex((pack) => pack.mockUpNumber !== null);
  return (
    <section className={classNames(page.side, page.packs)} aria-label="Packs and variants">
      {job.variants.length > 0 && (
        <>
          <h2>Variants it carries</h2>
          <dl className={styles.variants}>
            {job.variants.map(({ checkName, variantName }) => (
              <div key={checkName}>
                <dt>{checkName}</dt>
                <dd>{variantName}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      {job.packs.length > 0 && <h2>Packs</h2>}
      {firstBuilt >= 0 && (
        <Link to="/bench/$jobId/swaps" params={{ jobId: String(job.jobId) }}>
          What to swap, all packs
        </Link>
      )}
      {job.packs.map((pack, index) => (
        <Disclosure
          key={pack.packId}
          words={`${pack.name}, ${mockUpWords(pack.mockUpNumber)}`}
          isOpenAtFirst={index === firstBuilt}
        >
          <PackSide job={job} packId={pack.packId} />
        </Disclosure>
      ))}
    </section>
  );
}

function PackSide({ job, packId }: { job: Job; packId: number }) {
  const { jobId } = job;
  const pack = useRead('packs.getPack', { jobId, packId });
  return (
    <Loaded read={pack}>
      {(known) => {
        const newest = known.mockUps.at(-1);
        return (
          <div className={styles.pack}>
            {newest ? (
              <>
                <PackDrawing pack={known} mockUp={newest} />
                <MockUps
                  pack={known}
                  check={job.checks.find(({ checkId }) => checkId === known.checkId) ?? null}
                  size="small"
                />
                <Sentences pack={known} newest={newest} />
              </>
            ) : (
              <p className="small quiet">Nothing is entered yet: what sits in it is typed at the bench.</p>
            )}
            <p>
              <LinkKey to="/jobs/$jobId/clutch/$packId" params={{ jobId: String(jobId), packId: String(packId) }}>
                The clutch, estimates
              </LinkKey>
            </p>
            {known.ruleSentences.map((sentence) => (
              <p key={sentence} className="small quiet">
                {sentence}
              </p>
            ))}
          </div>
        );
      }}
    </Loaded>
  );
}

function PackDrawing({ pack, mockUp }: { pack: PackOfJob; mockUp: MockUp }) {
  const words = useLengthWords();
  const pieces = pack.slots.flatMap((slot, index) => {
    const sitting = mockUp.pieces.find((each) => each.slotId === slot.slotId);
    if (!sitting) return [];
    const { tag, height_nm } = sitting.piece;
    return [
      {
        kind: slot.kind,
        label: slotName(pack.slots, index),
        height_nm,
        ...(tag !== '' && { tag }),
        ...(sitting.isNew && { change: 'enters' as const }),
      },
    ];
  });
  const clearance_nm = mockUp.read?.mean_nm ?? mockUp.predicted?.mean_nm ?? null;
  const draw = (width: number) =>
    stackUp(
      { pieces, clearance_nm },
      {
        name: '',
        width,
        height: 260,
        medium: 'screen',
        clearanceLabel: mockUp.read ? 'clearance, read' : 'should read',
        write: words.full,
      },
    );
  return <FittedChart draw={draw} least={200} />;
}

/** What breaks the family's rules, and what to look at when a reading missed its prediction. */
function Sentences({ pack, newest }: { pack: PackOfJob; newest: MockUp }) {
  const missed = pack.mockUps.filter((mockUp) => mockUp.suspects.length > 0);
  return (
    <>
      {newest.brokenRules.map((sentence) => (
        <p key={sentence} className="small">
          <b>Against the family’s rule:</b> {sentence}
        </p>
      ))}
      {missed.map((mockUp) => (
        <div key={mockUp.mockUpId} className="small">
          <p>
            <b>{mockUp.number === 0 ? 'As found' : `Mock-up ${mockUp.number}`} read far from what it should.</b> Look
            first at:
          </p>
          <ol className={styles.suspects}>
            {mockUp.suspects.map((suspect) => (
              <li key={suspect}>{suspect}</li>
            ))}
          </ol>
        </div>
      ))}
    </>
  );
}

function useLengthWords() {
  const { settings } = useOpenShop();
  return amountWords({ quantity: 'length', unit: settings.lengthUnit }, settings);
}

function mockUpWords(number: number | null): string {
  if (number === null) return 'nothing entered';
  return number === 0 ? 'as found' : `mock-up ${number}`;
}
