import { spoken } from "./language"

/** What can be wrong in a kit's file or table. Keys, columns and kinds of piece stay as the file has them. */
export const kitFaults = spoken("kitFaults", {
  notAKit: (given: string) => `${given} given; a kit is one JSON object`,
  format: (given: string, format: string) => `${given} given; a kit file says "${format}"`,
  noLess: (given: string, from: string) => `${given} given; no less than ${from} is needed`,
  /** Places in a table. */
  line: (line: number) => `line ${line}`,
  inLine: (line: number, column: string) => `line ${line}, ${column}`,
  column: (line: number, column: number) => `line ${line}, column ${column}`,
  noPieceColumn: 'the column "piece" is missing',
  unknownColumn: (given: string, columns: string) => `${given} is not a column of a kit; one of ${columns} is needed`,
  /** Kinds of piece: `owners` with commas and an "and" between. */
  strayColumn: (owners: string, piece: string) =>
    `this column belongs to ${owners}; leave it empty on a line of ${piece}`,
  and: (others: string, last: string) => `${others} and ${last}`,
})
