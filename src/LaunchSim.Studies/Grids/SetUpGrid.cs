using System.Numerics;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Studies.Grids;

/// <summary>
/// All combinations of what is varied. A set-up's number counts the last setting quickest, as the rows of a table would be
/// written by hand. Immutable.
/// </summary>
public sealed class SetUpGrid
{
    private readonly long[] _strides;

    /// <summary>A grid over at least one variation.</summary>
    /// <param name="variations">What is varied.</param>
    public SetUpGrid(IReadOnlyList<Variation> variations)
    {
        ArgumentNullException.ThrowIfNull(variations);
        Variations = variations;
        Size = variations.Aggregate(BigInteger.One, (size, variation) => size * variation.Values.Count);
        _strides = new long[variations.Count];
        if (Size <= long.MaxValue)
        {
            long stride = 1;
            for (int i = variations.Count - 1; i >= 0; i--)
            {
                _strides[i] = stride;
                stride *= variations[i].Values.Count;
            }
        }
    }

    /// <summary>What is varied.</summary>
    public IReadOnlyList<Variation> Variations { get; }

    /// <summary>How many combinations there are.</summary>
    public BigInteger Size { get; }

    /// <summary>The same as a number to count with.</summary>
    /// <exception cref="OverflowException">There are more than a long holds.</exception>
    public long Count => (long)Size;

    /// <summary>Which value of one setting a set-up has.</summary>
    /// <param name="setUp">The set-up's number.</param>
    /// <param name="setting">Which setting, from 0.</param>
    public int Place(long setUp, int setting) => (int)(setUp / _strides[setting] % Variations[setting].Values.Count);

    /// <summary>The set-up with one setting at another of its values.</summary>
    /// <param name="setUp">The set-up's number.</param>
    /// <param name="setting">Which setting, from 0.</param>
    /// <param name="place">Which of its values, from 0.</param>
    public long With(long setUp, int setting, int place) => setUp + ((place - Place(setUp, setting)) * _strides[setting]);

    /// <summary>The number of the set-up that the scenario has as it stands; null when it lies between the values.</summary>
    public long? Present
    {
        get
        {
            long setUp = 0;
            for (int i = 0; i < Variations.Count; i++)
            {
                if (Variations[i].Present < 0)
                {
                    return null;
                }

                setUp += Variations[i].Present * _strides[i];
            }

            return setUp;
        }
    }

    /// <summary>The edits that make a set-up out of the scenario.</summary>
    /// <param name="setUp">The set-up's number.</param>
    public ScenarioEdit[] Edits(long setUp)
    {
        var edits = new ScenarioEdit[Variations.Count];
        for (int i = 0; i < edits.Length; i++)
        {
            edits[i] = Variations[i].Values[Place(setUp, i)];
        }

        return edits;
    }

    /// <summary>The set-ups next door: one setting one value up or down.</summary>
    /// <param name="setUp">The set-up's number.</param>
    /// <param name="scalesOnly">Whether only settings that are numbers count: nobody slips into another hole by mistake.</param>
    public IEnumerable<long> Neighbours(long setUp, bool scalesOnly = false)
    {
        for (int i = 0; i < Variations.Count; i++)
        {
            if (scalesOnly && !Variations[i].IsScale)
            {
                continue;
            }

            int place = Place(setUp, i);
            if (place > 0)
            {
                yield return With(setUp, i, place - 1);
            }

            if (place + 1 < Variations[i].Values.Count)
            {
                yield return With(setUp, i, place + 1);
            }
        }
    }
}
