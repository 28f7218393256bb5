namespace LaunchSim.Studies.Chance;

/// <summary>
/// Points that fill the unit cube more evenly than chance does: averages of smooth functions over n of them are off by about
/// 1/n in place of 1/√n. Any point is had by its index, and a sequence may be gone on with at any time. Read-only once made:
/// many threads may share one.
/// </summary>
/// <remarks>
/// <para>
/// Coordinate j is the index written in the j-th prime, its digits mirrored behind the point (Halton 1960); each place of
/// digits has a random permutation of its own, the places before the index's first digit included (A. B. Owen, "A randomized
/// Halton algorithm in R", 2017). Permuted down to what a double resolves, and with a uniform rest below that, each single
/// point is uniform over the cube: averages are right in the mean over seeds, and the spread over seeds says how wrong one is.
/// </para>
/// <para>
/// The evenness of a coordinate needs as many points as its prime (the 40th is 173, the 200th 1223) and that of two together
/// their product: put first what matters most, and expect no more than plain chance of the last ones. Points are best used
/// from index 0 on. The permutations of a coordinate depend on the seed and its number alone, so further coordinates leave
/// the earlier ones as they were.
/// </para>
/// </remarks>
public sealed class HaltonSequence
{
    /// <summary>How many coordinates a point may have.</summary>
    public const int MostDimensions = 500;

    /// <summary>Indices lie below this, 2⁵³: from there on points would be told apart by less than a double resolves.</summary>
    public const long IndexLimit = 1L << 53;

    private readonly HaltonCoordinate[] _coordinates;

    /// <summary>Draws the permutations; some 9 MB and a few hundredths of a second for 500 coordinates, next to nothing for 40.</summary>
    /// <param name="dimensions">How many coordinates a point has, 1 to <see cref="MostDimensions"/>.</param>
    /// <param name="seed">Any number. The same gives the same points for ever.</param>
    /// <exception cref="ArgumentOutOfRangeException">As many dimensions are not to be had.</exception>
    public HaltonSequence(int dimensions, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        _coordinates = new HaltonCoordinate[dimensions];
        int prime = 1;
        for (int j = 0; j < dimensions; j++)
        {
            prime = PrimeAfter(prime);
            _coordinates[j] = new HaltonCoordinate(prime, SplitMix64.Stream(seed, j));
        }
    }

    /// <summary>How many coordinates a point has.</summary>
    public int Dimensions => _coordinates.Length;

    /// <summary>Writes a point.</summary>
    /// <param name="index">Which one, 0 to below <see cref="IndexLimit"/>.</param>
    /// <param name="u">Takes its coordinates, each strictly between 0 and 1; as long as there are dimensions.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index is out of range.</exception>
    /// <exception cref="ArgumentException">The span has another length.</exception>
    public void Point(long index, Span<double> u)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, IndexLimit);
        if (u.Length != _coordinates.Length)
        {
            throw new ArgumentException($"A point has {_coordinates.Length} coordinates, there is room for {u.Length}.", nameof(u));
        }

        for (int j = 0; j < u.Length; j++)
        {
            u[j] = _coordinates[j].At((ulong)index);
        }
    }

    private static int PrimeAfter(int number)
    {
        do
        {
            number++;
        }
        while (!IsPrime(number));
        return number;
    }

    private static bool IsPrime(int number)
    {
        for (int divisor = 2; divisor * divisor <= number; divisor++)
        {
            if (number % divisor == 0)
            {
                return false;
            }
        }

        return true;
    }
}
