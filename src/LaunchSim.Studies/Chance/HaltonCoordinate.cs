namespace LaunchSim.Studies.Chance;

/// <summary>One coordinate of a <see cref="HaltonSequence"/>: the radical inverse in one base with each place's digits permuted.</summary>
internal sealed class HaltonCoordinate
{
    private static readonly double BelowOne = Math.BitDecrement(1.0);

    private readonly uint _base;

    // Place by place, what each digit becomes.
    private readonly ushort[] _permuted;

    // What a digit at each place is worth.
    private readonly double[] _worth;

    // By the number of the index's digits: what the zeros before them are worth once permuted, and the rest below the last place.
    private readonly double[] _tail;

    public HaltonCoordinate(int @base, SplitMix64 random)
    {
        _base = (uint)@base;
        int places = 0;
        for (double cells = 1; cells < HaltonSequence.IndexLimit; cells *= @base)
        {
            places++;
        }

        _permuted = new ushort[places * @base];
        _worth = new double[places];
        double worth = 1;
        for (int place = 0; place < places; place++)
        {
            worth /= @base;
            _worth[place] = worth;
            Span<ushort> digits = _permuted.AsSpan(place * @base, @base);
            for (int digit = 0; digit < @base; digit++)
            {
                digits[digit] = (ushort)digit;
            }

            random.Shuffle(digits);
        }

        _tail = new double[places + 1];
        _tail[places] = random.NextUniform() * worth;
        for (int place = places - 1; place >= 0; place--)
        {
            _tail[place] = _tail[place + 1] + (_permuted[place * @base] * _worth[place]);
        }
    }

    public double At(ulong index)
    {
        double sum = 0;
        int place = 0;
        for (ulong left = index; left > 0; place++)
        {
            (left, ulong digit) = Math.DivRem(left, _base);
            sum += _permuted[(place * (int)_base) + (int)digit] * _worth[place];
        }

        // All digits at their highest may round up to one, once in 2⁵³ draws.
        return Math.Min(sum + _tail[place], BelowOne);
    }
}
