import { WebGLRenderer } from 'three';
import { benches } from './benches.ts';
import { cardName } from './timing.ts';

// Runs the bench that the address names (?bench=…) and posts what came of it to the server that the page is from.
const query = new URLSearchParams(location.search);
const bench = query.get('bench') ?? '';
const post = (result: object) =>
  fetch('/result', { method: 'POST', body: JSON.stringify({ bench, ...result }) }).then(() => undefined);

const run = async (): Promise<void> => {
  const gl = new WebGLRenderer({ canvas: document.createElement('canvas') });
  const machine = {
    card: cardName(gl),
    cores: navigator.hardwareConcurrency,
    date: new Date().toISOString().slice(0, 10),
  };
  try {
    const work = benches[bench];
    if (!work) throw new Error(`no bench "${bench}": ${Object.keys(benches).join(', ')}`);
    const start = performance.now();
    for await (const result of work(gl, query)) await post({ machine, result });
    await post({ machine, doneSeconds: (performance.now() - start) / 1000 });
  } catch (error) {
    await post({ machine, error: String(error) });
  }
};
// an open document inside holds back the load event: a browser that is told to leave once a page has loaded waits
const held = document.body.appendChild(document.createElement('iframe')).contentDocument;
held?.open();
void run().finally(() => held?.close());
