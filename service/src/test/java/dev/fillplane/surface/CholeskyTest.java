package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against the general matrices of Commons Math. */
class CholeskyTest {

  private static final int[] SIZES = {1, 2, 5, 64, 65, 131};

  @Test
  void solvesLikeTheLibrary() {
    for (int n : SIZES) {
      RealMatrix matrix = positive(n);
      Cholesky factor = Factorization.of(matrix.getData()).orElseThrow();
      double[] b = new Random(n).doubles(n, -1, 1).toArray();
      double[] expected = inverse(matrix).operate(b);
      assertArrayEquals(expected, factor.backward(factor.forward(b)), 1e-9);
    }
  }

  @Test
  void blockOfRightHandSidesIsEachOfThem() {
    for (int n : SIZES) {
      Cholesky factor = Factorization.of(positive(n).getData()).orElseThrow();
      RealMatrix many = random(n, 7, 5);
      double[][] rows = many.getData();
      factor.forward(rows, 0, 6);
      RealMatrix solved = new Array2DRowRealMatrix(rows);
      for (int c = 0; c < 6; c++) {
        assertArrayEquals(factor.forward(many.getColumn(c)), solved.getColumn(c), 1e-12);
      }
      assertArrayEquals(many.getColumn(6), solved.getColumn(6), 0);
    }
  }

  @Test
  void inverseDiagonalIsThatOfTheInverse() {
    for (int n : SIZES) {
      RealMatrix matrix = positive(n);
      RealMatrix inverse = inverse(matrix);
      double[] expected = new double[n];
      Arrays.setAll(expected, i -> inverse.getEntry(i, i));
      assertArrayEquals(
          expected, Factorization.of(matrix.getData()).orElseThrow().inverseDiagonal(), 1e-9);
    }
  }

  @Test
  void matrixThatIsNotPositiveDefinite() {
    double[][] singular = {{1, 1}, {1, 1}};
    assertTrue(Factorization.of(singular).isEmpty());
    assertTrue(Factorization.of(new double[][] {{Double.NaN}}).isEmpty());
    Factorization.jittered(singular, 1e-14);
    assertEquals(1e-12, singular[0][0] - 1, 0.2e-12);
    assertThrows(
        ArithmeticException.class, () -> Factorization.jittered(new double[][] {{-1}}, 1e-14));
  }

  private static RealMatrix positive(int n) {
    RealMatrix any = random(n, n + 5, 3);
    return any.multiply(any.transpose());
  }

  private static RealMatrix random(int rows, int columns, long seed) {
    Random random = new Random(seed);
    double[][] data = new double[rows][];
    Arrays.setAll(data, i -> random.doubles(columns, -1, 1).toArray());
    return new Array2DRowRealMatrix(data);
  }

  private static RealMatrix inverse(RealMatrix matrix) {
    return new LUDecomposition(matrix).getSolver().getInverse();
  }
}
