// A form one goes through with Enter alone: from entry to entry, and from the last one to the filled key.
import type { KeyboardEvent, ReactNode } from 'react';

type EnterThroughProps = {
  /** What the form is, for who cannot see the heading above it. */
  label: string;
  /** Enter in the last entry, Ctrl and Enter in any, or a key of type `submit`. */
  onFinish: () => void;
  className?: string | undefined;
  children: ReactNode;
};

export function EnterThrough({ label, onFinish, className, children }: EnterThroughProps) {
  const goOn = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.key !== 'Enter' || event.isDefaultPrevented()) return;
    const isFromAnywhere = event.ctrlKey || event.metaKey;
    // In several lines of text Enter begins the next line; on a key it presses the key.
    if (!isFromAnywhere && !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    if (event.repeat) return;
    const next = isFromAnywhere ? undefined : entryAfter(event.target as HTMLInputElement, event.currentTarget);
    if (next) next.focus();
    else finish(event.currentTarget);
  };
  const finish = (form: HTMLFormElement) => {
    onFinish();
    // Whatever is refused is said by then, and the hand belongs at the first of it.
    requestAnimationFrame(() => form.querySelector<HTMLElement>(refusedEntry)?.focus());
  };
  return (
    <form
      aria-label={label}
      className={className}
      noValidate
      onKeyDown={goOn}
      // A choice keeps Enter to itself, and so does a line under which something is offered: it is taken from both on its
      // way down, unless it takes what the arrows have come to, or stands in a box that keeps Enter (data-keeps-enter).
      onKeyDownCapture={(event) => (isRadio(event.target) || isOfferedOnly(event.target)) && goOn(event)}
      onSubmit={(event) => {
        event.preventDefault();
        finish(event.currentTarget);
      }}
    >
      {children}
    </form>
  );
}

const refusedEntry = ':is(input, textarea)[aria-invalid="true"], [role="radiogroup"][aria-invalid="true"] input';

/** The keys of one choice count as one entry. */
function entryAfter(current: HTMLInputElement, form: HTMLFormElement): HTMLElement | undefined {
  const entries = [...form.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea')].filter(
    (each) => each === current || (each.tabIndex >= 0 && !each.disabled && !isSameChoice(each, current)),
  );
  return entries[entries.indexOf(current) + 1];
}

function isSameChoice(one: HTMLInputElement | HTMLTextAreaElement, other: HTMLInputElement): boolean {
  return isRadio(one) && isRadio(other) && one.name === other.name;
}

function isRadio(target: EventTarget): target is HTMLInputElement {
  return target instanceof HTMLInputElement && target.type === 'radio';
}

function isOfferedOnly(target: EventTarget): boolean {
  return (
    target instanceof HTMLInputElement &&
    target.role === 'combobox' &&
    !target.hasAttribute('aria-activedescendant') &&
    target.closest('[data-keeps-enter]') === null
  );
}
