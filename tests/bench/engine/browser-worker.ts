import { type Instance, type Limits, runEngine } from './engine-run.js';

// Bundled, and run in a Web Worker: answers one message with the times of one instance.
self.addEventListener('message', ({ data }: MessageEvent<{ instance: Instance; limits: Limits }>) => {
  self.postMessage(runEngine(data.instance, data.limits, { clock: () => performance.now() }));
});
