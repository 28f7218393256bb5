namespace LaunchSim.Scenarios.Units;

/// <summary>The nearest unit to a mistyped one.</summary>
internal static class UnitSuggestion
{
    /// <summary>The mistyped unit mended, of the expected kind where one is near; null when nothing is near.</summary>
    public static string? For(string unitText, string unknown, QuantityKind kind)
    {
        string? best = Nearest.To(unitText, kind.Units);
        if (unknown.Length == 0)
        {
            return best;
        }

        int at = unitText.IndexOf(unknown, StringComparison.Ordinal);
        string? other = null;
        foreach (string symbol in UnitTable.Symbols.Keys.Where(symbol => Nearest.Distance(symbol, unknown) <= Math.Max(1, unknown.Length / 3))
            .OrderBy(symbol => Nearest.Distance(symbol, unknown)).ThenBy(symbol => symbol, StringComparer.Ordinal))
        {
            string mended = unitText.Remove(at, unknown.Length).Insert(at, symbol);
            if (UnitReader.TryRead(mended, kind.Dimension, out Unit unit, out _))
            {
                if (unit.Dimension == kind.Dimension)
                {
                    return mended;
                }

                other ??= mended;
            }
        }

        return best ?? other;
    }
}
