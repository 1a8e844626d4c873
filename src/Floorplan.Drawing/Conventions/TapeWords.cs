using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Conventions;

/// <summary>How finely a sheet prints dimensions, for its notes.</summary>
internal static class TapeWords
{
    /// <summary>For sheets with sizes, places, or rows that count from one datum.</summary>
    public static string Note(Tape tape) => $"Dimensions are rounded to {tape.Steps}.";

    /// <summary>For a sheet with chains.</summary>
    public static string NoteOfChains(Tape tape) =>
        $"Dimensions are rounded to {tape.Steps}; chains add up as printed, so one figure may be {tape.OneStep} off.";
}
