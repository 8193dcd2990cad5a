/** Whether each place is shared with another row; a row without a place is not tied. */
export function competitionTies(places: readonly (number | null)[]): boolean[] {
  return places.map((place, i) => place !== null && places.some((other, j) => j !== i && other === place));
}
