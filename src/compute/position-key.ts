/** Names a position within its trial: container, row, column. */
export function positionKey(place: { container: string; row: number; column: number }): string {
  return `${place.container} ${place.row} ${place.column}`;
}
