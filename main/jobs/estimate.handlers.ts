// What a job comes to, from the contract to the services.
import type { estimateContract } from '../../app/jobs/estimate.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import { getEstimate, getMoneyTerms, setMoneyTerms } from './estimate.service.ts';
import { approveEstimate, giveEstimate, recordDeposit } from './estimate-agreement.service.ts';
import { addLine, addLinesFromStock, replaceLine, takeLineOff } from './estimate-lines.service.ts';
import { printEstimate } from './estimate-paper.service.ts';

export const estimateHandlers: Pick<Handlers<'jobs'>, keyof typeof estimateContract> = {
  'jobs.getMoneyTerms': (desk) => desk.shop().read((reading) => getMoneyTerms(reading)),
  'jobs.setMoneyTerms': (desk, input) => desk.shop().write((writing, now) => setMoneyTerms(writing, now, input)),
  'jobs.getEstimate': (desk, input) => desk.shop().read((reading) => getEstimate(reading, input)),
  'jobs.addLine': (desk, input) => desk.shop().write((writing, now) => addLine(writing, now, input)),
  'jobs.addLinesFromStock': (desk, input) =>
    desk.shop().write((writing, now) => addLinesFromStock(writing, now, input)),
  'jobs.replaceLine': (desk, input) => desk.shop().write((writing, now) => replaceLine(writing, now, input)),
  'jobs.takeLineOff': (desk, input) => desk.shop().write((writing, now) => takeLineOff(writing, now, input)),
  'jobs.giveEstimate': (desk, input) => desk.shop().write((writing, now) => giveEstimate(writing, now, input)),
  'jobs.approveEstimate': (desk, input) => desk.shop().write((writing, now) => approveEstimate(writing, now, input)),
  'jobs.recordDeposit': (desk, input) => desk.shop().write((writing, now) => recordDeposit(writing, now, input)),
  'jobs.printEstimate': (desk, input) => printEstimate(desk.shop(), input),
};
