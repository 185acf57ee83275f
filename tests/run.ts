// `npm test`: types and format, build, unit and service tests, then the screens in a real Chromium; the sum at the end.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** One file of tests as the unit runner writes it down. */
type TestFile = {
  name: string;
  message: string;
  assertionResults: { status: string; fullName: string; failureMessages: string[] }[];
};
type Sum = { passed: number; failed: number; skipped: number };

const failures: string[] = [];
const root = join(import.meta.dirname, '..');
const results = join(root, 'test-results');
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

/** Runs one step through npm, so that every step has the Node the project pins. */
function runs(step: string, ...more: string[]): boolean {
  console.log(`\n— ${step}`);
  const { status } = spawnSync('npm', ['run', '--silent', step, ...(more.length > 0 ? ['--', ...more] : [])], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  return status === 0;
}

function sumOfUnits(): Sum {
  const file = join(results, 'unit.json');
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  for (const { name, message, assertionResults } of report.testResults as TestFile[]) {
    if (message) failures.push(`failed: ${name}\n${message}`);
    for (const each of assertionResults)
      if (each.failureMessages.length > 0) {
        const what = each.status === 'failed' ? 'failed' : 'passed only at the second try';
        failures.push(`${what}: ${name}\n${each.fullName}\n${each.failureMessages.join('\n')}`);
      }
  }
  // A file that does not even load holds no test, but has failed all the same.
  const unloaded = report.testResults.filter(
    (each: { status: string; assertionResults: unknown[] }) =>
      each.status === 'failed' && each.assertionResults.length === 0,
  ).length;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

function sumOfScreens(): Sum {
  const file = join(results, 'browser.json');
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const { stats, errors } = JSON.parse(readFileSync(file, 'utf8'));
  if (stats.flaky > 0) console.log(`\n${stats.flaky} of the screens passed only at the second try: see above.`);
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + errors.length,
    skipped: stats.skipped,
  };
}

let isSound = runs('check');
const isBuilt = runs('build');
isSound =
  runs('unit', '--reporter=default', '--reporter=json', `--outputFile.json=${join(results, 'unit.json')}`) && isSound;
isSound = isBuilt && runs('browser') && isSound;
const sums = [sumOfUnits(), sumOfScreens()];
const total = (of: keyof Sum) => sums.reduce((sum, each) => sum + each[of], 0);
// Types, format and the build count as one failure each time they fail, so that a red run never prints "0 failed".
const failed = Math.max(total('failed'), isSound && isBuilt ? 0 : 1);
// Said again where a reader of the last lines finds it: the screens alone print more than a screenful.
for (const each of failures) console.log(`\n${each.slice(0, 2_000)}`);
console.log(`\n${total('passed')} passed, ${failed} failed, ${total('skipped')} skipped`);
process.exit(failed === 0 ? 0 : 1);
