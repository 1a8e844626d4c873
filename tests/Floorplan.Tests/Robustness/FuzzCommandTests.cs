using Floorplan.Tests.Architecture;
using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Robustness;

/// <summary>
/// Whole commands on mutated plans, with files: they end with 0, 1 or 2 and a sentence, and never with a fault of the program.
/// </summary>
public class FuzzCommandTests
{
    /// <summary>The search for mends alone may be asked for a hundred whole checks, so these cases are few.</summary>
    private const int Cases = 1_500;

    private const int Slice = 40;

    private static readonly string[][] Commands =
    [
        ["check", "a.unit"], ["check", "a.unit", "--output", "json"], ["check", "a.unit", "--mend"], ["format", "a.unit"],
        ["format", "--check", "a.unit"], ["draw", "a.unit", "--sheets", "1,4,6"], ["draw", "a.unit", "--format", "dxf"],
        ["compare", "a.unit", "b.unit"], ["draw", "a.unit", "--since", "b.unit", "--sheets", "2"],
    ];

    [Fact]
    public void Whole_commands_end_with_a_sentence()
    {
        Parallel.For(0, Thoroughness.Whole ? Cases : Slice, number =>
        {
            using var folder = new TemporaryFolder();
            folder.Write("a.unit", FuzzInput.Make(number));
            folder.Write("b.unit", FuzzInput.Make(number + 1));
            string[] command = Commands[number % Commands.Length];
            var run = CliRun.In(folder.Path, "", command);
            string about = $"case {number}: floorplan {string.Join(' ', command)}\n{run.Error}";
            Assert.True(run.Exit is 0 or 1 or 2, about);
            Assert.DoesNotContain("a fault of the program", run.Error);
            Assert.True(run.Exit == 0 || run.Out.Length + run.Error.Length > 0, about);
        });
    }
}
