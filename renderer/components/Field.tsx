// The words round every entry: its name above, what to know below, and why it was refused.
import type { ReactNode } from 'react';
import { FieldError, Label, Text } from 'react-aria-components';
import { classNames } from './class-names.ts';
import styles from './Field.module.css';

export type FieldWords = {
  label: string;
  hint?: string | undefined;
  /** Why what stands here was not taken: one plain sentence. */
  refusal?: string | null | undefined;
  /** Keeps the label for ears only, where a heading of the table already says it. */
  isLabelHidden?: boolean;
};

/** `bench` is met with gloves at arm's length. */
export type FieldSize = 'desk' | 'bench';

/** Goes inside a React Aria field, which ties label, hint and refusal to the entry. */
export function Field({ label, hint, refusal, isLabelHidden, children }: FieldWords & { children: ReactNode }) {
  return (
    <>
      <Label className={classNames(isLabelHidden ? 'spoken' : styles.label)}>{label}</Label>
      {children}
      {hint && (
        <Text slot="description" className={classNames(styles.hint)}>
          {hint}
        </Text>
      )}
      <FieldError className={classNames(styles.refusal)}>{refusal}</FieldError>
    </>
  );
}
