// Where the file comes from: chosen, dragged here, or its text pasted.
import { useState } from 'react';
import { type DropItem, DropZone, FileTrigger, Text } from 'react-aria-components';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { Refusal } from '../../components/Refusal.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import styles from './ImportSource.module.css';
import { decodeText, mostCharacters, type SourceText } from './import-source-text.ts';

export function ImportSource({ onTake }: { onTake: (source: SourceText) => void }) {
  const [pasted, setPasted] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);

  const take = (name: string, text: string) => {
    if (text.trim() === '') return setRefusal(`${name} is empty: choose another.`);
    if (text.length > mostCharacters) {
      return setRefusal(`${name} holds more than 3.5 million characters: split it into several files.`);
    }
    onTake({ key: crypto.randomUUID(), name, text });
  };
  const takeFile = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > 4 * mostCharacters) {
      return setRefusal(`${file.name} is too large: split it into several files.`);
    }
    try {
      take(file.name, decodeText(new Uint8Array(await file.arrayBuffer())));
    } catch {
      setRefusal(`${file.name} could not be read: is it still where it was?`);
    }
  };
  const takeDropped = async (items: readonly DropItem[]) => {
    const [item, second] = items;
    if (second) return setRefusal('Drop one file at a time.');
    if (item?.kind === 'file') return takeFile(await item.getFile());
    if (item?.kind === 'text' && item.types.has('text/plain'))
      take('What was dropped', await item.getText('text/plain'));
  };

  return (
    <section className={styles.source} aria-labelledby="take-in">
      <h2 id="take-in">Take a list in</h2>
      <p className="quiet">
        Parts or counts as a CSV file, its first line the headings. You see what every row would do before anything is
        written.
      </p>
      <DropZone className={classNames(styles.drop)} onDrop={({ items }) => void takeDropped(items)}>
        <FileTrigger
          acceptedFileTypes={['text/csv', 'text/plain', 'text/tab-separated-values', '.csv', '.tsv', '.txt']}
          onSelect={(files) => void takeFile(files?.[0])}
        >
          <Button kind="filled" autoFocus>
            Choose a file
          </Button>
        </FileTrigger>
        <Text slot="label">or drag one here</Text>
      </DropZone>
      <TextArea
        label="Or paste its text"
        placeholder={'number,description,cost\nKX3-FR-080,Forward friction,4.10'}
        rows={6}
        value={pasted}
        onChange={(text) => {
          setPasted(text);
          setRefusal(null);
        }}
      />
      <div className={styles.look}>
        <Button isDisabled={pasted.trim() === ''} onPress={() => take('Pasted text', pasted)}>
          Look at what was pasted
        </Button>
      </div>
      {refusal !== null && <Refusal>{refusal}</Refusal>}
    </section>
  );
}
