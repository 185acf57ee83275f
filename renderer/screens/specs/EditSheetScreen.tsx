// A family's sheet while it is being edited: one draft, kept as typed, until one save makes it the newest revision.
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { ChecksEditor } from './ChecksEditor.tsx';
import styles from './EditSheetScreen.module.css';
import type { Editing, Row } from './editing.ts';
import { useFocusNext } from './focus-next.ts';
import { ListsEditor } from './ListsEditor.tsx';
import { PacksEditor } from './PacksEditor.tsx';
import { PicturesEditor } from './PicturesEditor.tsx';
import { readSheet } from './read-typed-sheet.ts';
import { SaveBar, undoKeyId } from './SaveBar.tsx';
import { InUse } from './SheetScreen.tsx';
import { useSheetDraft } from './sheet-draft.ts';
import { type TypedSheet, typedSheet } from './typed-sheet.ts';
import { useSteady } from './use-steady.ts';

export function EditSheetScreen({ familyId }: { familyId: number }) {
  const newest = useRead('specs.getRevision', { familyId });
  return <Loaded read={newest}>{(revision) => <EditSheet key={familyId} revision={revision} />}</Loaded>;
}

function EditSheet({ revision }: { revision: Revision }) {
  const { familyId, familyName, number, isFrozen } = revision;
  const { settings } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const draft = useSheetDraft(familyId);
  const saved = useMemo(() => typedSheet(revision, settings), [revision, settings]);
  const sheet = draft.value ?? saved;
  const save = useWrite('specs.saveSheet');
  const body = useRef<HTMLDivElement>(null);
  const focusNext = useFocusNext();
  const [open, setOpen] = useState<Row | null>(null);
  const [timesAsked, setTimesAsked] = useState(0);
  const [taken, setTaken] = useState<{ what: string; before: TypedSheet } | null>(null);
  const [isSaveAsked, setSaveAsked] = useState(false);
  const { value, problems } = readSheet(sheet);

  const change = (changed: TypedSheet) => {
    setSaveAsked(false);
    setTaken(null);
    if (save.isError) save.reset();
    draft.change(changed);
  };
  const pointOut = (row: Row) => {
    setOpen(row);
    setTimesAsked(timesAsked + 1);
    focusNext(() => body.current?.querySelector('[data-open] :is([aria-invalid="true"], [role="alert"])'));
  };
  const editing: Editing = {
    sheet,
    familyName,
    open,
    timesAsked,
    change,
    takeAway: (changed, what) => {
      change(changed);
      setTaken({ what, before: sheet });
      focusNext(() => document.getElementById(undoKeyId));
      setOpen((row) =>
        row &&
        [...changed.packs, ...changed.checks, ...changed.lists, ...changed.pictures].some(({ key }) => key === row.key)
          ? row
          : null,
      );
    },
    openRow: (row) => {
      setTimesAsked(0);
      setOpen(row);
    },
    close: () => setOpen(null),
    focusNext,
    pointOut,
  };

  const putBack = (before: TypedSheet) => {
    change(before);
    focusNext(() => body.current?.querySelector('[data-open] input') ?? body.current?.querySelector('input'));
  };

  const trySave = () => {
    if (save.isPending || draft.value === null) return;
    setSaveAsked(true);
    save.reset();
    const [first] = problems;
    if (first) pointOut(first);
    if (value === null) return;
    const input = { familyId, sheet: value, sourceNote: sheet.sourceNote, by: person.personId };
    save.mutate(input, {
      onSuccess: ({ number }) => {
        draft.clear();
        void navigate({
          to: '/specs/$familyId',
          params: { familyId: String(familyId) },
          state: { savedRevision: number },
        });
      },
    });
  };
  useSaveKey(trySave);

  const isOvertaken = draft.value !== null && save.isIdle && sheet.basis.savedAt !== revision.savedAt;
  return (
    <div className={styles.screen}>
      <PageHead
        title={familyName}
        facts={
          <>
            <b>{isFrozen ? `Toward revision ${number + 1}` : `Revision ${number}`}</b>
            <span className="quiet">{draft.value === null ? 'nothing changed yet' : 'draft, kept as you type'}</span>
          </>
        }
        acts={
          <LinkKey to="/specs/$familyId" params={{ familyId: String(familyId) }}>
            Back to the sheet
          </LinkKey>
        }
      />
      <div ref={body} className={styles.body}>
        {isFrozen && <InUse number={number} />}
        {isOvertaken && (
          <Notice>
            This draft began from revision {sheet.basis.number}, and the sheet was saved again since. Saving puts the
            draft in its place.
          </Notice>
        )}
        <TextField
          label="Source of the sheet"
          hint="The book, bulletin or person these figures come from."
          value={sheet.sourceNote}
          onChange={(sourceNote) => change({ ...sheet, sourceNote })}
          maxLength={200}
        />
        <PacksEditor editing={editing} />
        <ChecksEditor editing={editing} />
        <ListsEditor editing={editing} />
        <PicturesEditor editing={editing} />
      </div>
      <SaveBar
        words={isFrozen ? `Save as revision ${number + 1}` : `Save revision ${number}`}
        isChanged={draft.value !== null}
        isNext={open === null}
        isSaving={save.isPending}
        problems={isSaveAsked ? problems.map(({ sentence }) => sentence) : []}
        error={save.error}
        taken={taken && { what: taken.what, undo: () => putBack(taken.before) }}
        onSave={trySave}
        onThrow={() => {
          setTaken(null);
          setOpen(null);
          save.reset();
          draft.clear();
        }}
      />
    </div>
  );
}

function useSaveKey(save: () => void): void {
  const newest = useSteady(save);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== 's' || !(event.ctrlKey || event.metaKey)) return;
      event.preventDefault();
      if (!event.repeat) newest();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [newest]);
}
