// The pictures of a sheet being edited: one line each, the open one in full, and the ways for one more to come in.
import { AddPicture } from './AddPicture.tsx';
import { ClosedRow } from './ClosedRow.tsx';
import styles from './EditorRows.module.css';
import type { Editing } from './editing.ts';
import { OpenRow } from './OpenRow.tsx';
import { PictureEditor } from './PictureEditor.tsx';
import { addPicture } from './picture-edits.ts';
import { readPicture, type TypedPicture } from './typed-pictures.ts';
import { useSteady } from './use-steady.ts';

export function PicturesEditor({ editing }: { editing: Editing }) {
  const { sheet, open, change, openRow } = editing;
  const onOpen = useSteady((key: number) => openRow({ kind: 'picture', key }));
  return (
    <section aria-labelledby="pictures">
      <h2 id="pictures" className={styles.title}>
        Pictures
      </h2>
      <ol className={styles.rows}>
        {sheet.pictures.map((picture) => (
          <li key={picture.key}>
            {open?.kind === 'picture' && open.key === picture.key ? (
              <OpenPicture editing={editing} picture={picture} />
            ) : (
              <ClosedRow
                id={editKeyId(picture)}
                name={picture.title}
                said={picture.points.map(({ label }) => label).join(', ') || 'no points yet'}
                problem={Object.values(readPicture(picture, sheet).problems)[0]}
                onOpen={onOpen}
                rowKey={picture.key}
              />
            )}
          </li>
        ))}
      </ol>
      <AddPicture
        onAdd={(title, file) => {
          const added = addPicture(sheet, title, file);
          change(added);
          openRow({ kind: 'picture', key: added.lastKey });
        }}
      />
    </section>
  );
}

function OpenPicture({ editing, picture }: { editing: Editing; picture: TypedPicture }) {
  const { timesAsked, close, focusNext } = editing;
  const onClose = () => {
    close();
    focusNext(() => document.getElementById(editKeyId(picture)));
  };
  return (
    <OpenRow label={picture.title || 'Picture'} onClose={onClose}>
      <PictureEditor key={timesAsked} editing={editing} picture={picture} onClose={onClose} />
    </OpenRow>
  );
}

function editKeyId(picture: TypedPicture): string {
  return `edit-picture-${picture.key}`;
}
