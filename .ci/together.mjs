// Runs npm scripts side by side: the last one speaks as it goes, the others in one piece when they end. Fails where one fails.
import { spawn } from 'node:child_process';

const scripts = process.argv.slice(2);
const run = (script, speaks) =>
  new Promise((resolve) => {
    const child = spawn('npm', ['run', '--silent', script], {
      stdio: ['ignore', speaks ? 'inherit' : 'pipe', speaks ? 'inherit' : 'pipe'],
      shell: process.platform === 'win32',
    });
    const parts = [];
    for (const stream of [child.stdout, child.stderr])
      stream?.on('data', (part) => parts.push(part));
    child.on('close', (code) => {
      process.stdout.write(Buffer.concat(parts));
      console.log(`${script}: ${code === 0 ? 'passed' : 'failed'}`);
      resolve(code === 0);
    });
  });

const passed = await Promise.all(
  scripts.map((script, index) => run(script, index === scripts.length - 1)),
);
process.exit(passed.every(Boolean) ? 0 : 1);
