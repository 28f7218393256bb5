using ArchUnitNET.Loader;
using ArchUnitNET.xUnit;
using LaunchSim.Charts;
using LaunchSim.Integration;
using LaunchSim.Launch;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Grids;
using LaunchSim.Web.Desk;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace LaunchSim.Cli.Tests;

public class ReferenceTests
{
    private static readonly System.Reflection.Assembly[] OneWay =
        [typeof(App).Assembly, typeof(DeskServer).Assembly, typeof(MeasuredQuantity).Assembly, typeof(SetUpGrid).Assembly, typeof(Picture).Assembly, typeof(LaunchOutcome).Assembly, typeof(Scenario).Assembly, typeof(StandingCar).Assembly, typeof(Integrator<>).Assembly];

    private static readonly ArchUnitNET.Domain.Architecture Solution = new ArchLoader().LoadAssemblies(OneWay).Build();

    [Fact]
    public void References_OfEachProject_RunOneWay()
    {
        for (int i = 0; i < OneWay.Length; i++)
        {
            string[] referenced = [.. OneWay[i].GetReferencedAssemblies().Select(name => name.Name!)];
            for (int j = 0; j <= i; j++)
            {
                Assert.DoesNotContain(OneWay[j].GetName().Name!, referenced);
            }
        }
    }

    [Fact]
    public void Types_OfLowerProjects_DependOnNoHigherOne()
    {
        for (int i = 1; i < OneWay.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Types().That().ResideInAssembly(OneWay[i]).Should().NotDependOnAny(Types().That().ResideInAssembly(OneWay[j])).Check(Solution);
            }
        }
    }

    [Fact]
    public void Console_BelowTheCommandLine_IsNotUsed()
    {
        for (int i = 1; i < OneWay.Length; i++)
        {
            Assert.DoesNotContain("System.Console", OneWay[i].GetReferencedAssemblies().Select(name => name.Name));
        }
    }

    [Fact]
    public void Types_OfTheCommandLine_AreSealed()
    {
        foreach (System.Type type in typeof(App).Assembly.GetTypes().Where(type => type.IsClass && type.Namespace?.StartsWith("LaunchSim", StringComparison.Ordinal) == true))
        {
            Assert.True(type.IsSealed, type.FullName);
        }
    }
}
