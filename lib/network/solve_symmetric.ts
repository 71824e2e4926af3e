/** Linear equations with a symmetric, positive definite matrix. */

/**
 * Solves them in place by Cholesky's factors without roots (L D L'). Small and dense: a fuel
 * system has some twenty nodes.
 *
 * @param matrix The lower half, row by row; overwritten.
 * @param right The right side; becomes the solution.
 * @returns False when the matrix is not positive definite.
 */
export function solveSymmetric(matrix: Float64Array, right: Float64Array): boolean {
  const n = right.length;
  for (let column = 0; column < n; column++) {
    let pivot = matrix[column * n + column] as number;
    for (let k = 0; k < column; k++) {
      const factor = matrix[column * n + k] as number;
      pivot -= factor * factor * (matrix[k * n + k] as number);
    }
    if (!(pivot > 0)) return false;
    matrix[column * n + column] = pivot;
    for (let row = column + 1; row < n; row++) {
      let sum = matrix[row * n + column] as number;
      for (let k = 0; k < column; k++) {
        sum -= (matrix[row * n + k] as number) * (matrix[column * n + k] as number) *
          (matrix[k * n + k] as number);
      }
      matrix[row * n + column] = sum / pivot;
    }
  }
  for (let row = 1; row < n; row++) {
    for (let k = 0; k < row; k++) {
      right[row] = (right[row] as number) - (matrix[row * n + k] as number) * (right[k] as number);
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    let value = (right[row] as number) / (matrix[row * n + row] as number);
    for (let k = row + 1; k < n; k++) {
      value -= (matrix[k * n + row] as number) * (right[k] as number);
    }
    right[row] = value;
  }
  return true;
}
