export function randomisationTestOf(): null {
  return null;
}
