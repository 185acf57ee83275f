// HiGHS in a thread of its own: it does not always keep its time limit, and a thread can be ended.
import { once } from 'node:events';
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import loadHighs from 'highs';

export type Solved = { readonly milliseconds: number; readonly objective: number | 'infeasible' | 'out of time' };
export type TimedSolver = {
  /** Solves an LP-format model; the time is the solver's alone, without starting the thread. */
  readonly solve: (model: string) => Promise<Solved>;
  readonly close: () => Promise<void>;
};

const graceSeconds = 2;

/** A solver that gives up on a model after so many seconds. */
export function timedSolver(seconds: number): TimedSolver {
  let worker: Worker | null = null;
  const started = async () => {
    worker ??= new Worker(new URL(import.meta.url), { workerData: seconds });
    return worker;
  };
  return {
    solve: async (model) => {
      const running = await started();
      running.postMessage({ model, seconds });
      const ended = new AbortController();
      const answer = once(running, 'message', { signal: ended.signal }) as Promise<[Solved]>;
      const timer = setTimeout(() => ended.abort(), (seconds + graceSeconds) * 1000);
      try {
        return (await answer)[0];
      } catch {
        await running.terminate();
        worker = null;
        return { milliseconds: (seconds + graceSeconds) * 1000, objective: 'out of time' };
      } finally {
        clearTimeout(timer);
      }
    },
    close: async () => {
      await worker?.terminate();
    },
  };
}

if (!isMainThread && parentPort) {
  const port = parentPort;
  const highs = await loadHighs();
  port.on('message', ({ model, seconds }: { model: string; seconds: number }) => {
    const start = performance.now();
    const solution = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, time_limit: seconds });
    const milliseconds = performance.now() - start;
    const objective =
      solution.Status === 'Optimal'
        ? Math.round(solution.ObjectiveValue)
        : solution.Status === 'Infeasible'
          ? 'infeasible'
          : 'out of time';
    port.postMessage({ milliseconds, objective } satisfies Solved);
  });
}
