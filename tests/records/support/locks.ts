/**
 * The browser's lock manager as far as a store uses it: a name is held until the callback's promise
 * settles, and a request that may not wait gets null. Written from the Web Locks text.
 */
export function oneWindow(): Pick<LockManager, 'request'> {
  const held = new Set<string>();
  const request = async (name: string, ...rest: unknown[]): Promise<unknown> => {
    const callback = rest.at(-1);
    if (typeof callback !== 'function') throw new TypeError('no callback');
    await Promise.resolve();
    if (held.has(name)) return callback(null);
    held.add(name);
    try {
      return await callback({ name, mode: 'exclusive' });
    } finally {
      held.delete(name);
    }
  };
  return { request };
}
