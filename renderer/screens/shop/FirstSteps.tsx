// The first three steps: shop name and units, where the data live, the demo shop or an empty one.
import { useState } from 'react';
import type { ShopState } from '../../../app/shop/shop.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { StageStrip } from '../../components/StageStrip.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useDraft } from '../../text/use-draft.ts';
import { FileInTrouble } from './FileInTrouble.tsx';
import styles from './FirstSteps.module.css';
import { NewShopFields } from './NewShopFields.tsx';
import { blankShop, completed, whatIsMissing } from './new-shop.ts';
import { type SwitchShop, useSwitchShop } from './use-switch-shop.ts';

type ClosedShop = Extract<ShopState, { open: false }>;

const steps = [
  { words: 'Your shop', note: 'name, units, you' },
  { words: 'Where it is kept', note: 'on this machine' },
  { words: 'Start', note: 'empty, or a demo' },
];

export function FirstSteps({ shop }: { shop: ClosedShop }) {
  return shop.trouble === null ? <Steps shop={shop} /> : <FileInTrouble {...shop.trouble} />;
}

function Steps({ shop }: { shop: ClosedShop }) {
  const [step, setStep] = useState(0);
  const switchShop = useSwitchShop();
  return (
    <main className={styles.page}>
      <title>First steps · Thoubook</title>
      <p className={styles.name}>Thoubook</p>
      <StageStrip
        stages={steps.map((each, index) => ({
          id: index,
          ...each,
          state: index < step ? 'done' : index === step ? 'now' : 'ahead',
        }))}
      />
      {step === 0 && <YourShop onDone={() => setStep(1)} switchShop={switchShop} hasShopFile={shop.hasShopFile} />}
      {step === 1 && <WhereItIsKept folder={shop.folder} onDone={() => setStep(2)} onBack={() => setStep(0)} />}
      {step === 2 && <Start switchShop={switchShop} onBack={() => setStep(1)} />}
      {switchShop.isBusy && (
        <p role="status" className="quiet">
          One moment: the shop file is being made ready.
        </p>
      )}
      <FailureSentence error={switchShop.error} />
    </main>
  );
}

function useNewShop() {
  return useDraft('first steps', blankShop);
}

function YourShop({
  onDone,
  switchShop,
  hasShopFile,
}: {
  onDone: () => void;
  switchShop: SwitchShop;
  hasShopFile: boolean;
}) {
  const draft = useNewShop();
  const [isTried, setTried] = useState(false);
  const goOn = () => {
    setTried(true);
    if (Object.keys(whatIsMissing(draft.value)).length === 0) onDone();
  };
  return (
    <EnterThrough label="Your shop" onFinish={goOn} className={styles.step}>
      <h1 className="say">What is your shop called?</h1>
      <NewShopFields shop={draft.value} onChange={draft.change} isTried={isTried} autoFocus />
      <div className={styles.keys}>
        <Button type="submit" kind="filled" keyHint="Enter">
          Go on
        </Button>
        <Button onPress={switchShop.openDemo} isPending={switchShop.isBusy}>
          Just look round the demo shop
        </Button>
        {hasShopFile && (
          <Button onPress={switchShop.openOwn} isPending={switchShop.isBusy}>
            Open the shop that is here
          </Button>
        )}
      </div>
    </EnterThrough>
  );
}

function WhereItIsKept({ folder, onDone, onBack }: { folder: string; onDone: () => void; onBack: () => void }) {
  return (
    <section className={styles.step}>
      <h1 className="say">Everything stays on this machine</h1>
      <p>Nothing leaves it: Thoubook works without any network and sends nothing anywhere.</p>
      <dl className={styles.places}>
        <dt>The shop file</dt>
        <dd>
          goes into <span className="mono">{folder}</span>
        </dd>
        <dt>Backups</dt>
        <dd>
          go into a folder <span className="mono">backups</span> beside it: one on the first start of every day, one
          before a newer Thoubook changes the file, and one whenever you press <b>Back up now</b>. In Shop you can
          choose a stick that takes them too.
        </dd>
      </dl>
      <div className={styles.keys}>
        <Button kind="filled" keyHint="Enter" onPress={onDone} autoFocus>
          Go on
        </Button>
        <Button onPress={onBack}>Back</Button>
      </div>
    </section>
  );
}

function Start({ switchShop, onBack }: { switchShop: SwitchShop; onBack: () => void }) {
  const draft = useNewShop();
  const shop = completed(draft.value);
  return (
    <section className={styles.step}>
      <h1 className="say">Start empty, or look round the demo shop</h1>
      <p>
        <b>Empty</b> is {shop.shopName}, with you in it and nothing else: add a unit family in Specs, then check the
        first unit in.
      </p>
      <p>
        <b>The demo shop</b> is a separate file of invented people and units, marked on every screen and paper. Try
        anything in it; your own shop is started from Shop whenever you like.
      </p>
      <div className={styles.keys}>
        <Button
          kind="filled"
          keyHint="Enter"
          isPending={switchShop.isBusy}
          onPress={() => switchShop.create(shop, draft.clear)}
          autoFocus
        >
          Start empty
        </Button>
        <Button isPending={switchShop.isBusy} onPress={switchShop.openDemo}>
          Open the demo shop
        </Button>
        <Button onPress={onBack}>Back</Button>
      </div>
    </section>
  );
}
