/** How the nodes of a grid of the Earth fall into tiles: rows of tiles from pole to pole, twice as many in each row. */

/** The nodes of a grid that a tile holds. */
export interface TileNodes {
  readonly row: number;
  readonly column: number;
  readonly height: number;
  readonly width: number;
}

/** First node of a part when `nodes` steps are shared among `parts`. */
function firstOf(part: number, nodes: number, parts: number): number {
  return Math.ceil((part * nodes) / parts);
}

/** Row of tiles in which a row of a grid lies; the last row of the grid belongs to the last. */
export function tileRowOf(row: number, rows: number, tileRows: number): number {
  return Math.min(tileRows - 1, Math.floor((row * tileRows) / (rows - 1)));
}

/** Tile in which a node lies; tiles are counted row by row from the north-west. */
export function tileOf(row: number, column: number, rows: number, tileRows: number): number {
  const across = 2 * tileRows;
  const east = Math.floor((column * tileRows) / (rows - 1));
  return tileRowOf(row, rows, tileRows) * across + east;
}

/** The nodes that a tile holds of a grid of so many rows. */
export function tileNodes(tile: number, rows: number, tileRows: number): TileNodes {
  const across = 2 * tileRows;
  const down = Math.floor(tile / across);
  const east = tile % across;
  const row = firstOf(down, rows - 1, tileRows);
  const column = firstOf(east, rows - 1, tileRows);
  return {
    row,
    column,
    height: (down === tileRows - 1 ? rows : firstOf(down + 1, rows - 1, tileRows)) - row,
    width: firstOf(east + 1, rows - 1, tileRows) - column,
  };
}
