using System.Reflection;

namespace Floorplan.Cli.Templates;

/// <summary>The plans that <c>new</c> starts from, carried inside the program.</summary>
internal static class TemplateShelf
{
    private const string Prefix = "templates/";
    private const string Extension = ".unit";

    private static readonly Assembly Holder = typeof(TemplateShelf).Assembly;

    public static IReadOnlyList<string> Names { get; } = [.. Holder.GetManifestResourceNames()
        .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
        .Select(n => n[Prefix.Length..^Extension.Length])
        .Order(StringComparer.Ordinal)];

    /// <summary>The text, or null for an unknown name.</summary>
    public static string? Find(string name)
    {
        if (!Names.Contains(name))
        {
            return null;
        }

        using var reader = new StreamReader(Holder.GetManifestResourceStream(Prefix + name + Extension)!);
        return reader.ReadToEnd();
    }

    /// <summary>The first comment of a template says in one line what it is.</summary>
    public static string Describe(string name)
    {
        string first = Find(name)!.Split('\n')[0];
        return first.TrimStart('#', ' ').TrimEnd();
    }
}
