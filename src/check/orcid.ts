/** True where the last character of an ORCID (four groups of four) fits the others: ISO 7064, MOD 11-2. */
export function hasOrcidCheckDigit(orcid: string): boolean {
  const characters = orcid.replaceAll('-', '');
  let total = 0;
  for (const digit of characters.slice(0, -1)) total = (total + Number(digit)) * 2;
  const check = (12 - (total % 11)) % 11;
  return characters.endsWith(check === 10 ? 'X' : String(check));
}
