const loopbackNames = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * The origins from which a browser may send requests that change something: the product's own, and where that is on this
 * machine, the other names of this machine with the same port.
 */
export function trustedOrigins(origin: string): readonly string[] {
  const url = new URL(origin);
  if (!loopbackNames.includes(url.hostname)) return [url.origin];
  const port = url.port === '' ? '' : `:${url.port}`;
  return loopbackNames.map((name) => `${url.protocol}//${name}${port}`);
}
