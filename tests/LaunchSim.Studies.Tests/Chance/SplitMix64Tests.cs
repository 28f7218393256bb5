using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

public class SplitMix64Tests
{
    [Fact]
    public void Next_FromPublishedSeeds_GivesPublishedNumbers()
    {
        // Seed 0: the first number of the reference implementation; seed 1234567: Rosetta Code, "Pseudo-random numbers/Splitmix64".
        var random = new SplitMix64(1234567);
        Assert.Equal(0xE220A8397B1DCDAFul, new SplitMix64(0).Next());
        Assert.Equal(
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821],
            Enumerable.Range(0, 5).Select(_ => random.Next()));
    }

    [Fact]
    public void NextBelow_ManyDraws_GivesEachAsOften()
    {
        const int Limit = 7, Draws = 70_000;
        var random = new SplitMix64(5);
        int[] counts = new int[Limit];
        for (int i = 0; i < Draws; i++)
        {
            counts[random.NextBelow(Limit)]++;
        }

        // χ² of 6 degrees of freedom stays below 22.5 in 999 of 1,000 cases (tables).
        double expected = Draws / Limit;
        Assert.True(counts.Sum(count => (count - expected) * (count - expected) / expected) < 22.5);
    }

    [Fact]
    public void Shuffle_ThreeValues_GivesEachOrderAsOften()
    {
        const int Draws = 60_000;
        var random = new SplitMix64(6);
        var counts = new Dictionary<string, int>();
        for (int i = 0; i < Draws; i++)
        {
            char[] order = ['a', 'b', 'c'];
            random.Shuffle<char>(order);
            counts[new string(order)] = counts.GetValueOrDefault(new string(order)) + 1;
        }

        // χ² of 5 degrees of freedom stays below 20.5 in 999 of 1,000 cases (tables).
        Assert.Equal(6, counts.Count);
        Assert.True(counts.Values.Sum(count => Math.Pow(count - (Draws / 6.0), 2) / (Draws / 6.0)) < 20.5);
    }

    [Fact]
    public void Stream_OfNeighbours_SharesNoNumber()
    {
        var seen = new HashSet<ulong>();
        for (ulong seed = 0; seed < 10; seed++)
        {
            for (int number = 0; number < 10; number++)
            {
                var random = SplitMix64.Stream(seed, number);
                Assert.All(Enumerable.Range(0, 1_000), _ => Assert.True(seen.Add(random.Next())));
            }
        }
    }

    [Fact]
    public void Arguments_OutOfRange_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SplitMix64.Stream(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SplitMix64(1).NextBelow(0));
    }
}
