using System.Text.Json;
using System.Text.RegularExpressions;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The list of what is in the published program, beside it.</summary>
public partial class BillOfMaterialsTests
{
    /// <summary>
    /// CycloneDX 1.6 (ECMA-424, 1st edition): bomFormat and specVersion of the document; type and name of a component; a package URL
    /// as its specification writes it; SHA-512 as 128 hexadecimal digits.
    /// </summary>
    [SkippableFact]
    public void It_is_a_CycloneDX_document()
    {
        var bill = Read();
        Assert.Equal("CycloneDX", bill.GetProperty("bomFormat").GetString());
        Assert.Equal("1.6", bill.GetProperty("specVersion").GetString());
        Assert.Equal("application", bill.GetProperty("metadata").GetProperty("component").GetProperty("type").GetString());
        Assert.All(bill.GetProperty("components").EnumerateArray(), c =>
        {
            Assert.Equal("library", c.GetProperty("type").GetString());
            Assert.Equal($"pkg:nuget/{c.GetProperty("name")}@{c.GetProperty("version")}", c.GetProperty("purl").GetString());
            Assert.NotEqual("", c.GetProperty("licenses")[0].GetProperty("expression").GetString());
            var hash = c.GetProperty("hashes")[0];
            Assert.Equal("SHA-512", hash.GetProperty("alg").GetString());
            Assert.Matches(Sha512(), hash.GetProperty("content").GetString());
        });
    }

    /// <summary>Held against the kept list of packages, which is made from what was restored and not from what was published.</summary>
    [SkippableFact]
    public void It_names_every_package_of_the_program_and_the_run_time_library()
    {
        var listed = Read().GetProperty("components").EnumerateArray()
            .ToDictionary(c => c.GetProperty("name").GetString()!, c => c);
        var program = PackageList.Kept().Where(p => p.In == "program").ToList();

        Assert.Equal("Microsoft.NETCore.App.Runtime.NativeAOT.linux-x64", Assert.Single(listed.Keys.Except(program.Select(p => p.Name))));
        Assert.All(program, p =>
        {
            Assert.Equal(p.Version, listed[p.Name].GetProperty("version").GetString());
            Assert.StartsWith(p.Licence, listed[p.Name].GetProperty("licenses")[0].GetProperty("expression").GetString());
        });
    }

    private static JsonElement Read()
    {
        string file = Path.Combine(Path.GetDirectoryName(TestedProgram.Published.File)!, "floorplan.cdx.json");
        return JsonSerializer.Deserialize<JsonElement>(File.ReadAllBytes(file));
    }

    [GeneratedRegex("^[0-9A-F]{128}$")]
    private static partial Regex Sha512();
}
