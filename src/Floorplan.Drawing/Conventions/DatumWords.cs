using Floorplan.Model.Shells;

namespace Floorplan.Drawing.Conventions;

/// <summary>What the corner is called that all coordinates count from: a shed need not be of steel.</summary>
internal static class DatumWords
{
    public static string Of(ShellKind kind) => kind == ShellKind.Shed ? "datum" : "steel datum";

    /// <summary>For the notes of sheets whose tables have coordinates.</summary>
    public static string Note(ShellKind kind) =>
        $"Points: X east and Y north from the {Of(kind)}, the outside face of the shell at its south-west corner; heights from the "
            + "finished floor.";
}
