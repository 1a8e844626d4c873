using System.Runtime.InteropServices;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>Which work of others is used, and under which terms: nothing comes in unseen.</summary>
public class PackageTests
{
    /// <summary>Licences that let anybody use, change and pass on a program that holds the package; SPDX names.</summary>
    private static readonly string[] Free = ["Apache-2.0", "BSD-3-Clause", "MIT", "MS-PL"];

    /// <summary>FLOORPLAN_APPROVE=packages writes the list again; a licence shown as "?" is to be read and filled in by hand.</summary>
    [SkippableFact]
    public void The_kept_list_has_every_package_with_its_version_and_licence()
    {
        Skip.If(RuntimeInformation.RuntimeIdentifier != "linux-x64", "the list is that of linux-x64; elsewhere two natives differ");
        var restored = PackageList.Restored();
        if (Environment.GetEnvironmentVariable("FLOORPLAN_APPROVE") == "packages")
        {
            PackageList.Write(restored);
        }

        Assert.Empty(restored.Except(PackageList.Kept()).Select(p => p.ToString()));
        Assert.DoesNotContain(restored, p => p.Licence == "?");
        Skip.IfNot(Directory.Exists(Repository.At("tests", "Floorplan.Benchmarks", "obj")), "the benchmarks were not restored");
        Assert.Empty(PackageList.Kept().Except(restored).Select(p => p.ToString()));
    }

    [Fact]
    public void The_program_takes_in_only_what_may_be_passed_on_freely()
        => Assert.All(PackageList.Kept().Where(p => p.In == "program"), p => Assert.Contains(p.Licence.Split(" OR "), Free.Contains));

    /// <summary>Faults that were published, looked up on 2026-11-27; for where the package source has no list of them.</summary>
    [Fact]
    public void No_package_is_older_than_the_version_that_mends_its_known_faults()
    {
        var kept = PackageList.Kept().ToLookup(p => p.Name, p => Version.Parse(p.Version));
        Assert.All(
            File.ReadLines(Repository.At(".ci", "known-faults.tsv")).Skip(1).Select(l => l.Split('\t')),
            fault => Assert.All(kept[fault[0]], version => Assert.True(version >= Version.Parse(fault[1]), string.Join(' ', fault))));
    }
}
