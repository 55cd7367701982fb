/** Waits until the process is told to end, as by Ctrl-C. */
export function untilTold(): Promise<void> {
  return new Promise((done) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => done());
  });
}
