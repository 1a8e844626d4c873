using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>Programs that are not ours and that these tests hold our drawings against.</summary>
internal static class OutsidePrograms
{
    /// <summary>Skips the test where a program is not installed, and fails it where the surroundings promise that it is.</summary>
    public static string Find(params string[] names)
    {
        string? found = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => names.Select(n => Path.Combine(folder, n)))
            .FirstOrDefault(File.Exists);
        Require(found is not null, $"{names[0]} is not on the PATH");
        return found!;
    }

    /// <inheritdoc cref="Find"/>
    public static void Require(bool there, string missing)
    {
        bool required = Environment.GetEnvironmentVariable("FLOORPLAN_OUTSIDE") == "required";
        Assert.False(required && !there, missing + ", and FLOORPLAN_OUTSIDE=required");
        Skip.If(!there, missing);
    }
}
