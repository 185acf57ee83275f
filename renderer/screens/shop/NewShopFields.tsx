// The entries that start a shop: its name, its units and paper, and the person who is the first to work in it.
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
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
      <RadioGroup
        label="Lengths in"
        options={[
          { id: 'thou', words: 'thou (0.001 in)' },
          { id: 'mm', words: 'mm' },
        ]}
        value={shop.lengthUnit}
        onChange={(lengthUnit) => onChange({ ...shop, lengthUnit })}
        hint="The other one may always be typed too."
      />
      <RadioGroup
        label="Paper"
        options={[
          { id: 'letter', words: 'Letter' },
          { id: 'A4', words: 'A4' },
        ]}
        value={shop.paper}
        onChange={(paper) => onChange({ ...shop, paper })}
      />
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
