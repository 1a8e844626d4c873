using System.Reflection;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>What README says under Security that the program never does: its assemblies cannot even ask for it.</summary>
public class PromiseTests
{
    /// <summary>Libraries of .NET that reach the network, start programs, or run code that was not built in.</summary>
    private static readonly string[] Never =
    [
        "System.Net.", "System.Diagnostics.Process", "System.Reflection.Emit", "System.Runtime.Loader", "Microsoft.CSharp",
        "System.Linq.Expressions",
    ];

    [Theory]
    [MemberData(nameof(ArrowTests.Projects), MemberType = typeof(ArrowTests))]
    public void No_part_reaches_the_network_or_starts_or_loads_a_program(string project)
    {
        string name = project == "Floorplan.Cli" ? "floorplan" : project;
        var uses = Assembly.Load(name).GetReferencedAssemblies().Select(a => a.Name!);
        Assert.DoesNotContain(uses, u => Never.Any(n => u.StartsWith(n, StringComparison.Ordinal)));
    }

    [Fact]
    public void No_source_loads_an_assembly()
        => Assert.DoesNotContain(Repository.Sources("src"), f => File.ReadAllText(f).Contains("Assembly.Load", StringComparison.Ordinal));
}
