using CsCheck;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.Tests.SideViews;

/// <summary>What a file may say of a side view: any linkage, parts left out, points out of the way, bars parallel.</summary>
internal static class RandomEntries
{
    public static Gen<SideViewEntries> Any { get; } = Gen.Double[0, 1].Array[120].Select(draws => Build(new Draw(draws)));

    private static SideViewEntries Build(Draw d)
    {
        double wheelbase = d.Between(2.0, 3.4), radius = d.Between(0.26, 0.44);
        var points = new List<EnteredPoint>();
        void Add(string path, double ahead, double up) => points.Add(new EnteredPoint(path, "", true, new Point(ahead, Math.Max(0, up)), "12.5 13-5/8 in"));

        // One point in some files is mistyped: tens of metres away, or just wrong.
        double Wild(double value) => d.Chance(0.03) ? value * d.Between(-60, 60) : value;
        void Bracket(string path, double ahead, double up, int count)
        {
            int used = (int)(count * d.Between(0, 0.999));
            for (int i = 0; i < count; i++)
            {
                points.Add(new EnteredPoint(path, $"h{i}", i == used, new Point(ahead + d.Between(-0.01, 0.01), Math.Max(0, up - (0.02 * i))), "12.5 13-5/8 in"));
            }
        }

        bool isLadder = d.Chance(0.25);
        Linkage? linkage = null;
        if (isLadder)
        {
            Bracket("rear.linkage.pivot", Wild(d.Between(0.3, 1.4)), d.Between(0, 0.5), 1 + (int)d.Between(0, 6));
            linkage = new LadderBar { Pivot = points.First(point => point.IsInUse).At };
        }
        else
        {
            double lower = d.Between(0.1, 0.3), climb = d.Between(-0.12, 0.12);
            Add("rear.linkage.lower.axle", d.Between(-0.05, 0.1), lower);
            Add("rear.linkage.lower.body", Wild(d.Between(0.3, 0.9)), lower + climb);
            double upper = lower + d.Between(0.12, 0.4);
            Add("rear.linkage.upper.axle", d.Between(-0.05, 0.12), upper);
            if (d.Chance(0.15))
            {
                Point a = points[0].At, b = points[1].At, c = points[2].At;
                Add("rear.linkage.upper.body", c.Ahead + (0.5 * (b.Ahead - a.Ahead)), c.Up + (0.5 * (b.Up - a.Up)));
            }
            else
            {
                Bracket("rear.linkage.upper.body", Wild(d.Between(0.2, 0.7)), upper - d.Between(-0.1, 0.2), 1 + (int)d.Between(0, 12));
            }

            if (d.Chance(0.1))
            {
                points.RemoveAt(1);
            }

            Point? At(string path) => points.Find(point => point.Path == path && point.IsInUse)?.At;
            if (At("rear.linkage.lower.axle") is { } la && At("rear.linkage.lower.body") is { } lb && At("rear.linkage.upper.axle") is { } ua && At("rear.linkage.upper.body") is { } ub)
            {
                linkage = new FourLink { LowerAxle = la, LowerBody = lb, UpperAxle = ua, UpperBody = ub };
            }
        }

        if (d.Chance(0.7))
        {
            Add("rear.spring.axle", d.Between(-0.25, 0.1), d.Between(0.1, 0.4));
            Add("rear.spring.body", d.Between(-0.2, 0.1), Wild(d.Between(0.5, 0.8)));
        }

        if (d.Chance(0.3))
        {
            Add("rear.damper.axle", d.Between(-0.25, 0.1), d.Between(0.1, 0.4));
            Add("rear.damper.body", d.Between(-0.2, 0.1), d.Between(0.5, 0.8));
        }

        if (d.Chance(0.5))
        {
            Add("rear.wheelie_bar.wheel", Wild(d.Between(-2, -0.8)), d.Between(0.03, 0.15));
        }

        for (int i = 0; i < (int)d.Between(0, 3.5); i++)
        {
            Add($"car.ballast[{i}].at", d.Between(-1.2, 3.5), d.Between(0.05, 1));
        }

        bool hasDoubt = d.Chance(0.5);
        return new SideViewEntries
        {
            UnitSystem = d.Chance(0.5) ? UnitSystem.Shop : UnitSystem.Si,
            Wheelbase = d.Chance(0.95) ? wheelbase : null,
            FrontScale = d.Between(4000, 9000),
            RearScale = d.Chance(0.95) ? d.Between(4000, 9000) : null,
            CentreOfGravityHeight = d.Chance(0.95) ? d.Between(0.3, 0.9) : null,
            FrontLoadedRadius = d.Chance(0.6) ? radius : null,
            RearLoadedRadius = d.Chance(0.7) ? radius : null,
            Linkage = linkage,
            Points = points,
            Doubts = hasDoubt ? new Dictionary<string, Doubt> { ["car.cg_height"] = new(d.Between(0.005, 0.08), false) } : new Dictionary<string, Doubt>(),
        };
    }

    private sealed class Draw(double[] draws)
    {
        private int _next;

        public double Between(double low, double high) => low + ((high - low) * draws[_next++]);

        public bool Chance(double share) => draws[_next++] < share;
    }
}
