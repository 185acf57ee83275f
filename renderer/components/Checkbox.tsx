// Yes or no, with the sentence that is true when it is ticked.
import { Checkbox as AriaCheckbox, type CheckboxProps as AriaCheckboxProps } from 'react-aria-components';
import styles from './Checkbox.module.css';
import { classNames } from './class-names.ts';
import { TickMark } from './TickMark.tsx';

export type CheckboxProps = Omit<AriaCheckboxProps, 'className' | 'style' | 'children' | 'render'> & {
  children: string;
  size?: 'desk' | 'bench';
};

export function Checkbox({ children, size = 'desk', ...rest }: CheckboxProps) {
  return (
    <AriaCheckbox {...rest} className={classNames(styles.line, styles[size])}>
      <span className={styles.box}>
        <TickMark />
      </span>
      {children}
    </AriaCheckbox>
  );
}
