// Sides of one thing, one shown at a time.
import type { ReactNode } from 'react';
import { Tabs as AriaTabs, Tab, TabList, TabPanel } from 'react-aria-components';
import { classNames } from './class-names.ts';
import styles from './Tabs.module.css';

export type TabSide<K extends string> = { id: K; words: string; content: ReactNode };

type TabsProps<K extends string> = {
  label: string;
  sides: readonly TabSide<K>[];
  /** Left out, the tabs remember their side themselves. */
  chosen?: K;
  onChoose?: (id: K) => void;
};

export function Tabs<K extends string>({ label, sides, chosen, onChoose }: TabsProps<K>) {
  const controlled = chosen === undefined ? {} : { selectedKey: chosen };
  return (
    <AriaTabs {...controlled} onSelectionChange={(id) => onChoose?.(id as K)}>
      <TabList aria-label={label} className={classNames(styles.list)}>
        {sides.map((side) => (
          <Tab key={side.id} id={side.id} className={classNames(styles.tab)}>
            {side.words}
          </Tab>
        ))}
      </TabList>
      {sides.map((side) => (
        <TabPanel key={side.id} id={side.id} className={classNames(styles.panel)}>
          {side.content}
        </TabPanel>
      ))}
    </AriaTabs>
  );
}
