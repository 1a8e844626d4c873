using System.Text.RegularExpressions;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>The model does not know how it is made: binding uses the model, never the other way round.</summary>
public partial class BindingTests
{
    private const string Binding = "Binding";

    /// <summary>Below the model's own folder, at any depth.</summary>
    [Fact]
    public void No_file_of_the_model_uses_binding_but_binding_itself()
    {
        string model = Repository.At("src", "Floorplan.Model");
        var files = Repository.Sources(Path.Combine("src", "Floorplan.Model"))
            .Where(p => Path.GetRelativePath(model, p).Split(Path.DirectorySeparatorChar)[0] != Binding).ToList();
        Assert.True(files.Count > 100, $"only {files.Count} files were found");
        Assert.Equal([], files.Where(p => UseOfBinding().IsMatch(File.ReadAllText(p))).Select(p => Path.GetRelativePath(model, p)));
    }

    [GeneratedRegex(@"\bBinding\.|\bModel\.Binding\b")]
    private static partial Regex UseOfBinding();
}
