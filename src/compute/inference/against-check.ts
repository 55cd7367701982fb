export function againstCheck(): [] {
  return [];
}
