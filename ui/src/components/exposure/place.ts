/** A cell of the grid. */
export interface Place {
  row: number;
  column: number;
}
