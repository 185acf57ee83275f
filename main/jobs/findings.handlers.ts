// What teardown found, from the contract to the services.
import type { findingsContract } from '../../app/jobs/findings.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import * as findings from './findings.service.ts';
import { suggestParts } from './part-names.service.ts';

export const findingsHandlers: Pick<Handlers<'jobs'>, keyof typeof findingsContract> = {
  'jobs.listFindings': (desk, input) => desk.shop().read((reading) => findings.listFindings(reading, input)),
  'jobs.suggestParts': (desk, input) => desk.shop().read((reading) => suggestParts(reading, input)),
  'jobs.recordFinding': (desk, input) =>
    desk.shop().write((writing, now) => findings.recordFinding(writing, now, input)),
  'jobs.correctFinding': (desk, input) =>
    desk.shop().write((writing, now) => findings.correctFinding(writing, now, input)),
  'jobs.withdrawFinding': (desk, input) =>
    desk.shop().write((writing, now) => findings.withdrawFinding(writing, now, input)),
  'jobs.decideFinding': (desk, input) =>
    desk.shop().write((writing, now) => findings.decideFinding(writing, now, input)),
  'jobs.pinPhoto': (desk, input) => desk.shop().write((writing, now) => findings.pinPhoto(writing, now, input)),
  'jobs.chargeFinding': (desk, input) =>
    desk.shop().write((writing, now) => findings.chargeFinding(writing, now, input)),
};
