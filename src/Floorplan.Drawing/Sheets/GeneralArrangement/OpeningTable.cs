using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>Every opening with its clear size, sill, and place from a finished face.</summary>
internal static class OpeningTable
{
    public static KeyTable Of(Plan plan) => new(
        "Openings: clear sizes",
        ["Mark", "What", "W × H", "Sill", "Between", "Set out"],
        [.. plan.Openings.Select(o => Row(o, plan.Units))]);

    private static IReadOnlyList<string> Row(Opening opening, UnitSystem units) =>
    [
        OpeningLayer.Mark(opening),
        What(opening),
        $"{LengthText.Dimension(opening.Width, units)} × {LengthText.Dimension(opening.Height, units)}",
        LengthText.Dimension(opening.Sill, units),
        $"{opening.RoomA?.Label ?? "outside"} / {opening.RoomB?.Label ?? "outside"}",
        SetOut(opening, units),
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
        return kind + (opening.ClosesItself ? ", closes itself" : "") + (opening.OpensFromInside ? ", opens from inside" : "");
    }

    private static string SetOut(Opening opening, UnitSystem units)
    {
        if ((opening.RoomA ?? opening.RoomB) is not { } room)
        {
            return "";
        }

        bool alongX = opening.Wall.RunsEastWest();
        var along = alongX ? opening.Start.X - room.Bounds.West : opening.Start.Y - room.Bounds.South;
        return $"{opening.Wall.Letter()} wall, {LengthText.Dimension(along, units)} from {(alongX ? Side.West : Side.South).Letter()}";
    }
}
