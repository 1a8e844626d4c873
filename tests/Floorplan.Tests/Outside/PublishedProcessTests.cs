using Floorplan.Tests.Cli;

namespace Floorplan.Tests.Outside;

/// <summary>The published program as the shell starts it.</summary>
public class PublishedProcessTests : ProcessTests
{
    private protected override TestedProgram Program => TestedProgram.Published;
}
