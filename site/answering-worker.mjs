/**
 * The address of the worker that answers a page's example, as the module `virtual:answering-worker`. It is built together with the
 * pages and shares their files: a worker of Vite's own would be a second copy of the library on the wire and offline.
 */
import { fileURLToPath } from 'node:url';

const NAME = 'virtual:answering-worker';
const file = fileURLToPath(new URL('./src/element/answering/worker.ts', import.meta.url));

let builds = false;

export default {
  name: 'answering-worker',
  configResolved({ command }) {
    builds = command === 'build';
  },
  resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
  load(id, { ssr } = {}) {
    if (id !== `\0${NAME}`) return undefined;
    if (ssr) return "export default '';";
    if (!builds) return `export default ${JSON.stringify(`/@fs${file}?worker_file&type=module`)};`;
    const chunk = this.emitFile({ type: 'chunk', id: file, name: 'answering' });
    return `export default import.meta.ROLLUP_FILE_URL_${chunk};`;
  },
};
