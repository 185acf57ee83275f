// The entries that start a shop: its name, its units and paper, and the person who is the first to work in it.
import { PaperChoice } from '../../components/PaperChoice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { LengthUnitChoice } from './LengthUnitChoice.tsx';
import styles from './NewShopFields.module.css';
import { initialsOf, type NewShop, whatIsMissing } from './new-shop.ts';

type NewShopFieldsProps = {
  shop: NewShop;
  onChange: (shop: NewShop) => void;
  /** Says at each empty entry what belongs there. */
  isTried: boolean;
  autoFocus?: boolean;
};

export function NewShopFields({ shop, onChange, isTried, autoFocus = false }: NewShopFieldsProps) {
  const missing = isTried ? whatIsMissing(shop) : {};
  return (
    <div className={styles.fields}>
      <div className={styles.wide}>
        <TextField
          label="Shop name"
          value={shop.shopName}
          onChange={(shopName) => onChange({ ...shop, shopName })}
          refusal={missing.shopName}
          autoFocus={autoFocus}
        />
      </div>
      <LengthUnitChoice
        value={shop.lengthUnit}
        onChange={(lengthUnit) => onChange({ ...shop, lengthUnit })}
        hint="The other one may always be typed too."
      />
      <PaperChoice value={shop.paper} onChange={(paper) => onChange({ ...shop, paper })} />
      <TextField
        label="Your name"
        value={shop.personName}
        onChange={(personName) => onChange({ ...shop, personName })}
        refusal={missing.personName}
      />
      <TextField
        label="Initials"
        value={shop.personInitials}
        onChange={(personInitials) => onChange({ ...shop, personInitials })}
        placeholder={initialsOf(shop.personName)}
        maxLength={4}
        hint="They stand beside every reading you take."
      />
    </div>
  );
}
