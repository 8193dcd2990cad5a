/** The invented club of the demo. */
export const HOUSE = 'North Quay Line Trials';
