// The lists of a sheet being edited: one line each, the open one in full, the line that adds one, and a set to start from.
import { tradeLists } from '../../../app/specs/trade-lists.ts';
import { Button } from '../../components/Button.tsx';
import { AddLine } from './AddLine.tsx';
import { ClosedRow } from './ClosedRow.tsx';
import styles from './EditorRows.module.css';
import type { Editing } from './editing.ts';
import { ListEditor } from './ListEditor.tsx';
import { addList, layInLists } from './list-edits.ts';
import { OpenRow } from './OpenRow.tsx';
import { readList } from './read-typed-sheet.ts';
import type { TypedList } from './typed-sheet.ts';
import { useSteady } from './use-steady.ts';

export function ListsEditor({ editing }: { editing: Editing }) {
  const { sheet, familyName, open, change, openRow, focusNext } = editing;
  const onOpen = useSteady((key: number) => openRow({ kind: 'list', key }));
  return (
    <section aria-labelledby="lists">
      <h2 id="lists" className={styles.title}>
        Lists
      </h2>
      <ol className={styles.rows}>
        {sheet.lists.map((list) => (
          <li key={list.key}>
            {open?.kind === 'list' && open.key === list.key ? (
              <OpenList editing={editing} list={list} />
            ) : (
              <ClosedRow
                id={editKeyId(list.key)}
                name={list.name}
                beside={list.sourceNote}
                said={`${list.when}, ${list.lines.length} ${list.lines.length === 1 ? 'line' : 'lines'}`}
                problem={Object.values(readList(list, sheet).problems)[0]}
                onOpen={onOpen}
                rowKey={list.key}
              />
            )}
          </li>
        ))}
      </ol>
      {sheet.lists.length === 0 && (
        <p>
          <Button
            onPress={() => {
              const laidIn = layInLists(sheet, tradeLists(sheet.packs));
              change(laidIn);
              focusNext(() => document.getElementById(editKeyId(laidIn.lists[0]?.key ?? 0)));
            }}
          >
            Lay in the usual lists
          </Button>{' '}
          <span className="small quiet">
            Teardown, each pack before its snap ring, valve body, converter, cooler, final: common practice, no source.
          </span>
        </p>
      )}
      <AddLine
        label="New list"
        words="Add the list"
        draftKey={`new list of ${familyName}`}
        placeholder="Valve body"
        hint="A list is what is counted, looked at or noted beside the numbers that have limits."
        onAdd={(name, taken) => {
          const added = addList(sheet, name);
          change(added);
          taken();
          openRow({ kind: 'list', key: added.lastKey });
        }}
      />
    </section>
  );
}

function OpenList({ editing, list }: { editing: Editing; list: TypedList }) {
  const { sheet, timesAsked, change, takeAway, close, focusNext } = editing;
  const onClose = () => {
    close();
    focusNext(() => document.getElementById(editKeyId(list.key)));
  };
  return (
    <OpenRow label={list.name} onClose={onClose}>
      <ListEditor
        key={timesAsked}
        sheet={sheet}
        list={list}
        isAskedFor={timesAsked > 0}
        onChange={change}
        onTakeAway={takeAway}
        onClose={onClose}
        focusNext={focusNext}
      />
    </OpenRow>
  );
}

function editKeyId(key: number): string {
  return `edit-list-${key}`;
}
