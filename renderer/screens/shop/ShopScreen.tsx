// The shop: its people, what it has set, where its book lies.
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { keepTheme, useTheme } from '../../frame/theme.ts';
import { LengthSettings } from './LengthSettings.tsx';
import { benchLimits, handAndGauge } from './length-settings.ts';
import { People } from './People.tsx';
import { SettingsSection } from './SettingsSection.tsx';
import { DemoAndOwn, FileAndBackups } from './ShopFiles.tsx';
import { DecisionRule, UnitsAndPaper } from './UnitsAndPaper.tsx';

export function ShopScreen() {
  const shop = useOpenShop();
  const { settings } = shop;
  return (
    <>
      <PageHead title="Shop" facts={<span>{settings.shopName}</span>} />
      {shop.isDemo && (
        <SettingsSection
          title="Demo shop"
          about="You are looking at a separate file of invented people and units. Nothing done here reaches your own shop."
        >
          <DemoAndOwn shop={shop} />
        </SettingsSection>
      )}
      <SettingsSection title="People" about="Whoever is at the bench stands beside every reading. No passwords.">
        <People people={shop.people} />
      </SettingsSection>
      <SettingsSection title="Name, units and paper" about="How this shop writes, on the screen and on paper.">
        <UnitsAndPaper settings={settings} />
      </SettingsSection>
      <SettingsSection
        title="Verdicts"
        about="What it takes to call a reading in. It holds for every reading in the book, past ones too."
      >
        <DecisionRule settings={settings} />
      </SettingsSection>
      <SettingsSection title="At the bench" about="What makes the bench ask for one more read.">
        <LengthSettings label="At the bench" lengths={benchLimits} settings={settings} />
      </SettingsSection>
      <SettingsSection
        title="Hand and gauge"
        about="What every ± is made of. The book starts with usual figures; put your own in their place once you have measured them."
      >
        <LengthSettings label="Hand and gauge" lengths={handAndGauge} settings={settings} asksReadsBehind />
      </SettingsSection>
      <SettingsSection
        title="File and backups"
        about="Nothing leaves this machine. Copy the backup folder to a stick now and then."
      >
        <FileAndBackups shop={shop} />
      </SettingsSection>
      {!shop.isDemo && (
        <SettingsSection
          title="Demo shop"
          about="A separate file of invented people and units, marked on every screen."
        >
          <DemoAndOwn shop={shop} />
        </SettingsSection>
      )}
      <SettingsSection title="Light" about="Kept on this machine, not in the shop file.">
        <Light />
      </SettingsSection>
    </>
  );
}

function Light() {
  return (
    <RadioGroup
      label="The screen is made for"
      options={[
        { id: 'paper', words: 'daylight, paper' },
        { id: 'bay', words: 'the bay, dark' },
      ]}
      value={useTheme()}
      onChange={keepTheme}
    />
  );
}
