using System.Globalization;
using CsCheck;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Units;

public class UnitTests
{
    /// <summary>NIST SP 811 (2008), Appendix B; tolerance 1e-14 relative: the last place of a double is 2e-16, the figures given have 13 to 16.</summary>
    [Theory]
    [InlineData("lbf", 4.4482216152605, "force")]
    [InlineData("psi", 6894.75729316836, "")]
    [InlineData("lbf/in", 175.126835246476, "")]
    [InlineData("lb/in", 175.126835246476, "rate")]
    [InlineData("slug", 14.5939029372064, "")]
    [InlineData("hp", 745.69987158227, "")]
    [InlineData("ft·lbf", 1.3558179483314, "")]
    [InlineData("lb-ft", 1.3558179483314, "torque")]
    [InlineData("ft-lb", 1.3558179483314, "torque")]
    [InlineData("lb·in²", 2.926396534292e-4, "inertia")]
    [InlineData("mph", 0.44704, "")]
    [InlineData("in", 0.0254, "")]
    [InlineData("lb", 0.45359237, "mass")]
    [InlineData("g", 9.80665, "acceleration")]
    public void Unit_OfTheShop_HasTheFactorOfNist(string text, double factor, string kind)
    {
        Unit unit = Read(text, kind switch
        {
            "force" => QuantityKind.Force.Dimension,
            "rate" => QuantityKind.Rate.Dimension,
            "torque" => QuantityKind.Torque.Dimension,
            "inertia" => QuantityKind.Inertia.Dimension,
            "mass" => QuantityKind.Mass.Dimension,
            "acceleration" => Dimension.Of(length: 1, time: -2),
            _ => Dimension.None,
        });
        Assert.InRange(unit.Factor / factor, 1 - 1e-14, 1 + 1e-14);
    }

    /// <summary>UnitsNet 5.75 as an oracle wherever it knows the unit.</summary>
    [Fact]
    public void Unit_KnownToUnitsNet_HasTheSameFactor()
    {
        (string Text, QuantityKind Kind, double Factor)[] known =
        [
            ("in", QuantityKind.Length, UnitsNet.Length.FromInches(1).Meters),
            ("ft", QuantityKind.Length, UnitsNet.Length.FromFeet(1).Meters),
            ("yd", QuantityKind.Length, UnitsNet.Length.FromYards(1).Meters),
            ("mi", QuantityKind.Length, UnitsNet.Length.FromMiles(1).Meters),
            ("mil", QuantityKind.Length, UnitsNet.Length.FromMils(1).Meters),
            ("ft²", QuantityKind.Area, UnitsNet.Area.FromSquareFeet(1).SquareMeters),
            ("lb", QuantityKind.Mass, UnitsNet.Mass.FromPounds(1).Kilograms),
            ("oz", QuantityKind.Mass, UnitsNet.Mass.FromOunces(1).Kilograms),
            ("slug", QuantityKind.Mass, UnitsNet.Mass.FromSlugs(1).Kilograms),
            ("lb", QuantityKind.Force, UnitsNet.Force.FromPoundsForce(1).Newtons),
            ("oz", QuantityKind.Force, UnitsNet.Force.FromOunceForce(1).Newtons),
            ("kgf", QuantityKind.Force, UnitsNet.Force.FromKilogramsForce(1).Newtons),
            ("kip", QuantityKind.Force, UnitsNet.Force.FromKilopoundsForce(1).Newtons),
            ("mph", QuantityKind.Speed, UnitsNet.Speed.FromMilesPerHour(1).MetersPerSecond),
            ("km/h", QuantityKind.Speed, UnitsNet.Speed.FromKilometersPerHour(1).MetersPerSecond),
            ("in/s", QuantityKind.Speed, UnitsNet.Speed.FromInchesPerSecond(1).MetersPerSecond),
            ("rpm", QuantityKind.AngularSpeed, UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond),
            ("deg", QuantityKind.Angle, UnitsNet.Angle.FromDegrees(1).Radians),
            ("psi", QuantityKind.Pressure, UnitsNet.Pressure.FromPoundsForcePerSquareInch(1).Pascals),
            ("bar", QuantityKind.Pressure, UnitsNet.Pressure.FromBars(1).Pascals),
            ("kPa", QuantityKind.Pressure, UnitsNet.Pressure.FromKilopascals(1).Pascals),
            ("lb-ft", QuantityKind.Torque, UnitsNet.Torque.FromPoundForceFeet(1).NewtonMeters),
            ("lb-in", QuantityKind.Torque, UnitsNet.Torque.FromPoundForceInches(1).NewtonMeters),
            ("lb/in", QuantityKind.Rate, UnitsNet.ForcePerLength.FromPoundsForcePerInch(1).NewtonsPerMeter),
            ("N/mm", QuantityKind.Rate, UnitsNet.ForcePerLength.FromNewtonsPerMillimeter(1).NewtonsPerMeter),
            ("lb·ft²", QuantityKind.Inertia, UnitsNet.MassMomentOfInertia.FromPoundSquareFeet(1).KilogramSquareMeters),
            ("slug·ft²", QuantityKind.Inertia, UnitsNet.MassMomentOfInertia.FromSlugSquareFeet(1).KilogramSquareMeters),
            ("lb/ft³", QuantityKind.Density, UnitsNet.Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter),
            ("kN·m/rad", QuantityKind.TorsionalRate, UnitsNet.RotationalStiffness.FromKilonewtonMetersPerRadian(1).NewtonMetersPerRadian),
        ];
        foreach ((string text, QuantityKind kind, double factor) in known)
        {
            Unit unit = Read(text, kind.Dimension);
            Assert.Equal(kind.Dimension, unit.Dimension);

            // UnitsNet's own slug is rounded to eight digits, others to nine.
            double tolerance = text.Contains("slug", StringComparison.Ordinal) ? 1e-7 : 1e-8;
            Assert.True(Math.Abs((unit.Factor / factor) - 1) < tolerance, $"{text} as {kind}: {unit.Factor:R} and {factor:R}");
        }
    }

