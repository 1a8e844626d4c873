using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Conventions;

/// <summary>How finely a sheet prints dimensions, for its notes.</summary>
internal static class TapeWords
{
    /// <summary>For sheets with tables of sizes and places.</summary>
    public static string Note(Tape tape) => $"Dimensions are rounded to {tape.Steps}.";

    /// <summary>For a sheet with rows that count from a datum: their figures are no chain.</summary>
    public static string NoteOfRows(Tape tape) =>
        $"Dimensions are rounded to {tape.Steps}, each by itself, so a difference of two may be {tape.OneStep} off.";

    /// <summary>For a sheet with chains.</summary>
    public static string NoteOfChains(Tape tape) =>
        $"Dimensions are rounded to {tape.Steps}; chains add up as printed, so one figure may be {tape.OneStep} off.";
}
