// The way between the demo and the shop's own file.
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import type { OpenShop } from '../../frame/open-shop.ts';
import { useDraft } from '../../text/use-draft.ts';
import { NewShopFields } from './NewShopFields.tsx';
import { blankShop, completed, whatIsMissing } from './new-shop.ts';
import styles from './ShopFiles.module.css';
import { type SwitchShop, useSwitchShop } from './use-switch-shop.ts';

export function DemoAndOwn({ shop }: { shop: OpenShop }) {
  const switchShop = useSwitchShop();
  return (
    <>
      {shop.isDemo && !shop.hasShopFile && (
        <Disclosure words="Leave the demo and start your own shop">
          <StartOwn switchShop={switchShop} />
        </Disclosure>
      )}
      {shop.isDemo && shop.hasShopFile && (
        <Button isPending={switchShop.isBusy} onPress={switchShop.openOwn}>
          Leave the demo, open your shop
        </Button>
      )}
      {!shop.isDemo && (
        <Button isPending={switchShop.isBusy} onPress={switchShop.openDemo}>
          Open the demo shop
        </Button>
      )}
      <FailureSentence error={switchShop.error} />
    </>
  );
}

function StartOwn({ switchShop }: { switchShop: SwitchShop }) {
  const draft = useDraft('first steps', blankShop);
  const [isTried, setTried] = useState(false);
  const start = () => {
    setTried(true);
    if (Object.keys(whatIsMissing(draft.value)).length > 0) return;
    switchShop.create(completed(draft.value), draft.clear);
  };
  return (
    <EnterThrough label="Start your own shop" onFinish={start} className={styles.own}>
      <NewShopFields shop={draft.value} onChange={draft.change} isTried={isTried} />
      <Button type="submit" isPending={switchShop.isBusy}>
        Start your shop
      </Button>
    </EnterThrough>
  );
}
