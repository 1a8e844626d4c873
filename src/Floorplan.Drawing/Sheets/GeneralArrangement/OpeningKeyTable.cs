using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Sizing.Placing;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>Every opening with its clear size, sill, and place from a finished face.</summary>
internal static class OpeningKeyTable
{
    public static KeyTable Of(Plan plan) => new(
        "Openings, clear sizes",
        ["Mark", "What", "Wide × high", "Sill", "Wall, place"],
        [.. plan.Openings.GroupBy(o => FromFaces.RoomOf(o)?.Id)
            .SelectMany(room => room.Select(o => Row(o, Tape.For(plan.Units))).Prepend([FromFaces.RoomOf(room.First())?.Label ?? ""]))]);

    /// <summary>What the letters in column What mean, for the notes of a sheet with this table; null when none stands there.</summary>
    public static string? Marks(Plan plan) => plan.Openings.Any(o => o.ClosesItself || o.OpensFromInside)
        ? "SC: self-closing. RI: release inside, opens without key or tool."
        : null;

    private static IReadOnlyList<Cell> Row(Opening opening, Tape tape) =>
    [
        OpeningLayer.Mark(opening),
        What(opening),
        $"{tape.Cell(opening.Width)}×{tape.Cell(opening.Height)}",
        tape.Cell(opening.Sill),
        SetOutFrom(opening, tape),
    ];

    private static string What(Opening opening)
    {
        string kind = opening.Kind switch
        {
            OpeningKind.CargoDoor => "cargo doors",
            OpeningKind.Door => opening.Swing?.Kind switch
            {
                SwingKind.Double => "double door",
                SwingKind.Sliding => "sliding door",
                SwingKind.Strip => "strip curtain",
                SwingKind.RollUp => "roll-up door",
                _ => "door",
            },
            _ => opening.Kind.ToString().ToLowerInvariant(),
        };
        // Two letters, since one would be that of a zone; they never stand alone on a line.
        string letters = (opening.ClosesItself ? "\u00A0SC" : "") + (opening.OpensFromInside ? "\u00A0RI" : "");
        return kind + letters;
    }

    private static string SetOutFrom(Opening opening, Tape tape)
        => PlaceInRoom(opening, tape) is { Length: > 0 } place ? $"{opening.Wall.Letter()}, {place}" : "";

    /// <summary><c>300 from W</c>, the finished west face of its room; empty for an opening that belongs to no room.</summary>
    public static string PlaceInRoom(Opening opening, Tape tape) => FromFaces.Of(opening) is { } from
        ? $"{tape.Cell(tape.Between(from.Along.Face, from.Along.Edge))} from {from.Face.Letter()}"
        : "";
}
