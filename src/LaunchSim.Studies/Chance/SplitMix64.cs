namespace LaunchSim.Studies.Chance;

/// <summary>
/// A small generator of random bits whose numbers are the same for ever: unlike <see cref="Random"/> it does not change with
/// the version of .NET. Period 2⁶⁴; one generator belongs to one thread.
/// </summary>
/// <remarks>
/// G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014: a counter that goes on
/// by the golden ratio times 2⁶⁴, each count mixed by two multiplications. Constants from memory, held to published values
/// by a test. Not for secrets.
/// </remarks>
/// <param name="seed">Any number; near seeds give unrelated numbers.</param>
public sealed class SplitMix64(ulong seed)
{
    private ulong _count = seed;

    /// <summary>
    /// One of many unrelated generators of the same seed, so that what is drawn for one thing does not move when something
    /// is drawn before it.
    /// </summary>
    /// <param name="seed">The seed they share.</param>
    /// <param name="number">Which one, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static SplitMix64 Stream(ulong seed, int number)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        // The number is mixed as well: were it only added, the streams of seed and seed + 1 would overlap.
        return new SplitMix64(new SplitMix64(seed).Next() ^ new SplitMix64(~(ulong)number).Next());
    }

    /// <summary>The next 64 random bits.</summary>
    public ulong Next()
    {
        _count += 0x9E3779B97F4A7C15;
        ulong mixed = _count;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>The next number between 0 and 1, uniform in steps of 2⁻⁵², never 0 and never 1.</summary>
    public double NextUniform() => ((Next() >> 12) + 0.5) * (1.0 / (1L << 52));

    /// <summary>The next whole number from 0 to below a limit, each exactly as likely.</summary>
    /// <param name="limit">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is below 1.</exception>
    /// <remarks>D. Lemire, "Fast random integer generation in an interval", 2019: multiply, and draw again where it would be unfair.</remarks>
    public int NextBelow(int limit)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        ulong high = Math.BigMul(Next(), (ulong)limit, out ulong low);
        ulong unfair = (0 - (ulong)limit) % (ulong)limit;
        while (low < unfair)
        {
            high = Math.BigMul(Next(), (ulong)limit, out low);
        }

        return (int)high;
    }

    /// <summary>Puts values into random order, each order as likely as any other (Fisher and Yates).</summary>
    public void Shuffle<T>(Span<T> values)
    {
        for (int last = values.Length - 1; last > 0; last--)
        {
            int other = NextBelow(last + 1);
            (values[last], values[other]) = (values[other], values[last]);
        }
    }
}
