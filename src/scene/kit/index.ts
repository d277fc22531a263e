export { kitFromTable, kitTable } from "./csv"
export { kitFields, questionFields } from "./fields"
export { emptyKit, kitErrors, parseKit, piecesIn, readKit, serializeKit } from "./parse"
export { type Kit, type KitPiece, type KitSection, kitSections } from "./schema"
