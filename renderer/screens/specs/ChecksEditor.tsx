// The checks of a sheet being edited: one line each under its heading, the open one in full, and the line that adds one.
import { parseLimits } from '../../../app/specs/limits-text.ts';
import { AddLine } from './AddLine.tsx';
import { CheckEditor } from './CheckEditor.tsx';
import { ClosedRow } from './ClosedRow.tsx';
import styles from './EditorRows.module.css';
import type { Editing } from './editing.ts';
import { OpenRow } from './OpenRow.tsx';
import { readCheck } from './read-typed-sheet.ts';
import { addCheck, checkToTakeAfter } from './sheet-edits.ts';
import { howRead, sayLimits } from './sheet-words.ts';
import { limitsField } from './typed-figures.ts';
import type { TypedCheck, TypedSheet } from './typed-sheet.ts';
import { useSteady } from './use-steady.ts';

export function ChecksEditor({ editing }: { editing: Editing }) {
  const { sheet, familyName, open, change, openRow } = editing;
  const onOpen = useSteady((key: number) => openRow({ kind: 'check', key }));
  return (
    <section aria-labelledby="checks">
      <h2 id="checks" className={styles.title}>
        Checks
      </h2>
      <ol className={styles.rows}>
        {sheet.checks.map((check, index) => (
          <li key={check.key}>
            {check.group !== sheet.checks[index - 1]?.group && <p className={styles.heading}>{check.group}</p>}
            {open?.kind === 'check' && open.key === check.key ? (
              <OpenCheck editing={editing} check={check} />
            ) : (
              <ClosedRow
                id={editKeyId(check)}
                name={check.name}
                beside={howRead({ ...check, spots: Number(check.spots) })}
                said={limitsSaid(check, sheet)}
                problem={Object.values(readCheck(check, sheet).problems)[0]}
                onOpen={onOpen}
                rowKey={check.key}
              />
            )}
          </li>
        ))}
      </ol>
      <div id={addLineId}>
        <AddLine
          label="New check"
          words="Add the check"
          draftKey={`new check of ${familyName}`}
          placeholder="Rear end play"
          hint={
            checkToTakeAfter(sheet)
              ? 'Takes heading, unit and way of reading from the check above: name, Enter, limits, Enter.'
              : 'A check is one line of the book: what is read, and what it may be.'
          }
          onAdd={(name, taken) => {
            const added = addCheck(sheet, name);
            change(added);
            taken();
            openRow({ kind: 'check', key: added.lastKey });
          }}
        />
      </div>
    </section>
  );
}

const addLineId = 'new-check';

function OpenCheck({ editing, check }: { editing: Editing; check: TypedCheck }) {
  const { sheet, timesAsked, change, takeAway, close, focusNext, pointOut } = editing;
  const closeTo = (find: () => Element | null | undefined) => {
    close();
    focusNext(find);
  };
  const onClose = () => closeTo(() => document.getElementById(editKeyId(check)));
  return (
    <OpenRow label={check.name} onClose={onClose}>
      <CheckEditor
        key={timesAsked}
        sheet={sheet}
        check={check}
        isAskedFor={timesAsked > 0}
        onChange={change}
        onTakeAway={takeAway}
        onDone={() => closeTo(() => document.getElementById(addLineId)?.querySelector('input'))}
        onRefused={() => pointOut({ kind: 'check', key: check.key })}
        onClose={onClose}
      />
    </OpenRow>
  );
}

/** As understood, or as typed while it is not. */
function limitsSaid(check: TypedCheck, sheet: TypedSheet): string {
  const field = limitsField(check, sheet);
  const limits = parseLimits(check.limits, field);
  return limits.ok ? sayLimits(limits.value, field) : check.limits;
}

function editKeyId(check: TypedCheck): string {
  return `edit-check-${check.key}`;
}
