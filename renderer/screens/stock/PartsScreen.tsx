// The parts of this shop, found by any fragment of what is known of them.
import { Link, useNavigate } from '@tanstack/react-router';
import { type KeyboardEvent, useCallback, useRef, useState } from 'react';
import { partKinds } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { PartsList } from './PartsList.tsx';
import styles from './PartsScreen.module.css';
import { usePartsView } from './parts-view.ts';
import { StockTabs } from './StockTabs.tsx';
import { useFindCode } from './use-find-code.ts';

export function PartsScreen() {
  const view = usePartsView();
  const [total, setTotal] = useState<number | null>(null);
  const grid = useRef<HTMLTableElement>(null);
  const navigate = useNavigate();
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/stock/parts/new' }), [navigate]),
  );
  const goToList = () => grid.current?.focus();
  return (
    <div className={styles.page}>
      <StockTabs />
      <PageHead
        title="Parts"
        facts={total !== null && total > 0 && countWords(total)}
        acts={
          <LinkKey to="/stock/parts/new" kind="filled" keyHint="N">
            New part
          </LinkKey>
        }
      />
      <Filters view={view} onGoToList={goToList} />
      {total === 0 && <NothingHere view={view} />}
      <div className={total === 0 ? styles.away : styles.list}>
        <PartsList filter={view.filter} at={view.at} onStandAt={view.standAt} grid={grid} onTotal={setTotal} />
      </div>
    </div>
  );
}

type View = ReturnType<typeof usePartsView>;

function Filters({ view, onGoToList }: { view: View; onGoToList: () => void }) {
  const families = useRead('specs.listFamilies', {});
  const box = useRef<HTMLElement>(null);
  const findCode = useFindCode();
  useLetterKey(
    'f',
    useCallback(() => box.current?.querySelector('input')?.focus(), []),
  );
  const { filter, narrow } = view;
  const press = async (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown' || event.key === 'Enter') event.preventDefault();
    if (event.key === 'ArrowDown') onGoToList();
    if (event.key !== 'Enter' || event.repeat || filter.text.trim() === '') return;
    // A scanner ends with Enter, and so does a hand that has typed enough: what the code means, or the list.
    const isFound = await findCode(filter.text.trim()).catch(() => false);
    if (!isFound) onGoToList();
  };
  const everyFamily = 0;
  return (
    <search ref={box} className={styles.search}>
      <div className={styles.find}>
        <TextField
          label="Find by any fragment, or scan a label"
          type="search"
          maxLength={200}
          value={filter.text}
          onChange={(text) => narrow({ text })}
          onKeyDown={(event) => void press(event)}
        />
      </div>
      <Select
        label="Kind"
        options={[{ id: 'every kind', words: 'every kind' }, ...partKinds.map((kind) => ({ id: kind, words: kind }))]}
        value={filter.kind ?? 'every kind'}
        onChange={(kind) => narrow({ kind: kind === 'every kind' ? null : kind })}
      />
      {families.data && families.data.length > 0 && (
        <Select
          label="Fits"
          options={[
            { id: everyFamily, words: 'any family' },
            ...families.data.map(({ familyId, name }) => ({ id: familyId, words: name })),
          ]}
          value={filter.familyId ?? everyFamily}
          onChange={(id) => narrow({ familyId: id === everyFamily ? null : id })}
        />
      )}
      <RadioGroup
        label="Show"
        options={[
          { id: 'in use', words: 'In use' },
          { id: 'low', words: 'Low' },
          { id: 'retired', words: 'Retired' },
        ]}
        value={filter.only}
        onChange={(only) => narrow({ only })}
      />
    </search>
  );
}

function NothingHere({ view }: { view: View }) {
  const { filter, isWhole, widen } = view;
  if (isWhole) {
    return (
      <EmptyState level={2} title="The shelves are empty.">
        Press N, or <Link to="/stock/parts/new">write down the first part</Link>; a list that is already kept somewhere
        comes in whole through <Link to="/stock/import">Import</Link>.
      </EmptyState>
    );
  }
  const text = filter.text.trim();
  const among = filter.only === 'in use' ? 'part' : filter.only === 'low' ? 'part that is low' : 'retired part';
  const narrowed = filter.kind !== null || filter.familyId !== null;
  return (
    <EmptyState
      level={2}
      title={text === '' ? `No ${among} here.` : `No ${among} holds “${text}”${narrowed ? ' here' : ''}.`}
      act={<Button onPress={widen}>Show every part in use</Button>}
    >
      {text === ''
        ? filter.only === 'low'
          ? 'Nothing is at or under its reorder point.'
          : 'Choose another kind or family.'
        : 'Part of a word is enough; try fewer letters.'}
    </EmptyState>
  );
}

function countWords(count: number): string {
  return count === 1 ? '1 part' : `${count.toLocaleString('en-US').replaceAll(',', ' ')} parts`;
}
