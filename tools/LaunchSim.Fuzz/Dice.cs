namespace LaunchSim.Fuzz;

/// <summary>
/// Random numbers that one seed decides for good: SplitMix64 (Steele, Lea and Flood, 2014, from memory), which no version of
/// the run-time library changes, and whose neighbouring seeds have nothing to do with each other.
/// </summary>
/// <param name="seed">The seed; any number.</param>
internal sealed class Dice(long seed)
{
    private ulong _state = (ulong)seed;

    /// <summary>64 random bits.</summary>
    public ulong Bits()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>A number from 0 up to but not including 1.</summary>
    public double Share() => (Bits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A number between two.</summary>
    /// <param name="least">The lower one.</param>
    /// <param name="most">The higher one.</param>
    public double Between(double least, double most) => least + ((most - least) * Share());

    /// <summary>A number between two, every power of ten as likely as the next.</summary>
    /// <param name="least">The lower one, above 0.</param>
    /// <param name="most">The higher one.</param>
    public double Spread(double least, double most) => Math.Exp(Between(Math.Log(least), Math.Log(most)));

    /// <summary>A whole number from 0 up to but not including another.</summary>
    /// <param name="below">The other, above 0.</param>
    public int Below(int below) => (int)(Bits() % (ulong)below);

    /// <summary>A whole number, both ends included.</summary>
    /// <param name="least">The least one.</param>
    /// <param name="most">The largest one.</param>
    public int From(int least, int most) => least + Below(most - least + 1);

    /// <summary>True in a share of all throws.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public bool Chance(double share) => Share() < share;

    /// <summary>One of a list, each as likely as the next.</summary>
    /// <param name="from">The list, not empty.</param>
    public T Pick<T>(IReadOnlyList<T> from) => from[Below(from.Count)];

    /// <summary>One of a list by weights.</summary>
    /// <param name="from">The list, not empty.</param>
    /// <param name="weight">Each one's weight, 0 or more.</param>
    public T Pick<T>(IReadOnlyList<T> from, Func<T, int> weight)
    {
        int at = Below(from.Sum(weight));
        foreach (T one in from)
        {
            at -= weight(one);
            if (at < 0)
            {
                return one;
            }
        }

        return from[^1];
    }
}
