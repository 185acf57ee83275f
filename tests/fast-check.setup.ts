// Properties draw from a fixed seed in CI; elsewhere the seed is drawn afresh and printed, so a failure can be repeated
// with FAST_CHECK_SEED.
import fc from 'fast-check';

const seed = Number(process.env.FAST_CHECK_SEED ?? (process.env.CI ? 20261125 : Math.floor(Date.now() % 2 ** 31)));
fc.configureGlobal({ seed, includeErrorInReport: true });
if (process.env.VITEST_POOL_ID === '1') console.log(`fast-check seed ${seed}`);
