using Floorplan.Tests.Cli;

namespace Floorplan.Tests.Outside;

/// <summary>The published program writes a plan's own file as the built one does.</summary>
public class PublishedRewriteTests : RewriteTests
{
    private protected override CliRun Run(string folder, string input, params string[] arguments)
        => TestedProgram.Published.Run(folder, input, arguments);
}
