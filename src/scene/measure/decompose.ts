import { Matrix, SVD } from "ml-matrix"
import type { Decompose } from "../../core/measure"

/**
 * Singular values by ml-matrix (Golub-Kahan bidiagonalisation and implicit QR, after EISPACK), values descending. It
 * takes plain numbers: the fit gives it a matrix already divided by errors and plausible spans. The matrix has to be
 * finite; the package loops for ever on NaN, which is refused here with RangeError.
 */
export const decompose: Decompose = (rows) => {
  if (!rows.every((row) => row.every(Number.isFinite))) throw new RangeError("a matrix of finite numbers is needed")
  const svd = new SVD(new Matrix(rows.map((row) => [...row])), { autoTranspose: false })
  return {
    values: svd.diagonal,
    left: svd.leftSingularVectors.to2DArray(),
    right: svd.rightSingularVectors.to2DArray(),
  }
}
