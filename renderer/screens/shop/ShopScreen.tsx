// The shop: its people, what it has set, where its book lies.
import { FormSection } from '../../components/FormSection.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { keepTheme, useTheme } from '../../frame/theme.ts';
import { Backups } from './Backups.tsx';
import { ExportEverything } from './ExportEverything.tsx';
import { HandAndGauge } from './HandAndGauge.tsx';
import { LengthSettings } from './LengthSettings.tsx';
import { benchLimits } from './length-settings.ts';
import { People } from './People.tsx';
import { PhoneFolder } from './PhoneFolder.tsx';
import { DemoAndOwn } from './ShopFiles.tsx';
import { StageNeeds } from './StageNeeds.tsx';
import { DecisionRule, UnitsAndPaper } from './UnitsAndPaper.tsx';
import { Updates } from './Updates.tsx';
import { UsualWarranty } from './UsualWarranty.tsx';

export function ShopScreen() {
  const shop = useOpenShop();
  const { settings } = shop;
  return (
    <>
      <PageHead title="Shop" facts={<span>{settings.shopName}</span>} />
      {shop.isDemo && (
        <FormSection
          title="Demo shop"
          about="You are looking at a separate file of invented people and units. Nothing done here reaches your own shop."
        >
          <DemoAndOwn shop={shop} />
        </FormSection>
      )}
      <FormSection
        title="People"
        about="Whoever is at the bench stands beside everything that is written down; I and the initials change places. Initials say who did it, they are no lock."
      >
        <People people={shop.people} />
      </FormSection>
      <FormSection title="Name, units and paper" about="How this shop writes, on the screen and on paper.">
        <UnitsAndPaper settings={settings} />
      </FormSection>
      <FormSection
        title="Warranty"
        about="What this shop usually stands in for, whichever comes first, from the day a unit goes into service. Empty counts for nothing."
      >
        <UsualWarranty settings={settings} />
      </FormSection>
      <FormSection
        title="Verdicts"
        about="What it takes to call a reading in. It holds for takes begun from now on; earlier ones keep the rule they began with."
      >
        <DecisionRule settings={settings} />
      </FormSection>
      <FormSection title="At the bench" about="What makes the bench ask for one more read.">
        <LengthSettings label="At the bench" lengths={benchLimits} settings={settings} />
      </FormSection>
      <FormSection
        title="Hand and gauge"
        about="What every ± is made of. The book starts with usual figures, and puts the shop’s own repeats in their place once there are enough. A take keeps the figures it began with."
      >
        <HandAndGauge settings={settings} />
      </FormSection>
      <FormSection
        title="Stages"
        about="What a stage asks for before a job moves past it. Something missing can always be passed over with a reason, which stays on the ticket."
      >
        <StageNeeds />
      </FormSection>
      <FormSection title="Photos" about="Kept beside the shop file, small and without the place they were taken at.">
        <PhoneFolder />
      </FormSection>
      <FormSection
        title="File and backups"
        about="Nothing leaves this machine by itself. A backup is made on the first start of every day: of the last seven days, four weeks and twelve months one is kept. A disk that dies takes them along, so choose a second place."
      >
        <p className="mono">{shop.file}</p>
        <Backups />
      </FormSection>
      <FormSection
        title="Export"
        about="Every list of the book as CSV files that any spreadsheet opens, so that you can leave with everything. A single job is exported on its papers."
      >
        <ExportEverything />
      </FormSection>
      {!shop.isDemo && (
        <FormSection title="Demo shop" about="A separate file of invented people and units, marked on every screen.">
          <DemoAndOwn shop={shop} />
        </FormSection>
      )}
      <FormSection title="Light" about="Kept on this machine, not in the shop file.">
        <Light />
      </FormSection>
      <Updates />
      <FormSection
        title="About Thoubook"
        about="What it is made of, whose licences it keeps, and what helps when something is wrong."
      >
        <LinkKey to="/shop/about">About and diagnostics</LinkKey>
      </FormSection>
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
