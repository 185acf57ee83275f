// Gauge lines, from the contract to the service and to the lines that are open.
import { Refused } from '../database/errors.ts';
import { listSerialPorts } from '../ports/serial-line.ts';
import type { Handlers } from '../rpc/handler.ts';
import { addLine, changeLine, getLine, listLines, listTraces, retireLine } from './indicators.service.ts';

export const indicatorsHandlers: Handlers<'indicators'> = {
  'indicators.listLines': (desk) => desk.shop().read((reading) => listLines(reading)),
  'indicators.listPorts': async () => {
    const ports = await listSerialPorts();
    if (ports === null) throw new Refused('no-ports', 'This machine does not tell which ports it has: type its name.');
    return ports;
  },
  'indicators.addLine': (desk, input) => desk.shop().write((writing) => addLine(writing, input)),
  'indicators.changeLine': async (desk, input) => {
    await desk.lines.leave(input.lineId);
    return desk.shop().write((writing) => changeLine(writing, input));
  },
  'indicators.retireLine': async (desk, input) => {
    await desk.lines.leave(input.lineId);
    return desk.shop().write((writing) => retireLine(writing, input));
  },
  'indicators.listTraces': (desk, input) => desk.shop().read((reading) => listTraces(reading, input)),
  'indicators.hearLine': async (desk, { lineId }) => {
    const { isRetired, lineId: _, ...settings } = await desk.shop().read((reading) => getLine(reading, lineId));
    return { standing: await desk.lines.hear(lineId, settings) };
  },
  'indicators.leaveLine': async (desk, { lineId }) => {
    await desk.lines.leave(lineId);
    return {};
  },
};
