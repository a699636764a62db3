import { viewCall } from '../../../machines/call/call.ts';
import { loadCatalog } from '../../catalog/load.ts';
import type { FromEngine, ToEngine } from './protocol.ts';

/**
 * The engine, off the screen's thread. It reads the content once, says whether it is sound, and then
 * answers one question: what does this case look like now?
 *
 * An error is an answer too: the screen then keeps the readings and gives no advice.
 */
const say = (message: FromEngine): void => self.postMessage(message);

const loaded = loadCatalog();
if ('problems' in loaded) {
  say({ kind: 'bad-content', problems: loaded.problems });
} else {
  const { catalog } = loaded;
  say({ kind: 'ready', catalog });
  self.addEventListener('message', ({ data }: MessageEvent<ToEngine>) => {
    try {
      say({ kind: 'view', ask: data.ask, view: viewCall(catalog, data.state) });
    } catch (reason) {
      say({
        kind: 'failed',
        ask: data.ask,
        message: reason instanceof Error ? reason.message : String(reason),
      });
    }
  });
}
