// A field of the sheet: while its text is being typed nobody interrupts; once it is left, what is wrong stands below.
import { type ComponentProps, useState } from 'react';
import { TextField } from '../../components/TextField.tsx';

type TypedFieldProps = Omit<ComponentProps<typeof TextField>, 'refusal' | 'onBlur' | 'onKeyDown'> & {
  problem?: string | undefined;
  /** Says at once what an empty field lacks; otherwise only once it was left. */
  isAskedFor?: boolean;
};

export function TypedField({ problem, isAskedFor = false, value, onChange, ...rest }: TypedFieldProps) {
  const [isBeingTyped, setBeingTyped] = useState(value === '' && !isAskedFor);
  return (
    <TextField
      maxLength={200}
      {...rest}
      value={value}
      onChange={(typed) => {
        setBeingTyped(true);
        onChange(typed);
      }}
      onBlur={() => setBeingTyped(false)}
      onKeyDown={(event) => {
        // Enter and Ctrl+S say that it is done.
        if (event.key === 'Enter' || event.ctrlKey || event.metaKey) setBeingTyped(false);
        event.continuePropagation();
      }}
      refusal={isBeingTyped ? null : (problem ?? null)}
    />
  );
}
