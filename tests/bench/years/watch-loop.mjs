// Loaded into the host before anything else; plain JavaScript, so that no type stripping counts as the host's memory.
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { isMainThread } from 'node:worker_threads';

if (isMainThread) {
  const loop = monitorEventLoopDelay({ resolution: 1 });
  loop.enable();
  process.on('message', () => {
    process.send?.({
      p99_ms: loop.percentile(99) / 1e6,
      longest_ms: loop.max / 1e6,
      now_bytes: process.memoryUsage.rss(),
      most_bytes: process.resourceUsage().maxRSS * 1024,
    });
    loop.reset();
  });
  // Listening must not keep it running.
  process.channel?.unref();
}
