// A stated figure as it stands in the sheet, with its unit.
import type { ClutchOfJob } from '../../../app/clutch/clutch.contract.ts';
import { clutchField, clutchFigureList, type FigureName } from '../../../app/clutch/clutch-figures.ts';
import { exactText } from '../../../app/specs/exact-text.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

/** "192 lbf"; empty where it is not stated. */
export function useFigures({ figures }: Pick<ClutchOfJob, 'figures'>): (name: FigureName) => string {
  const { settings } = useOpenShop();
  return (name) => {
    const figure = clutchFigureList.find((each) => each.name === name);
    const amount = figures?.[name] ?? null;
    if (figure === undefined || amount === null) return '';
    const field = clutchField(figure, settings);
    const { figures: written, unit } = exactText([amount], field);
    const isPlain = figure.quantity === 'ratio';
    return `${written[0]} ${isPlain ? '' : unit || field.unit}`.trim();
  };
}
