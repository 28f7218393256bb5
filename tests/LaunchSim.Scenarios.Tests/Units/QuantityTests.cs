using System.Globalization;
using CsCheck;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Units;

public class QuantityTests
{
    [Theory]
    [InlineData("105.5 in", 105.5)]
    [InlineData("105.5in", 105.5)]
    [InlineData("5/8 in", 0.625)]
    [InlineData("5/8in", 0.625)]
    [InlineData("13-5/8 in", 13.625)]
    [InlineData("-2-1/2 in", -2.5)]
    [InlineData("+0.5 in", 0.5)]
    [InlineData("−25 in", -25)]
    [InlineData(".5 in", 0.5)]
    [InlineData("5. in", 5)]
    [InlineData("1e-3 in", 0.001)]
    [InlineData("1E+2 in", 100)]
    [InlineData("  7\tin ", 7)]
    [InlineData("7\u00a0in", 7)]
    [InlineData("13-5/8\"", 13.625)]
    public void Number_InAnyNotation_IsRead(string text, double inches)
    {
        Assert.True(Quantity.TryParse(text, QuantityKind.Length, out Quantity? quantity, out string problem), problem);
        Assert.Equal(inches, Assert.Single(quantity!.Numbers));
    }

    [Theory]
    [InlineData("24.0 9-1/2 in", new[] { 24.0, 9.5 })]
    [InlineData("24.0, 9-1/2 in", new[] { 24.0, 9.5 })]
    [InlineData("0 2 5 10 20 in", new[] { 0.0, 2, 5, 10, 20 })]
    [InlineData("-25 -18 in", new[] { -25.0, -18 })]
    [InlineData("1 1/2 in", new[] { 1, 0.5 })]
    public void Numbers_PartedBySpaces_AreRead(string text, double[] inches)
    {
        Assert.True(Quantity.TryParse(text, QuantityKind.Length, out Quantity? quantity, out string problem), problem);
        Assert.Equal(inches, quantity!.Numbers);
    }

    [Theory]
    [InlineData("21 ±1 in", 21, 1)]
    [InlineData("21±1in", 21, 1)]
    [InlineData("21 +-1 in", 21, 1)]
    [InlineData("21 +/- 1 in", 21, 1)]
    [InlineData("21 ± 1/16 in", 21, 0.0625)]
    [InlineData("13-5/8 ±1-1/2 in", 13.625, 1.5)]
    [InlineData("-2 ±0 in", -2, 0)]
    public void Doubt_OfANumber_SharesItsUnit(string text, double number, double half)
    {
        Assert.True(Quantity.TryParse(text, QuantityKind.Length, out Quantity? quantity, out string problem), problem);
        Assert.Equal(number, quantity!.Numbers[0]);
        Assert.Equal(half * 0.0254, quantity.SiDoubt()!.Value, 1e-16);
    }

    [Theory]
    [InlineData("0 50 90 lb ±10 %")]
    [InlineData("0 50 90 lb ±10%")]
    [InlineData("0 50 90 lb +-10 %")]
    public void Doubt_InPercentAtTheEnd_IsTheRows(string text)
    {
        Assert.True(Quantity.TryParse(text, QuantityKind.Force, out Quantity? quantity, out string problem), problem);
        Assert.Equal(10, quantity!.RowDoubtPercent);
        Assert.Null(quantity.SiDoubt(2));
    }

    [Fact]
    public void Doubt_InPercentAfterBareNumbers_IsTheRows()
    {
        Assert.True(Quantity.TryParse("0.9 1.0 ±5 %", QuantityKind.Number, out Quantity? quantity, out _));
        Assert.Equal(5, quantity!.RowDoubtPercent);
        Assert.Equal([0.9, 1.0], quantity.Numbers);
    }

