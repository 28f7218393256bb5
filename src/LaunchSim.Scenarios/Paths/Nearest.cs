namespace LaunchSim.Scenarios;

/// <summary>The word that was probably meant.</summary>
public static class Nearest
{
    /// <summary>The candidate nearest to a word, or null when none is near enough to be worth offering.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="candidates">What there is.</param>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        string? best = null;
        int least = word.Length <= 3 ? 2 : Math.Max(2, word.Length / 3) + 1;
        foreach (string candidate in candidates)
        {
            int distance = Distance(word, candidate);
            if (distance < least && distance < Math.Max(word.Length, candidate.Length))
            {
                least = distance;
                best = candidate;
            }
        }

        return best;
    }

    /// <summary>How many letters to add, drop, change or swap with a neighbour, capital letters counting as small ones.</summary>
    /// <param name="a">The one word.</param>
    /// <param name="b">The other.</param>
    public static int Distance(string a, string b)
    {
        // What is very long was not meant to be any of our words.
        if (Math.Abs(a.Length - b.Length) > 40 || a.Length > 120)
        {
            return int.MaxValue;
        }

        int[] two = new int[b.Length + 1];
        int[] one = new int[b.Length + 1];
        int[] now = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            one[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                bool same = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]);
                now[j] = Math.Min(Math.Min(now[j - 1], one[j]) + 1, one[j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    now[j] = Math.Min(now[j], two[j - 2] + 1);
                }
            }

            (two, one, now) = (one, now, two);
        }

        return one[b.Length];
    }
}
