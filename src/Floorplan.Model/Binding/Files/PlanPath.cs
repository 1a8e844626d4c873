namespace Floorplan.Model.Binding.Files;

/// <summary>What a <c>kinds from</c> statement may name: a file in the plan's folder or below it.</summary>
internal static class PlanPath
{
    public const string Extension = ".unit";

    /// <summary>Of tables of rates, which are named in full.</summary>
    private const string Table = ".csv";

    /// <summary>Longer names are refused; own bound.</summary>
    private const int LongestName = 200;

    /// <summary>Null when the name stays in the folder tree by its spelling alone.</summary>
    public static PlanFile? Problem(string name)
    {
        if (name.Length is 0 or > LongestName || name.Any(c => char.IsControl(c) || c is ':' or '*' or '?' or '|' or '<' or '>'))
        {
            return new PlanFile(
                null, "that is not a name of a file", "name a file below the plan's folder, such as `kinds from benches.unit`");
        }

        if (name.Contains('\\', StringComparison.Ordinal))
        {
            return new PlanFile(null, "folders are separated by `/` here, not by `\\`", "write it as `kinds from kinds/benches.unit`");
        }

        if (name[0] == '/' || name[0] == '~')
        {
            return new PlanFile(
                null, "a file is named from the plan's folder, not from the top of the disk",
                "copy it beside the plan and name it from there");
        }

        return name.Split('/').Any(s => s is "" or "." or "..")
            ? new PlanFile(null, "a plan may only read files in its own folder and below", "copy the file there and name it without `..`")
            : null;
    }

    public static string WithExtension(string name)
        => name.EndsWith(Extension, StringComparison.OrdinalIgnoreCase) || name.EndsWith(Table, StringComparison.OrdinalIgnoreCase)
            ? name
            : name + Extension;

    /// <summary>The path of a file named by another one, both from the plan's folder.</summary>
    public static string Beside(string from, string name)
    {
        int slash = from.LastIndexOf('/');
        return slash < 0 ? name : from[..(slash + 1)] + name;
    }
}
