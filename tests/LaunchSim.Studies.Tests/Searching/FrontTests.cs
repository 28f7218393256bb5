using CsCheck;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Searching;

namespace LaunchSim.Studies.Tests.Searching;

public class FrontTests
{
    [Fact]
    public void Members_OfAnyRows_AreThoseThatNoneBeats() => Gen.Int[0, 8].Select(Gen.Int[0, 8]).Array[0, 60].Sample(
        values =>
        {
            var front = new Front(row => row.Figures[0], row => row.Figures[1]);
            for (int i = 0; i < values.Length; i++)
            {
                front.Add(new GridRow(i, [values[i].Item1, values[i].Item2], default, default, null));
            }

            (int, int)[] expected = [.. values.Distinct().Where(own => !values.Any(other => other != own && other.Item1 <= own.Item1 && other.Item2 <= own.Item2)).Order()];
            Assert.Equal(expected, front.Members.Select(row => ((int)row.Figures[0], (int)row.Figures[1])));
        },
        iter: 3000);

    [Fact]
    public void Add_RowWithoutAValueOrWithTrouble_IsLeftOut()
    {
        var front = new Front(row => row.Figures[0], row => row.Figures[1]);
        front.Add(new GridRow(0, [double.NaN, 1], default, default, null));
        front.Add(new GridRow(1, [1, 1], AimScore.None, AimScore.None, "stopped"));

        Assert.Empty(front.Members);
    }
}
