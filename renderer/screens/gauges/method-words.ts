// How something is read, as a person says it.
import type { pairedMethods } from '../../../app/gauges/agreement.contract.ts';

/** After "read", "readings". */
export const methodWords: Record<(typeof pairedMethods)[number], string> = {
  air: 'by air',
  feeler: 'by feeler',
  dial: 'by dial',
  direct: 'by micrometer or depth gauge',
};

/** As the name of the method itself. */
export const methodNames: Record<(typeof pairedMethods)[number], string> = {
  air: 'air',
  feeler: 'feeler',
  dial: 'dial',
  direct: 'micrometer',
};