    [Theory]
    [InlineData("lb·s/in", "lb*s/in")]
    [InlineData("lb·s/in", "lb⋅s/in")]
    [InlineData("lb·s/in", "lb-s/in")]
    [InlineData("lb·s/in", "lbf·s·in^-1")]
    [InlineData("lb·s/in", "lb · s / in")]
    public void Unit_JoinedAnyWay_IsTheSame(string one, string other)
    {
        Unit a = Read(one, QuantityKind.Damping.Dimension);
        Unit b = Read(other, QuantityKind.Damping.Dimension);
        Assert.Equal(a.Dimension, b.Dimension);
        Assert.Equal(1, a.Factor / b.Factor, 1e-15);
    }

    [Fact]
    public void CapacityFactor_InShopUnits_IsTurningSpeedOverTheRootOfTorque()
    {
        Unit unit = Read("rpm/√(lb-ft)", QuantityKind.CapacityFactor.Dimension);
        Assert.Equal(QuantityKind.CapacityFactor.Dimension, unit.Dimension);
        Assert.Equal(2 * Math.PI / 60 / Math.Sqrt(1.3558179483314004), unit.Factor, 1e-15);
        Assert.Equal(unit.Factor, Read("rpm/sqrt(ft·lbf)", QuantityKind.CapacityFactor.Dimension).Factor, 1e-15);
    }

    [Fact]
    public void UsualUnits_OfEveryKind_HaveItsDimension()
    {
        foreach (QuantityKind kind in QuantityKind.All)
        {
            foreach (string text in kind.Units)
            {
                Assert.Equal(kind.Dimension, Read(text, kind.Dimension).Dimension);
            }
        }
    }

    [Theory]
    [InlineData("inn")]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("in/")]
    [InlineData("in^")]
    [InlineData("in^x")]
    [InlineData("in⁻")]
    [InlineData("√")]
    [InlineData("√in")]
    [InlineData("(in")]
    [InlineData("in)")]
    [InlineData("in in")]
    [InlineData("((((((((((((((in))))))))))))))")]
    [InlineData("lb-in-")]
    public void Unit_Malformed_IsRefused(string text)
    {
        // √in is well formed and of a dimension that no key has; it must not be taken for a length.
        bool read = UnitReader.TryRead(text, QuantityKind.Length.Dimension, out Unit unit, out _);
        Assert.True(!read || unit.Dimension != QuantityKind.Length.Dimension);
    }

    [Fact]
    public void Unit_AnyText_NeverThrows() =>
        Gens.Text("inlbft·*/-^²³√()°%ms1 N ", 30).Sample(text => { _ = UnitReader.TryRead(text, default, out _, out _); });

    private static Unit Read(string text, Dimension expected)
    {
        Assert.True(UnitReader.TryRead(text, expected, out Unit unit, out string unknown), $"{text}: {unknown}");
        return unit;
    }

    [Fact]
    public void Unit_UnderAnyCulture_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("tr-TR");
            Assert.Equal(0.0254, Read("in", default).Factor);
            Assert.Equal(0.0254, Read("inch", default).Factor);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