    [Theory]
    [InlineData("1,5 in", "1.5 in")]
    [InlineData("1,5", "1.5")]
    [InlineData("105", "105 in")]
    [InlineData("105 lb", "a mass")]
    [InlineData("105 inn", "`in`")]
    [InlineData("NaN", "finite")]
    [InlineData(".inf in", "finite")]
    [InlineData("-.INF in", "finite")]
    [InlineData("∞ in", "finite")]
    [InlineData("1e400 in", "too large")]
    [InlineData("1e308 mi", "too large")]
    [InlineData("١٢ in", "12 in")]
    [InlineData("１２ in", "12 in")]
    [InlineData("1٢ in", "12 in")]
    [InlineData("𝟏𝟐 in", "12 in")]
    [InlineData("in", "number first")]
    [InlineData("", "nothing")]
    [InlineData("12-5 in", "run together")]
    [InlineData("1/0 in", "fraction")]
    [InlineData("13-8/5 in", "fraction")]
    [InlineData("1.2.3 in", "run together")]
    [InlineData("± 1 in", "without a number before")]
    [InlineData("1 ± in", "without a number after")]
    [InlineData("1 ±-1 in", "below 0")]
    [InlineData("1 ±1 ±1 in", "two ±")]
    [InlineData("1 in ±1", "not a percentage")]
    [InlineData("1, in", "comma")]
    [InlineData("1 2 in 3", "unit")]
    [InlineData("0x10 in", "unit")]
    public void Text_ThatIsNoQuantity_SaysWhatToWrite(string text, string says)
    {
        Assert.False(Quantity.TryParse(text, QuantityKind.Length, out _, out string problem));
        Assert.Contains(says, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("150 lb", "a mass", 150 * 0.45359237)]
    [InlineData("150 lb", "a force", 150 * 4.4482216152605)]
    [InlineData("150 lb/in", "a spring rate", 150 * 175.126835246476)]
    [InlineData("1 lb·s/in", "a damping", 175.126835246476)]
    [InlineData("1 lb·s/ft", "a damping", 175.126835246476 / 12)]
    [InlineData("1 lb·in·s²", "a moment of inertia", 0.1129848290276167)]
    public void Pound_MeansWhatTheKeyExpects(string text, string kindName, double si)
    {
        QuantityKind kind = QuantityKind.All.Single(kind => kind.Name == kindName);
        Assert.True(Quantity.TryParse(text, kind, out Quantity? quantity, out string problem), problem);
        Assert.Equal(si, quantity!.Si(), Math.Abs(si) * 1e-14);
    }

    [Fact]
    public void Quantity_WrittenAndReadAgain_IsTheSame() =>
        Gen.Select(Gen.Double.Where(double.IsFinite).Where(x => Math.Abs(x) < 1e290).Array[1, 6], Gens.From(QuantityKind.All), Gen.Int[0, 9])
            .Sample((numbers, kind, which) =>
            {
                string text = kind.Units.Count == 0 ? "" : kind.Units[which % kind.Units.Count];
                Assert.True(UnitReader.TryRead(text.Length == 0 ? "%" : text, kind.Dimension, out Unit unit, out _));
                var quantity = new Quantity(numbers, text.Length == 0 ? Unit.None : unit);
                Assert.True(Quantity.TryParse(quantity.ToString(), kind, out Quantity? again, out string problem), $"{quantity}: {problem}");
                Assert.Equal(numbers, again!.Numbers);
                Assert.Equal(quantity.AllSi(), again.AllSi());
            });

    [Fact]
    public void MixedFraction_OfAnySixtyFourths_IsExact() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[1, 63], Gen.Bool).Sample((whole, part, negative) =>
        {
            string text = $"{(negative ? "-" : "")}{whole}-{part}/64 in";
            Assert.True(Quantity.TryParse(text, QuantityKind.Length, out Quantity? quantity, out string problem), problem);
            Assert.Equal((negative ? -1 : 1) * (whole + (part / 64.0)), quantity!.Numbers[0]);
        });

    [Fact]
    public void Text_OfAnyKind_NeverThrows() =>
        Gens.Text("0123456789.,+-−/±% eElbinft·\"٣\ud835\t", 25).Sample(text =>
        {
            foreach (QuantityKind kind in QuantityKind.All)
            {
                if (Quantity.TryParse(text, kind, out Quantity? quantity, out string problem))
                {
                    Assert.All(quantity!.AllSi(), number => Assert.True(double.IsFinite(number)));
                }
                else
                {
                    Assert.NotEmpty(problem);
                }
            }
        }, iter: 3000);

    [Fact]
    public void Number_UnderACommaCulture_IsReadTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.True(Quantity.TryParse("12.5 in", QuantityKind.Length, out Quantity? quantity, out _));
            Assert.Equal(12.5, quantity!.Numbers[0]);
            Assert.Equal("12.5 in", quantity.ToString());
            Assert.False(Quantity.TryParse("12,5 in", QuantityKind.Length, out _, out string problem));
            Assert.Contains("12.5 in", problem, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
