// Says that a sheet was changed and not saved, with the two ways on from there.
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import type { Draft } from '../../text/use-draft.ts';
import styles from './DraftNotice.module.css';
import type { TypedSheet } from './typed-sheet.ts';

type DraftNoticeProps = { familyId: number; draft: Draft<TypedSheet | null> };

export function DraftNotice({ familyId, draft }: DraftNoticeProps) {
  return (
    <div className={styles.draft}>
      <Notice>A draft of this sheet is kept on this machine. Jobs see it only once it is saved.</Notice>
      <LinkKey to="/specs/$familyId/edit" params={{ familyId: String(familyId) }} kind="filled">
        Go on with the draft
      </LinkKey>
      <ThrowAway onThrow={draft.clear} />
    </div>
  );
}

export function ThrowAway({ onThrow }: { onThrow: () => void }) {
  return (
    <PopoverDialog words="Throw the draft away" title="Throw the draft away?">
      {(close) => (
        <>
          <p>Everything typed since the last save goes; the saved revision stays.</p>
          <div className={styles.keys}>
            <Button
              kind="filled"
              autoFocus
              onPress={() => {
                close();
                onThrow();
              }}
            >
              Throw it away
            </Button>
            <Button onPress={close}>Keep it</Button>
          </div>
        </>
      )}
    </PopoverDialog>
  );
}
