using System.Reflection;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Files;

/// <summary>The kinds that come with the program: <c>kinds from parts/fish</c>.</summary>
public static class PartsShelf
{
    private const string Folder = "parts/";

    /// <summary>Such as <c>parts/fish</c>, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Own.GetManifestResourceNames()
            .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .Select(n => n[..^PlanPath.Extension.Length])
            .Order(StringComparer.Ordinal)];

    private static Assembly Own => typeof(PartsShelf).Assembly;

    public static bool Holds(string name) => name.StartsWith(Folder, StringComparison.Ordinal);

    /// <summary>A shelf by its name, or why there is none.</summary>
    public static PlanFile Read(string name)
    {
        using var stream = Names.Contains(name) ? Own.GetManifestResourceStream(name + PlanPath.Extension) : null;
        if (stream is null)
        {
            return new PlanFile(null, $"there is no shelf `{name}` among the built-in parts", NearNames.Hint(name, Names)
                ?? "the shelves are " + string.Join(", ", Names));
        }

        using var reader = new StreamReader(stream);
        return new PlanFile(new SourceText(reader.ReadToEnd(), name + PlanPath.Extension));
    }
}
