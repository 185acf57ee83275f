// One list while it is being edited: its name, when it is gone through, its pack, and its lines one below the other.
import { type Asks, listTimes } from '../../../app/specs/spec-list.ts';
import { Button } from '../../components/Button.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import { AddLine } from './AddLine.tsx';
import { goByKey } from './go-by-key.ts';
import styles from './ListEditor.module.css';
import { addLineTo, changeList } from './list-edits.ts';
import { MoveKeys } from './MoveKeys.tsx';
import { readLine, readList } from './read-typed-sheet.ts';
import { moved, replaced, without } from './sheet-edits.ts';
import { TypedField } from './TypedField.tsx';
import type { TypedLine, TypedList, TypedSheet } from './typed-sheet.ts';

type ListEditorProps = {
  sheet: TypedSheet;
  list: TypedList;
  isAskedFor: boolean;
  onChange: (sheet: TypedSheet) => void;
  onTakeAway: (sheet: TypedSheet, what: string) => void;
  onClose: () => void;
  focusNext: (find: () => Element | null | undefined) => void;
};

const noPack = 0;
const timeOptions = listTimes.map((when) => ({ id: when, words: when }));
const kindOptions: ReadonlyArray<{ id: Asks['kind']; words: string }> = [
  { id: 'tick', words: 'tick' },
  { id: 'count', words: 'count' },
  { id: 'choice', words: 'choice' },
  { id: 'words', words: 'words' },
  { id: 'change', words: 'old → new' },
  { id: 'stall', words: 'stall' },
];

export function ListEditor(props: ListEditorProps) {
  const { sheet, list, isAskedFor, onChange, onTakeAway, onClose, focusNext } = props;
  const { problems } = readList(list, sheet);
  const change = (changed: Partial<TypedList>) => onChange(changeList(sheet, { ...list, ...changed }));
  const packOptions = [
    { id: noPack, words: 'no pack' },
    ...sheet.packs.map(({ key, name }) => ({ id: key, words: name })),
  ];
  return (
    <div>
      <div className={styles.head}>
        <TypedField
          label="List"
          value={list.name}
          onChange={(name) => change({ name })}
          isAskedFor={isAskedFor}
          problem={problems.name}
          autoFocus
        />
        <Select label="Gone through" options={timeOptions} value={list.when} onChange={(when) => change({ when })} />
        <Select
          label="Pack"
          options={packOptions}
          value={list.packKey ?? noPack}
          onChange={(key) => change({ packKey: key === noPack ? null : key })}
        />
        <TypedField label="Source" value={list.sourceNote} onChange={(sourceNote) => change({ sourceNote })} />
      </div>
      <ol aria-label={`Lines of ${list.name}`}>
        {list.lines.map((line) => (
          <LineRow
            key={line.key}
            line={line}
            isAskedFor={isAskedFor}
            onChange={(changed) => change({ lines: replaced(list.lines, changed) })}
            onMove={(by) => change({ lines: moved(list.lines, line.key, by) })}
            onTakeOut={() =>
              onTakeAway(changeList(sheet, { ...list, lines: without(list.lines, line.key) }), `Out: ${line.words}`)
            }
          />
        ))}
      </ol>
      <AddLine
        label="New line"
        words="Add the line"
        draftKey={`new line of list ${list.key} of ${sheet.basis.savedAt}`}
        placeholder="Check balls"
        onAdd={(words, taken) => {
          const added = addLineTo(sheet, list, words);
          onChange(added);
          taken();
          focusNext(() => document.querySelector(`[data-list-line="${added.lastKey}"] button`));
        }}
      />
      <span className={styles.keys}>
        <Button onPress={onClose} keyHint="Esc">
          Close
        </Button>
        <MoveKeys name={list.name} onMove={(by) => onChange({ ...sheet, lists: moved(sheet.lists, list.key, by) })} />
        <Button
          aria-label={`Take off ${list.name}`}
          onPress={() => onTakeAway({ ...sheet, lists: without(sheet.lists, list.key) }, `Off the sheet: ${list.name}`)}
        >
          Take off
        </Button>
      </span>
      {problems.whole !== undefined && isAskedFor && <Refusal>{problems.whole}</Refusal>}
    </div>
  );
}

type LineRowProps = {
  line: TypedLine;
  isAskedFor: boolean;
  onChange: (line: TypedLine) => void;
  onMove: (by: -1 | 1) => void;
  onTakeOut: () => void;
};

const hints: Readonly<Partial<Record<Asks['kind'], string>>> = {
  count: '4',
  choice: 'smooth, scored (off)',
  stall: '2100-2400, 5 s',
};

function LineRow({ line, isAskedFor, onChange, onMove, onTakeOut }: LineRowProps) {
  const { words, kind, expects } = line;
  const { problems } = readLine(line);
  const hint = hints[kind];
  return (
    <li className={styles.line} data-list-line={line.key} onKeyDown={(event) => goByKey(event, onMove, nextEntry)}>
      <TypedField
        label={`Words of ${words}`}
        isLabelHidden
        value={words}
        onChange={(typed) => onChange({ ...line, words: typed })}
        isAskedFor={isAskedFor}
        problem={problems.words}
      />
      <Select
        label={`${words} asks for`}
        isLabelHidden
        options={kindOptions}
        value={kind}
        onChange={(asked) => onChange({ ...line, kind: asked })}
      />
      {hint === undefined ? (
        <span />
      ) : (
        <TypedField
          label={`What ${words} expects`}
          isLabelHidden
          value={expects}
          placeholder={hint}
          onChange={(typed) => onChange({ ...line, expects: typed })}
          isAskedFor={isAskedFor}
          problem={problems.expects}
        />
      )}
      <span className={styles.lineKeys}>
        <MoveKeys name={words} onMove={onMove} />
        <Button aria-label={`Take ${words} out`} onPress={onTakeOut}>
          out
        </Button>
      </span>
    </li>
  );
}

/** The next line, or the entry below the last one. */
const nextEntry = (row: HTMLLIElement) =>
  (row.nextElementSibling ?? row.parentElement?.nextElementSibling)?.querySelector('input');
