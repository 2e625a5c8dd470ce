/**
 * The real preload script around a stand-in of what a sandboxed one may require: `electron` with two names, nothing of
 * Node. Values cross as in electron-double/window.ts. Given to the page as text, before the page's own scripts.
 */
export const rendererShim = (preload: string): string => `(() => {
  if (location.protocol === 'about:') return;
  const toMain = (...args) => window.__toMain(...args);
  const toBase64 = (bytes) => { let text = ''; for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192)); return btoa(text); };
  const packed = (value) => JSON.stringify(value, function (key, walked) {
    const own = this[key];
    if (own instanceof Uint8Array) return { $bytes: toBase64(own) };
    if (['function', 'symbol', 'bigint'].includes(typeof own) || own instanceof Date)
      throw new Error('An object could not be cloned: ' + typeof own + ' at “' + key + '”');
    if (own !== null && typeof own === 'object' && '$bytes' in own) return { $plain: Object.entries(own) };
    return own === undefined && Array.isArray(this) ? { $undefined: true } : walked;
  });
  const unpacked = (text) => JSON.parse(text, (key, value) => {
    if (typeof value !== 'object' || value === null) return value;
    if ('$bytes' in value) return Uint8Array.from(atob(value.$bytes), (c) => c.charCodeAt(0));
    if ('$undefined' in value) return undefined;
    return '$plain' in value ? Object.fromEntries(value.$plain) : value;
  });
  // For tests that call through the bridge with bytes.
  Object.defineProperty(window, '__values', { value: { packed, unpacked } });
  const listeners = new Map();
  Object.defineProperty(window, '__fromMain', { value: (channel, args) => {
    for (const listener of listeners.get(channel) ?? []) listener({ sender: {} }, ...unpacked(args));
  } });
  const only = (what, offered) => new Proxy(offered, { get: (target, name) => {
    if (name in target) return target[name];
    throw new Error('The double of Electron has no ' + what + '.' + String(name));
  } });
  const electron = only('electron', {
    ipcRenderer: only('ipcRenderer', {
      invoke: async (channel, ...args) => unpacked(await toMain('invoke', channel, packed(args))),
      send: (channel, ...args) => void toMain('send', channel, packed(args)),
      on: (channel, listener) => void listeners.set(channel, [...(listeners.get(channel) ?? []), listener]),
      off: (channel, listener) => void listeners.set(channel, (listeners.get(channel) ?? []).filter((each) => each !== listener)),
    }),
    contextBridge: only('contextBridge', {
      exposeInMainWorld: (name, api) => {
        (window.__exposed ??= []).push(name);
        Object.defineProperty(window, name, { value: Object.freeze({ ...api }), enumerable: true });
      },
    }),
  });
  const require = (name) => {
    if (name === 'electron') return electron;
    throw new Error('A sandboxed preload script may not require ' + name);
  };
  const module = { exports: {} };
  ((require, module, exports) => {
${preload}
  })(require, module, module.exports);
})();`;
