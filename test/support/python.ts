/** Python itself (CPython built for WebAssembly), as a reader of what is published that runs wherever the tests do. */
import { loadPyodide } from 'pyodide';

/**
 * Runs Python that may open an address, and answers with what it prints. The runtime has no sockets: whatever address it
 * opens gives the bytes at hand.
 *
 * @param files by their names, in the folder that Python starts in
 */
export async function runPython(
  code: string,
  files: Readonly<Record<string, Uint8Array>>,
  opened?: { address: string; bytes: Uint8Array },
): Promise<string> {
  const lines: string[] = [];
  const python = await loadPyodide({ stdout: (line) => lines.push(line) });
  for (const [name, bytes] of Object.entries(files)) python.FS.writeFile(name, bytes);
  if (opened) {
    python.FS.writeFile('/opened', opened.bytes);
    python.globals.set('expected', opened.address);
    await python.runPythonAsync(`import urllib.request
def at_hand(address):
    assert address == expected, address
    return open("/opened", "rb")
urllib.request.urlopen = at_hand`);
  }
  await python.runPythonAsync(code);
  return lines.join('\n');
}
