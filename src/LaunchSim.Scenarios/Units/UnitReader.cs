using System.Collections.Concurrent;

namespace LaunchSim.Scenarios.Units;

/// <summary>
/// Reads a unit such as <c>lb·s/in</c> or <c>rpm/√(lb-ft)</c>: symbols joined by ·, ⋅, *, - and /, from left to right,
/// with powers, brackets and roots.
/// </summary>
internal static class UnitReader
{
    private const int LongestUnit = 80;
    private const int MostRemembered = 2000;

    private static readonly ConcurrentDictionary<(string Text, Dimension Expected), Unit> Remembered = new();

    /// <summary>The unit, read with the meaning of its shop words that gives the expected dimension where one does.</summary>
    /// <param name="text">The unit's text without spaces around it.</param>
    /// <param name="expected">What the reader of the number hopes for.</param>
    /// <param name="unit">The unit; its dimension may still differ from the expected one.</param>
    /// <param name="unknown">What could not be read, when false is returned.</param>
    public static bool TryRead(string text, Dimension expected, out Unit unit, out string unknown)
    {
        unknown = "";
        if (Remembered.TryGetValue((text, expected), out unit!))
        {
            return true;
        }

        unit = Unit.None;
        if (text.Length > LongestUnit)
        {
            unknown = text[..20] + "…";
            return false;
        }

        Unit? first = null;

        // Two shop words have two meanings each: four ways to read a unit at most.
        for (int meaning = 0; meaning < 4; meaning++)
        {
            var cursor = new Cursor(text, meaning);
            if (!cursor.TryWhole(out Symbol symbol, out UnitSystem? system))
            {
                unknown = cursor.Unknown;
                return false;
            }

            var read = new Unit { Text = text, Dimension = symbol.Dimension, Factor = symbol.Factor, System = system };
            first ??= read;
            if (read.Dimension == expected)
            {
                first = read;
                break;
            }
        }

        unit = first!;
        if (Remembered.Count < MostRemembered)
        {
            Remembered.TryAdd((text, expected), unit);
        }

        return true;
    }

    private struct Cursor(string text, int meaning)
    {
        private int _at;
        private bool _shop;
        private bool _si;

        public string Unknown { get; private set; } = "";

        public bool TryWhole(out Symbol symbol, out UnitSystem? system)
        {
            bool good = TryProduct(0, out symbol);
            if (good && _at < text.Length)
            {
                Unknown = text[_at..];
                good = false;
            }

            if (!good && Unknown.Length == 0)
            {
                Unknown = text;
            }

            good = good && double.IsFinite(symbol.Factor) && symbol.Factor > 0;
            system = _shop == _si ? null : _shop ? UnitSystem.Shop : UnitSystem.Si;
            return good;
        }

        private bool TryProduct(int depth, out Symbol symbol)
        {
            symbol = new Symbol(Dimension.None, 1, null);
            bool over = false;
            if (_at + 1 < text.Length && (text[_at] == '/' || (text[_at] == '1' && text[_at + 1] == '/')))
            {
                _at += text[_at] == '/' ? 1 : 2;
                over = true;
            }

            while (true)
            {
                if (!TryPower(depth, out Symbol next))
                {
                    return false;
                }

                symbol = over
                    ? new Symbol(symbol.Dimension.Over(next.Dimension), symbol.Factor / next.Factor, null)
                    : new Symbol(symbol.Dimension.Times(next.Dimension), symbol.Factor * next.Factor, null);

                SkipSpaces();
                if (_at >= text.Length || text[_at] == ')')
                {
                    return true;
                }

                switch (text[_at])
                {
                    case '/':
                        over = true;
                        break;
                    case '·' or '⋅' or '*' or '-' or '‑':
                        over = false;
                        break;
                    default:
                        return false;
                }

                _at++;
                SkipSpaces();
            }
        }

        private bool TryPower(int depth, out Symbol symbol)
        {
            if (!TryFactor(depth, out symbol))
            {
                return false;
            }

            int power = 1;
            if (_at < text.Length && text[_at] == '^')
            {
                _at++;
                int sign = 1;
                if (_at < text.Length && text[_at] is '-' or '−')
                {
                    sign = -1;
                    _at++;
                }

                if (_at >= text.Length || !char.IsAsciiDigit(text[_at]))
                {
                    return false;
                }

                power = sign * (text[_at++] - '0');
            }
            else if (_at < text.Length && "⁻⁰¹²³⁴⁵⁶⁷⁸⁹".Contains(text[_at], StringComparison.Ordinal))
            {
                int sign = 1;
                if (text[_at] == '⁻')
                {
                    sign = -1;
                    _at++;
                }

                int digit = _at < text.Length ? "⁰¹²³⁴⁵⁶⁷⁸⁹".IndexOf(text[_at], StringComparison.Ordinal) : -1;
                if (digit < 0)
                {
                    return false;
                }

                power = sign * digit;
                _at++;
            }

            if (power != 1)
            {
                symbol = new Symbol(symbol.Dimension.Power(power), Power(symbol.Factor, power), null);
            }

            return true;
        }

        private bool TryFactor(int depth, out Symbol symbol)
        {
            symbol = new Symbol(Dimension.None, 1, null);
            bool root = false;
            if (_at < text.Length && text[_at] == '√')
            {
                root = true;
                _at++;
            }
            else if (string.CompareOrdinal(text, _at, "sqrt(", 0, 5) == 0)
            {
                root = true;
                _at += 4;
            }

            if (_at < text.Length && text[_at] == '(')
            {
                _at++;
                if (depth > 8 || !TryProduct(depth + 1, out symbol) || _at >= text.Length || text[_at] != ')')
                {
                    return false;
                }

                _at++;
            }
            else if (!TrySymbol(out symbol))
            {
                return false;
            }

            if (root)
            {
                if (symbol.Dimension.Root() is not { } half)
                {
                    return false;
                }

                symbol = new Symbol(half, Math.Sqrt(symbol.Factor), null);
            }

            return true;
        }

        private bool TrySymbol(out Symbol symbol)
        {
            int start = _at;
            while (_at < text.Length && (char.IsLetter(text[_at]) || text[_at] is '°' or '%' or '"' or '″' or '\'' or '′'))
            {
                _at++;
            }

            string name = text[start.._at];
            if (!UnitTable.Symbols.TryGetValue(name, out Symbol[]? meanings))
            {
                symbol = new Symbol(Dimension.None, 1, null);
                Unknown = name;
                return false;
            }

            bool second = name == "g" ? (meaning & 2) != 0 : (meaning & 1) != 0;
            symbol = meanings[meanings.Length > 1 && second ? 1 : 0];
            _shop |= symbol.System == UnitSystem.Shop;
            _si |= symbol.System == UnitSystem.Si;
            return true;
        }

        private void SkipSpaces()
        {
            while (_at < text.Length && text[_at] == ' ')
            {
                _at++;
            }
        }

        // Exact where the product is: Math.Pow may be off in the last place.
        private static double Power(double factor, int power)
        {
            double result = 1;
            for (int i = 0; i < Math.Abs(power); i++)
            {
                result *= factor;
            }

            return power < 0 ? 1 / result : result;
        }
    }
}
