// A family's spec sheet as a document: which revision it is and whether a job uses it, its packs, checks, lists and pictures.
import { Link, useRouterState } from '@tanstack/react-router';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Notice } from '../../components/Notice.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { ChecksTable } from './ChecksTable.tsx';
import { DraftNotice } from './DraftNotice.tsx';
import { ListsOfSheet } from './ListsOfSheet.tsx';
import { PackSection } from './PackSection.tsx';
import { PicturesOfSheet } from './PicturesOfSheet.tsx';
import styles from './SheetScreen.module.css';
import { useSheetDraft } from './sheet-draft.ts';

declare module '@tanstack/react-router' {
  interface HistoryState {
    /** The number of the revision that was just saved on the way here. */
    savedRevision?: number;
  }
}

/** `number` left out: the newest revision. */
export function SheetScreen({ familyId, number }: { familyId: number; number?: number }) {
  const newest = useRead('specs.getRevision', { familyId });
  const shown = useRead('specs.getRevision', number === undefined ? { familyId } : { familyId, number });
  return (
    <Loaded read={newest}>
      {({ number: newestNumber }) => (
        <Loaded read={shown}>{(revision) => <Sheet revision={revision} newestNumber={newestNumber} />}</Loaded>
      )}
    </Loaded>
  );
}

function Sheet({ revision, newestNumber }: { revision: Revision; newestNumber: number }) {
  const { familyId, number } = revision;
  const draft = useSheetDraft(familyId);
  const savedRevision = useRouterState({ select: ({ location }) => location.state.savedRevision });
  const isNewest = number === newestNumber;
  const { packs, checks, lists, pictures } = revision;
  const isBlank = [packs, checks, lists, pictures].every(({ length }) => length === 0);
  const params = { familyId: String(familyId) };
  const editKey = (words: string) =>
    isNewest &&
    draft.value === null && (
      <LinkKey to="/specs/$familyId/edit" params={params} kind="filled">
        {words}
      </LinkKey>
    );
  return (
    <>
      <PageHead
        title={revision.familyName}
        facts={
          <>
            <b>Revision {number}</b>
            <span>{revision.isFrozen ? 'in use' : 'not in use yet'}</span>
            <span className="quiet">
              saved {sayDayAndTime(revision.savedAt)}, {revision.savedBy}
            </span>
            {revision.sourceNote !== '' && <span className="quiet">{revision.sourceNote}</span>}
          </>
        }
        acts={
          !isBlank && (
            <>
              {isNewest && (
                <LinkKey to="/specs/$familyId/bench-sheet" params={params}>
                  Blank bench sheet
                </LinkKey>
              )}
              <LinkKey to="/specs/$familyId/small-jobs" params={params}>
                Small jobs
              </LinkKey>
              {editKey('Edit the sheet')}
            </>
          )
        }
      />
      <div className={styles.sheet}>
        {savedRevision === number && <Notice kind="done">Revision {number} is saved.</Notice>}
        <Standing revision={revision} newestNumber={newestNumber} />
        {draft.value !== null && isNewest && <DraftNotice familyId={familyId} draft={draft} />}
        <Revisions familyId={familyId} number={number} newestNumber={newestNumber} />
        {revision.packs.length > 0 && (
          <section aria-labelledby="packs">
            <h2 id="packs" className={styles.title}>
              Packs
            </h2>
            {revision.packs.map((pack) => (
              <PackSection key={pack.packId} pack={pack} checks={revision.checks} />
            ))}
          </section>
        )}
        {revision.checks.length > 0 && (
          <section aria-labelledby="checks">
            <h2 id="checks" className={styles.title}>
              Checks
            </h2>
            <ChecksTable checks={revision.checks} />
          </section>
        )}
        <ListsOfSheet lists={revision.lists} />
        <PicturesOfSheet pictures={revision.pictures} />
      </div>
      {isBlank && (
        <EmptyState level={2} title="This sheet is still blank." act={editKey('Fill in the sheet')}>
          A sheet holds the packs of the unit, slot by slot from the piston, the checks with their limits, the lists
          that are gone through, and the shop’s own pictures.
        </EmptyState>
      )}
    </>
  );
}

/** What a person has to know before changing anything. */
function Standing({ revision, newestNumber }: { revision: Revision; newestNumber: number }) {
  const { number, isFrozen } = revision;
  if (number < newestNumber) {
    return (
      <Notice>
        This is how revision {number} stands, as jobs were checked in under it. The newest is revision {newestNumber}.
      </Notice>
    );
  }
  return isFrozen ? <InUse number={number} /> : null;
}

export function InUse({ number }: { number: number }) {
  return (
    <Notice>
      Revision {number} is in use by a job; saving makes revision {number + 1}.
    </Notice>
  );
}

function Revisions({ familyId, number, newestNumber }: { familyId: number; number: number; newestNumber: number }) {
  if (newestNumber < 2) return null;
  const numbers = Array.from({ length: newestNumber }, (_, index) => newestNumber - index);
  return (
    <nav aria-label="Revisions" className={styles.revisions}>
      <span className="quiet">revisions</span>
      {numbers.map((each) => (
        <RevisionLink key={each} familyId={familyId} number={each} isShown={each === number} newest={newestNumber} />
      ))}
    </nav>
  );
}

type RevisionLinkProps = { familyId: number; number: number; isShown: boolean; newest: number };

function RevisionLink({ familyId, number, isShown, newest }: RevisionLinkProps) {
  // The newest one’s address is the beginning of every other’s.
  const current = { activeOptions: { exact: true }, ...(isShown && ({ 'aria-current': 'page' } as const)) };
  const family = String(familyId);
  return number === newest ? (
    <Link to="/specs/$familyId" params={{ familyId: family }} {...current}>
      {number}, the newest
    </Link>
  ) : (
    <Link to="/specs/$familyId/revision/$number" params={{ familyId: family, number: String(number) }} {...current}>
      {number}
    </Link>
  );
}
