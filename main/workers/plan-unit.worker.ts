// Plans a unit of many packs off the event loop: the worst search measured took a third of a second.
import { parentPort, workerData } from 'node:worker_threads';
import { planUnit } from '../../app/packs/unit-plan.ts';
import type { UnitToPlan } from './plan-unit.ts';

const { asked, objective } = workerData as UnitToPlan;
parentPort?.postMessage(planUnit(asked, objective));
