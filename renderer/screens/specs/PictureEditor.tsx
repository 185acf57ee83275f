// One picture while it is being edited: its title, its points on it, and a line for each point with what it names.
import { Button } from '../../components/Button.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import type { Editing } from './editing.ts';
import { MoveKeys } from './MoveKeys.tsx';
import styles from './Pictures.module.css';
import { PointBoard, pointKeyId } from './PointBoard.tsx';
import { addPoint, changePicture, changePoint, removePoint } from './picture-edits.ts';
import { moved, without } from './sheet-edits.ts';
import { TypedField } from './TypedField.tsx';
import { nameableRows, readPicture, type TypedPicture, type TypedPoint } from './typed-pictures.ts';

type PictureEditorProps = { editing: Editing; picture: TypedPicture; onClose: () => void };

const middle = { x_permille: 500, y_permille: 500 };

export function PictureEditor({ editing, picture, onClose }: PictureEditorProps) {
  const { sheet, timesAsked, change, takeAway, focusNext } = editing;
  const { problems } = readPicture(picture, sheet);
  const add = (place: typeof middle) => {
    const added = addPoint(sheet, picture, place);
    change(added);
    focusNext(() => document.getElementById(lineId(added.lastKey))?.querySelector('input'));
  };
  return (
    <div className={styles.editor}>
      <TypedField
        label="Title"
        placeholder="Pump face"
        value={picture.title}
        problem={problems.title}
        onChange={(title) => change(changePicture(sheet, { ...picture, title }))}
        isAskedFor={timesAsked > 0}
        autoFocus
      />
      <PointBoard
        picture={picture}
        onPlace={add}
        onMove={(point) => change(changePoint(sheet, picture, point))}
        onDone={(key) => document.getElementById(lineId(key))?.querySelector('input')?.focus()}
      />
      <p className="small quiet">
        A click on the picture puts a point there. Arrow keys move the chosen point, with Shift in larger steps.
      </p>
      <ol className={styles.points} aria-label="Points">
        {picture.points.map((point) => (
          <li key={point.key} id={lineId(point.key)}>
            <PointLine editing={editing} picture={picture} point={point} />
          </li>
        ))}
      </ol>
      {problems.whole !== undefined && <Refusal>{problems.whole}</Refusal>}
      <div className={styles.keys}>
        <Button onPress={() => add(middle)}>Add a point</Button>
        <Button keyHint="Esc" onPress={onClose}>
          Close
        </Button>
        <MoveKeys
          name={picture.title}
          onMove={(by) => change({ ...sheet, pictures: moved(sheet.pictures, picture.key, by) })}
        />
        <Button
          aria-label={`Take off ${picture.title}`}
          onPress={() =>
            takeAway({ ...sheet, pictures: without(sheet.pictures, picture.key) }, `Off the sheet: ${picture.title}`)
          }
        >
          Take off
        </Button>
      </div>
    </div>
  );
}

const nothing = 0;

function PointLine({ editing, picture, point }: { editing: Editing; picture: TypedPicture; point: TypedPoint }) {
  const { sheet, change, focusNext } = editing;
  const put = (changed: Partial<TypedPoint>) => change(changePoint(sheet, picture, { ...point, ...changed }));
  const rows = nameableRows(sheet).map(({ key, words }) => ({ id: key, words }));
  const isNamed = rows.some(({ id }) => id === point.namesKey);
  return (
    <fieldset className={styles.point} aria-label={`Point ${point.label}`}>
      <TextField label="Label" value={point.label} onChange={(label) => put({ label })} maxLength={12} />
      <Select
        label="Names"
        options={[{ id: nothing, words: 'nothing' }, ...rows]}
        value={isNamed ? point.namesKey : nothing}
        onChange={(key) => put({ namesKey: key === nothing ? null : key })}
      />
      <TextField label="Remark" value={point.note} onChange={(note) => put({ note })} maxLength={200} />
      <span className={styles.keys}>
        <Button
          aria-label={`Move ${point.label} on the picture`}
          onPress={() => document.getElementById(pointKeyId(point.key))?.focus()}
        >
          Move
        </Button>
        <Button
          aria-label={`Remove ${point.label}`}
          onPress={() => {
            change(removePoint(sheet, picture, point.key));
            focusNext(() => document.querySelector('[data-open] input'));
          }}
        >
          Remove
        </Button>
      </span>
    </fieldset>
  );
}

function lineId(key: number): string {
  return `point-line-${key}`;
}
