/** Hands a file to the reader; it never leaves the browser otherwise. */
export function keepFile(name: string, content: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Let go of at once, it may be gone before the browser has begun to save it.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}
