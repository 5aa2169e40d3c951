namespace Advance.Handbook;

/// <summary>A symmetric, positive definite matrix whose entries lie within three places of its diagonal: each node of a beam knows only its neighbours.</summary>
internal sealed class BandedMatrix
{
    private const int Reach = 3;
    private const int Width = Reach + 1;
    private readonly double[] band;
    private readonly int size;

    /// <summary>All zero.</summary>
    public BandedMatrix(int size)
    {
        this.size = size;
        band = new double[size * Width];
    }

    /// <summary>Adds to an entry and to its mirror.</summary>
    public void Add(int row, int column, double value) => band[(Math.Min(row, column) * Width) + Math.Abs(row - column)] += value;

    /// <summary>Makes an unknown known: its row becomes the unit row, and what it does to the others moves to the right-hand side.</summary>
    public void Fix(int row, double value, double[] right)
    {
        for (var other = Math.Max(0, row - Reach); other < Math.Min(size, row + Width); other++)
        {
            ref var entry = ref band[(Math.Min(row, other) * Width) + Math.Abs(row - other)];
            right[other] -= entry * value;
            entry = 0;
        }

        band[row * Width] = 1;
        right[row] = value;
    }

    /// <summary>Solves in place by elimination without exchange of rows, which positive definite matrices do not need; the matrix is used up.</summary>
    public void Solve(double[] right)
    {
        for (var pivot = 0; pivot < size; pivot++)
        {
            Eliminate(pivot, right);
        }

        for (var row = size - 1; row >= 0; row--)
        {
            for (var offset = 1; offset < Width && row + offset < size; offset++)
            {
                right[row] -= band[(row * Width) + offset] * right[row + offset];
            }

            right[row] /= band[row * Width];
        }
    }

    private void Eliminate(int pivot, double[] right)
    {
        for (var offset = 1; offset < Width && pivot + offset < size; offset++)
        {
            var factor = band[(pivot * Width) + offset] / band[pivot * Width];
            if (factor == 0)
            {
                continue;
            }

            for (var column = offset; column < Width && pivot + column < size; column++)
            {
                band[((pivot + offset) * Width) + column - offset] -= factor * band[(pivot * Width) + column];
            }

            right[pivot + offset] -= factor * right[pivot];
        }
    }
}
