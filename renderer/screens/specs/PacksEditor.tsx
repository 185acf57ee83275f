// The packs of a sheet being edited: one line each, the open one in full, and the line that adds one.
import { AddLine } from './AddLine.tsx';
import { ClosedRow } from './ClosedRow.tsx';
import styles from './EditorRows.module.css';
import type { Editing } from './editing.ts';
import { OpenRow } from './OpenRow.tsx';
import { clearanceKeyId, PackEditor } from './PackEditor.tsx';
import { patternWords } from './pack-pattern.ts';
import { readPack } from './read-typed-sheet.ts';
import { addPack } from './sheet-edits.ts';
import type { TypedPack } from './typed-sheet.ts';
import { useSteady } from './use-steady.ts';

export function PacksEditor({ editing }: { editing: Editing }) {
  const { sheet, familyName, open, change, openRow } = editing;
  const onOpen = useSteady((key: number) => openRow({ kind: 'pack', key }));
  const isBlank = sheet.packs.length === 0;
  return (
    <section aria-labelledby="packs">
      <h2 id="packs" className={styles.title}>
        Packs
      </h2>
      <ol className={styles.rows}>
        {sheet.packs.map((pack) => (
          <li key={pack.key}>
            {open?.kind === 'pack' && open.key === pack.key ? (
              <OpenPack editing={editing} pack={pack} />
            ) : (
              <ClosedRow
                id={editKeyId(pack)}
                name={pack.name}
                said={patternWords(pack.slots.map((slot) => slot.kind))}
                problem={Object.values(readPack(pack, sheet).problems)[0]}
                onOpen={onOpen}
                rowKey={pack.key}
              />
            )}
          </li>
        ))}
      </ol>
      <AddLine
        label="New pack"
        words="Add the pack"
        draftKey={`new pack of ${familyName}`}
        placeholder="Forward"
        isFilled={isBlank}
        autoFocus={isBlank && sheet.checks.length === 0}
        hint={isBlank ? 'A pack is what lies between one piston and its snap ring: name it as the shop does.' : ''}
        onAdd={(name, taken) => {
          const added = addPack(sheet, name, familyName);
          change(added);
          taken();
          openRow({ kind: 'pack', key: added.packs.at(-1)?.key ?? 0 });
        }}
      />
    </section>
  );
}

function OpenPack({ editing, pack }: { editing: Editing; pack: TypedPack }) {
  const { sheet, timesAsked, change, takeAway, openRow, close, focusNext } = editing;
  const onDone = () => {
    close();
    focusNext(() => document.getElementById(editKeyId(pack)));
  };
  return (
    <OpenRow label={pack.name} onClose={onDone}>
      <PackEditor
        key={timesAsked}
        sheet={sheet}
        pack={pack}
        isAskedFor={timesAsked > 0}
        onChange={change}
        onTakeAway={takeAway}
        onOpenCheck={(key) => openRow({ kind: 'check', key })}
        onLaidOut={() => focusNext(() => document.getElementById(clearanceKeyId))}
        onDone={onDone}
      />
    </OpenRow>
  );
}

function editKeyId(pack: TypedPack): string {
  return `edit-pack-${pack.key}`;
}
