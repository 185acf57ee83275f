// Answers questions about the fleet over a connection of its own: first the shelf is filled, then all is gathered, then it
// is asked. What was gathered is kept until somebody writes to the file.

import type { FleetAnswer, FleetSelection } from '../../app/comebacks/fleet.contract.ts';
import { askFleet } from '../../app/comebacks/fleet.ts';
import type { FleetRows } from '../../app/comebacks/fleet-rows.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { dayHere } from '../ports/clock.ts';
import { fillShelf } from './as-built.service.ts';
import { type FiguresOfFleet, gatherFleet } from './fleet-rows.service.ts';

/** Hears how many builds are reckoned of how many, and says whether to go on. */
export type Teller = (done: number, of: number) => boolean;

export class FleetAnswers {
  readonly #shop: OpenShop;
  #gathered: { readonly familyId: number; readonly rows: FleetRows } | null = null;
  #figures: FiguresOfFleet | null = null;

  constructor(shop: OpenShop) {
    this.#shop = shop;
  }

  /** null when `tell` said to stop. */
  async answer(selection: FleetSelection, tell: Teller): Promise<FleetAnswer | null> {
    const today = dayHere(this.#shop.clock());
    const { familyId } = selection;
    const filled = await fillShelf(this.#shop, familyId, tell);
    if (filled !== 'nothing missing' || this.#shop.wasWrittenElsewhere()) this.#gathered = null;
    if (filled === 'stopped') return null;
    const isKept = this.#gathered?.familyId === familyId && this.#gathered.rows.today === today;
    const rows = isKept && this.#gathered ? this.#gathered.rows : await this.#gather(familyId, today);
    return tell(0, 0) ? askFleet(selection, rows) : null;
  }

  async #gather(familyId: number, today: string): Promise<FleetRows> {
    const { rows, figures } = await this.#shop.read((reading) => gatherFleet(reading, familyId, today, this.#figures));
    this.#gathered = { familyId, rows };
    this.#figures = figures;
    return rows;
  }
}
