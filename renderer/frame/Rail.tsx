// The left rail: the places, the light, who is at the bench.
import { Link } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import { Menu } from '../components/Menu.tsx';
import { useAtBench } from './at-bench.ts';
import { BackupAge } from './BackupAge.tsx';
import { FindAnything } from './FindAnything.tsx';
import { forgetKeptViews } from './kept-view.ts';
import { NewVersion } from './NewVersion.tsx';
import { useOpenShop } from './open-shop.ts';
import { places } from './places.ts';
import styles from './Rail.module.css';
import { keepTheme, useTheme } from './theme.ts';
import { useLetterKey } from './use-letter-key.ts';

export function Rail() {
  const shop = useOpenShop();
  return (
    <nav className={styles.rail} aria-label="Places">
      <p className={styles.name}>Thoubook</p>
      <FindAnything keyClass={styles.find} />
      <ul>
        {places.map((place) => (
          <li key={place.path}>
            <Link
              to={place.path}
              className={styles.place}
              onClick={forgetKeptViews}
              activeProps={{ 'aria-current': 'page' }}
            >
              {place.name}
            </Link>
          </li>
        ))}
      </ul>
      <div className={styles.foot}>
        <ThemeSwitch />
        <AtBench />
        <NewVersion className={styles.backup} />
        {shop.isDemo ? <p className={styles.demo}>Demo shop</p> : <BackupAge className={styles.backup} />}
      </div>
    </nav>
  );
}

function ThemeSwitch() {
  const other = useTheme() === 'bay' ? 'paper' : 'bay';
  return (
    <button type="button" className={styles.footKey} onClick={() => keepTheme(other)}>
      {other === 'bay' ? 'Bay light' : 'Paper light'}
    </button>
  );
}

function AtBench() {
  const { people } = useOpenShop();
  const { person, choose } = useAtBench();
  const [isOpen, setOpen] = useState(false);
  useLetterKey(
    'i',
    useCallback(() => setOpen(true), []),
  );
  const items = people
    .filter((each) => !each.isRetired)
    .map((each) => ({ id: each.personId, words: each.name, keyHint: each.initials }));
  return (
    <Menu
      label={`${person.initials}: ${person.name} is at the bench`}
      words={person.initials}
      keyClass={styles.footKey}
      items={items}
      onChoose={choose}
      isOpen={isOpen}
      onOpenChange={setOpen}
    />
  );
}
